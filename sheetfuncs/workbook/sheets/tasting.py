"""Two batches side by side, and all of them tasted blind."""

from __future__ import annotations

from sheetfuncs.workbook.model.kinds import BRIX, COUNT, DATE, TEMPERATURE, TEXT, VOLUME, Kind
from sheetfuncs.workbook.model.parts import Column, Field, Fields, Table
from sheetfuncs.workbook.model.rows import Rows
from sheetfuncs.workbook.model.systems import Units

SCORES = (1, 5)
STEP, START = 421, 137  # 421 and 900 have no divisor in common: no two batches share a code


def code(batch: int) -> int:
    """A code of three digits that does not tell its batch."""
    return (batch * STEP + START) % 900 + 100


def cups(batches: int) -> list[int]:
    """The batches in the order of their codes: that of the cups, which tells nothing."""
    return sorted(range(1, batches + 1), key=code)


def side(units: Units, rows: Rows, top: int) -> Fields:
    """Two batches, each in a column."""

    def line(key: str, label: str, kind: Kind, of: str = "") -> Field:
        def cell(number: str) -> str:
            found = f"INDEX(@batches.{of or key},@side.{number})"
            return f'IF(AND(N(@side.{number})>=1,N(@side.{number})<={rows.batches}),IFERROR(IF({found}="","",{found}),""),"")'

        return Field(key, label, kind, cell("one"), beside=Field(f"{key}_other", "", kind, cell("other")))

    other = Field("other", "", COUNT, called="The other batch", limits=(1, rows.batches))
    return Fields(
        "side",
        "Two batches side by side",
        (
            Field("one", "Batch", COUNT, limits=(1, rows.batches), beside=other),
            line("date", "Date", DATE),
            line("goes_in", "Goes in", TEXT),
            line("syrup", "Syrup expected", VOLUME),
            line("off", "Taken off at", TEMPERATURE),
            line("strength", "°Brix", BRIX),
            line("state", "It is", TEXT),
            line("colour", units.pick("Color", "Colour"), TEXT),
            line("taste", "Taste", TEXT),
        ),
        row=top,
        span=4,
    )


def blind(units: Units, rows: Rows, top: int) -> Table:
    """Cups under codes, in an order that tells nothing; when all have their points, the batches are told."""
    order = cups(rows.batches)
    poured = "COUNT(@blind.code)"
    told = f'AND({poured}>0,COUNTIFS(@blind.code,">0",@blind.points,">0")={poured},ISNUMBER([code]))'
    columns = (
        Column("batch", "No.", COUNT, tuple(f'IF({told},{batch},"")' for batch in order)),
        Column("code", "Code on the cup", COUNT, tuple(f"INDEX(@batches.code,{batch})" for batch in order)),
        Column("points", "Points, 1 to 5", COUNT, limits=SCORES),
        Column("rank", "Rank", COUNT, f'IF(AND({told},ISNUMBER([points])),COUNTIF(@blind.points,">"&[points])+1,"")'),
        Column("said", "In words", TEXT),
    )
    return Table(
        "blind",
        "A blind tasting: who pours writes the codes on the cups, from the batches' last column",
        columns,
        rows.batches,
        row=top,
    )
