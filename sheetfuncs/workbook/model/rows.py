"""How many rows each table of a workbook has."""

from __future__ import annotations

from typing import NamedTuple

MOST_ROWS = 1000  # of a log: more than a season fills, and read and computed well within the limits of `bounded`
MOST_LOTS = 4 * MOST_ROWS  # of a table that has a line for each row of the logs: Collection, Boil twice, Batches


class Rows(NamedTuple):
    """How many rows each log has, and each list of the yard."""

    collections: int = 120
    boils: int = 40
    happenings: int = 40
    waiting: int = 30
    batches: int = 12
    readings: int = 150
    bottlings: int = 60
    days: int = 150
    thermometers: int = 4
    pans: int = 4
    places: int = 12
    jars: int = 6
    trees: int = 40
    past: int = 10
    words: int = 20

    def scaled(self, collections: int) -> Rows:
        """The same proportions for another number of collections; never fewer than by default."""
        factor = max(1.0, collections / self.collections)
        return self._replace(
            collections=round(self.collections * factor),
            boils=round(self.boils * factor),
            happenings=round(self.happenings * factor),
            bottlings=round(self.bottlings * factor),
        )
