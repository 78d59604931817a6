"""An empty workbook in the embedded engine, to type into; and what none of its sentences may hold."""

from __future__ import annotations

import datetime
import re
from collections.abc import Iterator
from typing import Any

from sheetfuncs.workbook.model.days import serial
from sheetfuncs.workbook.model.parts import Field
from sheetfuncs.workbook.model.rows import Rows
from sheetfuncs.workbook.season import TODAY, Season
from sheetfuncs.workbook.write.bare import Bare

DAY = datetime.date(2026, 3, 14)
ROWS = Rows(collections=4, boils=3, happenings=2, waiting=8, batches=2, readings=4, bottlings=2, days=6, thermometers=2,
            pans=2, places=5, jars=4, trees=2, past=2, words=2)  # fmt: skip
TYPED_ROWS = 2  # of each table
# What no sentence may hold: an error, a nothing that is called a number, "1 minutes", a machine's numbers.
FALSE = re.compile(
    r"#|\b0\.00? (gal|L|lb|kg|cord|m³)|(?<![\d.,])0 °Brix"
    r"|(?<![\d.,])1 (minutes|hours|days|jars|boils|nights|lots|batches)\b"
    r"|\de\+|-0\.0+\b|  |\bnan\b|TRUE|FALSE|[{}\[\]]"
)
# A believable value, US and metric, where a cell takes more than its kind and limits tell.
BELIEVABLE: dict[str, tuple[Any, Any]] = {
    "yard.elevation": (650, 200), "yard.year": (2026, 2026), "weekend.barometer": (29.9, 1012),
    "know.target": (66.9, 66.9), "thermometers.water": (211, 99.5), "thermometers.error": (0.5, 0.3),
    "pans.length": (18, 45), "pans.width": (12, 30), "pans.depth": (5, 12), "trees.girth": (55, 140),
    "jars.size": (32, 1000), "places.kept": (38, 3), "weather.low": (25, -4), "weather.high": (42, 6),
    "collection.warmth": (60, 15), "collection.floats_at": (40, 5), "collection.ice": (0.2, 0.2),
    "collection.ice_brix": (0.3, 0.3), "collection.empty_weight": (100, 100),
    "collection.water_weight": (1000, 1000), "collection.full_weight": (1008, 1008),
    "collection.each": ("quart", "1 L"), "collection.into": ("refrigerator", "refrigerator"),
    "boil.took": ("all sap", "all sap"), "boil.reading": (213, 101.5), "boil.water": (211, 99.5),
    "boil.left_brix": (30, 30), "boil.left_at": (70, 20), "boil.rest": (0.2, 0.8), "boil.over": (1, 4),
    "boil.fuel": (0.1, 0.3), "boil.jar": ("quart", "1 L"), "happenings.lot": ("B1", "B1"),
    "batches.goes_in": ("B1", "B1"), "batches.water": (211, 99.5), "batches.volume_typed": (1, 4),
    "batches.brix_typed": (30, 30), "batches.off_at": (218.5, 103.7), "batches.cup_shows": (59, 59),
    "batches.cup_at": (190, 88), "batches.pan_volume": (0.4, 1.6), "batches.over": (0.1, 0.4),
    "batches.light": (60, 60), "run.reading": (217, 103), "run.batch": (1, 1), "panel.batch": (1, 1),
    "bottles.batch": (1, 1), "bottles.volume": (0.4, 1.6), "bottles.at": (185, 85),
    "bottles.brix": (66.9, 66.9), "bottles.light": (60, 60), "one.batch": (1, 1), "know.store": (38, 3),
    "know.hydrometer_marked": (38, 3.3), "know.sap_brix": (2, 2), "know.sap_spread": (0.6, 0.6),
    "know.efficiency": (0.3, 0.3),
}  # fmt: skip
Fact = tuple[str, int]  # a cell or column, and the row from 0


class Sheets:
    """An empty workbook in the embedded engine, to type into."""

    def __init__(self, system: str) -> None:
        self.season = Season(system, {}, ROWS)
        bare = Bare(self.season.sheets, self.season.layout, self.season.units, {TODAY: DAY})
        self.model, self.wanted = bare.model(), bare.formulas
        self.starts = {fact: self._started(*fact) for fact in self.facts()}

    def facts(self) -> Iterator[Fact]:
        for name, what in self.season.cells.items():
            if what.typed and name != TODAY:
                yield from ((name, row) for row in range(min(TYPED_ROWS, self.height(name))))

    def height(self, name: str) -> int:
        """The rows of a column; 1 of a labelled cell."""
        return 1 if isinstance(self.season.cells[name], Field) else self.season.layout.spots[name].height

    def _started(self, name: str, row: int) -> Any:
        what = self.season.cells[name]
        if isinstance(what, Field):
            return what.start
        return what.starts[row] if row < len(what.starts) else None

    def believable(self, name: str, row: int) -> Any:
        what = self.season.cells[name]
        if name in BELIEVABLE:
            return self.season.units.pick(*BELIEVABLE[name])
        if not isinstance(what.choices, str) and what.choices:
            return what.choices[0]
        if what.kind.name == "date":
            return DAY - datetime.timedelta(3 - row)
        if what.kind.name == "time":
            return datetime.time(14, 10 * row)
        if what.kind.wordy:
            return {"thermometer": "dial", "pan": "pot"}.get(name.partition(".")[2], f"name {'ab'[row]}")
        low, high = what.limits
        return min(max(3, low), high)

    def put(self, fact: Fact, value: Any) -> None:
        name, row = fact
        spot = self.season.layout.spots[name]
        cell = self.model.numbers[spot.sheet], spot.row + row + 1, spot.column + 1
        if value is None:
            self.model.model.clear_cell_contents(*cell)
        elif isinstance(value, str):
            self.model.model.update_cell_with_text(*cell, value)
        else:
            self.model.model.update_cell_with_number(*cell, float(serial(value)))

    def type(self, fact: Fact) -> None:
        self.put(fact, self.believable(*fact))

    def false(self) -> list[str]:
        """Cells that say what cannot be so."""
        found = []
        for title, cells in self.model.values(self.wanted).items():
            found += [
                f"{title} {cell}: {value}"
                for cell, value in cells.items()
                if isinstance(value, str) and FALSE.search(value)
            ]
        return found
