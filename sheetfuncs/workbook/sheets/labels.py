"""Labels: a sheet of paper with a label for each jar that was filled, two beside each other."""

from __future__ import annotations

from sheetfuncs.workbook.model.formula import cases
from sheetfuncs.workbook.model.kinds import COUNT, WORDS
from sheetfuncs.workbook.model.parts import Column, Field, Fields, Sheet, Table
from sheetfuncs.workbook.model.rows import Rows
from sheetfuncs.workbook.model.systems import Units

LABELS = 30  # rows: five a page
WIDTH = 46


def sheet(units: Units, rows: Rows) -> Sheet:
    """The label's line of Bottles, once for each jar."""
    return Sheet(
        "Labels",
        "A label for each jar of Bottles: print, cut, and glue. Selling has rules of its own: see what they ask for.",
        (
            Fields(
                "label_from",
                "",
                (Field("first", "From jar number", COUNT, limits=(1, 100000), note="blank: from the first; count them in Bottles"),),
                span=1,
                since=2,
            ),
            Table("labels", "", (_side("left", 0), _side("right", 1)), LABELS, lines=10, since=2),
        ),
        tab="paper",
        freeze=(3, 0),
        widths=(WIDTH, WIDTH),
        portrait=True,
        since=2,
    )  # fmt: skip


def _side(key: str, aside: int) -> Column:
    """The labels of one side, jar after jar."""

    def label(row: int) -> str:
        jar = f"(MAX(1,N(@label_from.first))+{2 * row + aside})"
        at = f'(COUNTIF(@bottles.jars_sum,"<"&{jar})+1)'
        return cases((f"{jar}>SUM(@bottles.filled)", '""'), otherwise=f'INDEX(@bottles.label,{at})&""')

    return Column(key, "Label" if not aside else "and beside it", WORDS, tuple(map(label, range(LABELS))), width=WIDTH)
