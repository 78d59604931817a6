"""What goes to paper: only what is filled, and nothing so small that it cannot be read."""

from __future__ import annotations

from collections.abc import Callable

from xlsxwriter import Workbook
from xlsxwriter.worksheet import Worksheet

from sheetfuncs.workbook.model.layout import Layout, first_hidden, first_row, height, letters, quoted
from sheetfuncs.workbook.model.parts import Chart, Sheet, Table
from sheetfuncs.workbook.model.systems import Units

LETTER, A4 = 1, 9
# Pixels across a page of either, lying and upright, whose smallest letters still print at 8 points.
ACROSS = (1100, 800)
DIGIT, PADDING = 7, 5  # pixels of a column for each character of its width, and besides
PLAIN_WIDTH = 8.43  # of a column that nothing was said of
CHART_ROWS = 14
LONGEST_GAP = 6  # rows with nothing in them that are printed between two blocks


def set_up(
    book: Workbook,
    page: Worksheet,
    sheet: Sheet,
    layout: Layout,
    units: Units,
    filled: Callable[[Table], int],
) -> None:
    """What is printed of a sheet, how, and on what; `filled` tells how many rows of a table are worth it."""
    page.set_portrait() if sheet.portrait else page.set_landscape()
    page.set_paper(units.pick(LETTER, A4))
    right = letters(_right(sheet, layout))
    areas = [f"{quoted(sheet.title)}!$A${top + 1}:${right}${foot + 1}" for top, foot in _rows(sheet, layout, filled)]
    book.define_name(f"{quoted(sheet.title)}!_xlnm.Print_Area", "=" + ",".join(areas))
    page.fit_to_pages(1, sheet.pages)
    page.set_margins(0.4, 0.4, 0.5, 0.6)
    page.set_h_pagebreaks(list(sheet.breaks))
    page.repeat_rows(0, sheet.freeze[0] - 1)
    page.set_footer("&L&8&A&R&8page &P of &N")


def _rows(sheet: Sheet, layout: Layout, filled: Callable[[Table], int]) -> list[tuple[int, int]]:
    """The first and last rows of each stretch without a long gap."""
    stretches, top, foot = [], 0, 2
    for number, block in enumerate(sheet.blocks):
        start = layout.starts[sheet.title, number]
        if isinstance(block, Table) and all(column.hidden for column in block.columns):
            continue
        if start - foot > LONGEST_GAP:
            stretches.append((top, foot - 1))
            top = start
        if isinstance(block, Table) and not any(column.fixed and not column.hidden for column in block.columns):
            last = first_row(block, start) + min(block.rows, filled(block))
        else:
            last = start + (CHART_ROWS if isinstance(block, Chart) else height(block))
        foot = max(foot, last)
    return [*stretches, (top, foot - 1)]


def _right(sheet: Sheet, layout: Layout) -> int:
    """The last column: as wide as can still be read."""
    widths, across, column = layout.widths(sheet), 0.0, 0
    for column in range(first_hidden(sheet)):
        across += DIGIT * widths.get(column, (PLAIN_WIDTH, False))[0] + PADDING
        if across > ACROSS[sheet.portrait]:
            return max(0, column - 1)
    return column
