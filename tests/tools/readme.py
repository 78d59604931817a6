"""The parts of the README that are generated: the table of functions.

    python -m tests.tools.readme

writes it anew; a test compares.
"""

from __future__ import annotations

import re
from pathlib import Path

from sheetfuncs.formulas.catalogue import CATALOGUE

README = Path(__file__).parents[2] / "README.md"
PART = re.compile(r"(<!-- functions -->\n).*?(<!-- /functions -->)", re.DOTALL)


def table() -> str:
    """Each function with its arguments and what it tells."""
    lines = ["| function | what it tells |", "|---|---|"]
    lines += [f"| `{function.card.call}` | {function.card.summary} |" for function in CATALOGUE.values()]
    return "\n".join(lines) + "\n"


def with_table(text: str) -> str:
    return PART.sub(lambda found: found[1] + table() + found[2], text)


if __name__ == "__main__":
    README.write_text(with_table(README.read_text(encoding="utf-8")), encoding="utf-8")
