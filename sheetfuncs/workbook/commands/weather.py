"""Saved weather as the typed cells of a workbook."""

from __future__ import annotations

import argparse
from typing import Any

from sheetfuncs.weather.forecast import found_in, say


def weather_inputs(options: argparse.Namespace, system: str) -> dict[str, Any]:
    """The typed cells that `--weather` fills; what was found is said on stderr.  Nothing, without the option."""
    if options.weather is None:
        return {}
    found = found_in(options.weather, options)
    say(found)
    rows = list(found.rows(system))
    return {f"weather.{key}": [row[place] for row in rows] for place, key in enumerate(("date", "low", "high"))}
