"""The season told in order: a line a day, from what was typed and what it came to."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from sheetfuncs.workbook.model.kinds import DATE, TEXT, counted
from sheetfuncs.workbook.season import Season


def story(season: Season) -> list[tuple[str, str]]:
    """Days with what happened on them, in order; what has no day is left out."""
    found = [(day, words) for day, words in _happened(season) if isinstance(day, float) and day >= 1]
    return [(DATE.show(day, season.units), words) for day, words in sorted(found, key=lambda one: one[0])]


def _happened(season: Season) -> Iterator[tuple[Any, str]]:
    yield season.number("taps.first"), _line(("Tapped", ""), _amount(season, "yard.taps", 0, ("tap", "taps")))
    yield season.number("taps.pulled_on"), "Pulled the taps."
    yield from _sap(season)
    for table, tell in (("boil", _boil), ("batches", _batch), ("bottles", _bottles), ("words", _words)):
        for row in range(season.layout.spots[f"{table}.date"].height):
            if words := tell(season, row):
                yield season.number(f"{table}.date", row), words


def _sap(season: Season) -> Iterator[tuple[Any, str]]:
    """The first run and the best one."""
    rows = range(season.layout.spots["collection.date"].height)
    runs = [(season.number("collection.date", row), season.number("collection.volume", row), row) for row in rows]
    known = [run for run in runs if isinstance(run[0], float) and isinstance(run[1], float)]
    if known:
        first, best = min(known), max(known, key=lambda run: run[1])
        for what, (day, _, row) in {"The first run:": first, "The best run:": best}.items():
            yield day, _line((what, _amount(season, "collection.volume", 1, row=row)), "of sap")


def _boil(season: Season, row: int) -> str:
    went_in = _amount(season, "boil.volume_in", 1, row=row)
    out = _amount(season, "boil.out_volume", 2, row=row)
    hours = _amount(season, "boil.spent", 1, ("hour", "hours"), row)
    return (
        _line(("Boiled", went_in), ("down to", out), ("in", hours), (": ", _text(season, "boil.name", row)))
        if went_in
        else ""
    )


def _batch(season: Season, row: int) -> str:
    strength = _amount(season, "batches.strength", 1, row=row)
    if not strength:
        return ""
    judged = [_text(season, f"batches.{key}", row) for key in ("colour", "taste")]
    return _line((f"Finished batch {row + 1} at", strength), (": ", ", ".join(filter(None, judged))))


def _bottles(season: Season, row: int) -> str:
    filled = season.shown("bottles.filled", row)
    if not isinstance(filled, float) or not filled:
        return ""
    jar = _text(season, "bottles.jar", row) or _text(season, "jars.name")
    batch = TEXT.show(season.shown("bottles.batch", row), season.units).strip()
    given = _text(season, "bottles.given", row)
    return _line(("Filled", counted(filled, "jar")), (", size", jar), ("from batch", batch), ("; given:", given))


def _words(season: Season, row: int) -> str:
    return _text(season, "words.words", row)


def _line(*parts: tuple[str, str] | str) -> str:
    """A sentence of parts; one that has nothing to say is left out."""
    said = ""
    for part in parts:
        words, what = part if isinstance(part, tuple) else ("", part)
        if what or (not said and words):
            said += ("" if words.startswith((",", ":", ";")) or not said else " ") + f"{words.rstrip()} {what}".strip()
    return said.strip() + "."


def _amount(season: Season, name: str, digits: int, named: tuple[str, str] | None = None, row: int = 0) -> str:
    """A number with its unit, or with its word; "" where there is none."""
    value = season.number(name, row)
    if not isinstance(value, float):
        return ""
    shown = f"{value:,.{digits}f}"
    one = round(value, digits) == 1
    unit = season.cells[name].kind.unit(season.units) if named is None else named[0 if one else 1]
    return f"{shown} {unit}".strip()


def _text(season: Season, name: str, row: int = 0) -> str:
    value = season.shown(name, row)
    return value.strip() if isinstance(value, str) else ""
