"""Where the blocks of our sheets stand in a workbook that was changed by hand.

Sheets are found by their titles, tables by their headings and labelled cells by their labels, so that
rows, columns and sheets may have been added or moved.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Any, NamedTuple

from sheetfuncs.files import Refused
from sheetfuncs.workbook.model.layout import Layout, height
from sheetfuncs.workbook.model.parts import MOST_ROWS, Chart, Column, Fields, Sheet, Table, Text
from sheetfuncs.workbook.read.contents import At, Cell, Cells, Contents

FURTHER = 6  # how many columns may have come between a label and its cell


class Gone(NamedTuple):
    """Something of ours that is not where it belongs, in words."""

    sheet: str
    at: At | None
    sentence: str


class Area(NamedTuple):
    """What a block covers, as far as the end of a table depends on it."""

    top: int
    left: int
    right: int


class Found:
    """The places of one workbook."""

    def __init__(self, contents: Contents, sheets: Sequence[Sheet], layout: Layout) -> None:
        self.titles: dict[str, str] = {}  # of our sheets -> of the workbook's
        self.cells: dict[str, list[At | None]] = {}  # "table.column" or "fields.label" -> its cells, row by row
        self.gone: list[Gone] = []
        self.contents, self.layout = contents, layout
        for sheet in sheets:
            title = self._title(sheet.title)
            if title is None:
                self.gone.append(Gone(sheet.title, None, "This sheet is not there: was it renamed or deleted?"))
                continue
            self.titles[sheet.title] = title
            self._sheet(sheet, Page(contents.sheets[title]))

    def _title(self, wanted: str) -> str | None:
        """The sheet of that title; else one whose first cell says it, under another name."""
        free = [title for title in self.contents.sheets if title not in self.titles.values()]
        named = [title for title in free if same(title) == same(wanted)]
        headed = [
            title for title in free if same(self.contents.sheets[title].get((0, 0), Cell("")).value) == same(wanted)
        ]
        return next(iter(named + headed), None)

    def _sheet(self, sheet: Sheet, page: Page) -> None:
        tops: dict[int, int] = {}  # number of a block -> the row of its title
        for number, block in enumerate(sheet.blocks):
            if not isinstance(block, Chart) and (place := self._titled(sheet, number, block, page)):
                tops[number] = place[0]
        areas: dict[int, Area] = {}
        tables: dict[int, tuple[Table, int, dict[str, int]]] = {}
        for number, block in enumerate(sheet.blocks):
            window = self._window(sheet, number, tops, page)
            if isinstance(block, Fields):
                areas |= self._fields(sheet, number, block, page, window, tops)
            elif isinstance(block, Table):
                row, columns = self._headings(sheet, block, page, window)
                if columns:
                    tables[number] = block, row, columns
                    areas[number] = Area(tops.get(number, row), min(columns.values()), max(columns.values()))
            elif isinstance(block, Text) and number in tops:
                areas[number] = Area(tops[number], block.column, block.column + block.across - 1)
        for block, row, columns in tables.values():
            left, right = min(columns.values()), max(columns.values())
            beside = [area.top for area in areas.values() if area.left <= right and area.right >= left]
            end = min((top for top in beside if top > row), default=page.rows)
            self._rows(sheet, block, page, row, columns, end)

    def _titled(self, sheet: Sheet, number: int, block: Any, page: Page) -> At | None:
        """Where a block's title stands: of several such cells, the one nearest to its place."""
        due = self.layout.starts[sheet.title, number]
        places = page.where(block.title)
        return min(places, key=lambda place: (place[1] != block.column, abs(place[0] - due)), default=None)

    def _window(self, sheet: Sheet, number: int, tops: dict[int, int], page: Page) -> tuple[int, int]:
        """The rows where a block must stand, between the titles above and below it."""
        due = {other: self.layout.starts[sheet.title, other] for other in tops}
        start = self.layout.starts[sheet.title, number]
        end = start + height(sheet.blocks[number])
        above = [other for other in tops if due[other] <= start]
        below = [tops[other] for other in tops if due[other] >= end]
        top = tops[max(above, key=lambda other: due[other])] if above else 0
        return top, min((row for row in below if row > top), default=page.rows)

    def _fields(
        self, sheet: Sheet, number: int, block: Fields, page: Page, window: tuple[int, int], tops: dict[int, int]
    ) -> dict[int, Area]:
        """Labelled cells: their column of labels, then how far to the right the cells stand."""
        places = {
            field.key: [place for place in page.where(field.label) if window[0] <= place[0] < window[1]]
            for field in block.fields
        }
        counted: dict[int, int] = {}
        for found in places.values():
            for column in {place[1] for place in found}:
                counted[column] = counted.get(column, 0) + 1
        if not counted:
            self.gone.append(
                Gone(sheet.title, None, f"The cells of {block.title or block.fields[0].label} are not there.")
            )
            return {}
        labels = max(counted, key=lambda column: (counted[column], -abs(column - block.column)))
        rows = {
            key: min(place[0] for place in found if place[1] == labels)
            for key, found in places.items()
            if any(place[1] == labels for place in found)
        }
        step = self._step(page, block, rows, labels)
        beside = {field.beside.key: rows[field.key] for field in block.fields if field.beside and field.key in rows}
        after = max(
            range(step + 1, step + FURTHER),
            key=lambda column: (sum(page.has_formula((row, labels + column)) for row in beside.values()), -column),
        )
        for field in block.fields:
            if field.key not in rows:
                self.gone.append(
                    Gone(sheet.title, None, f"The label {field.label!r} is not there: its cell cannot be found.")
                )
                continue
            self.cells[f"{block.key}.{field.key}"] = [(rows[field.key], labels + step)]
            if field.beside:
                self.cells[f"{block.key}.{field.beside.key}"] = [(rows[field.key], labels + after)]
        return {number: Area(tops.get(number, min(rows.values())), labels, labels + step + 1)}

    def _step(self, page: Page, block: Fields, rows: dict[str, int], labels: int) -> int:
        """How many columns right of their labels the cells stand: where most formulas of the block are."""
        computed = [rows[field.key] for field in block.fields if field.formula and field.key in rows]

        def fits(step: int) -> tuple[int, int, int]:
            formulas = sum(page.has_formula((row, labels + step)) for row in computed)
            filled = sum((row, labels + step) in page.cells for row in rows.values())
            return formulas, -abs(step - block.span), filled

        return max(range(1, block.span + FURTHER), key=fits)

    def _headings(self, sheet: Sheet, block: Table, page: Page, window: tuple[int, int]) -> tuple[int, dict[str, int]]:
        """The row of a table's headings, and the column of each."""
        counted: dict[int, int] = {}
        for column in block.columns:
            for row in {place[0] for place in page.where(column.heading) if window[0] <= place[0] < window[1]}:
                counted[row] = counted.get(row, 0) + 1
        row = max(counted, key=lambda row: (counted[row], -row), default=0)
        if counted.get(row, 0) * 3 < len(block.columns):
            self.gone.append(Gone(sheet.title, None, f"The headings of {block.title or sheet.title} are not there."))
            return 0, {}
        columns: dict[str, int] = {}
        for column in block.columns:
            places = [place[1] for place in page.where(column.heading) if place[0] == row]
            if places:
                columns[column.key] = min(places)
        for column in block.columns:
            if column.key not in columns:
                self._other_heading(sheet, column, page, row, columns)
        return row, columns

    def _other_heading(self, sheet: Sheet, column: Column, page: Page, row: int, columns: dict[str, int]) -> None:
        """A heading that was changed: its words may still be there with another unit."""
        words = same(column.heading.rpartition(", ")[0])
        near = [
            place
            for (at, place), cell in page.cells.items()
            if at == row and place not in columns.values() and words and same(cell.value).rpartition(", ")[0] == words
        ]
        if len(near) == 1:
            columns[column.key] = near[0]
            heading = page.cells[row, near[0]].value
            sentence = f"This heading was {column.heading!r}, now {heading!r}: are its numbers in the workbook's units?"
            self.gone.append(Gone(sheet.title, (row, near[0]), sentence))
        else:
            self.gone.append(
                Gone(sheet.title, None, f"The heading {column.heading!r} is not there: its column is not read.")
            )

    def _rows(self, sheet: Sheet, block: Table, page: Page, row: int, columns: dict[str, int], end: int) -> None:
        fixed = next((column for column in block.columns if column.fixed and column.key in columns), None)
        rows: list[int | None]
        if fixed:
            stand = {same(page.value((at, columns[fixed.key]))): at for at in range(end - 1, row, -1)}
            rows = [stand.get(same(value)) for value in fixed.fixed]
        else:
            last = self._last_row(block, page, row, columns, end)
            if last - row > MOST_ROWS:
                place = f"{self.contents.file}: {self.titles[sheet.title]}"
                raise Refused(f"{place}: filled down to row {last + 1:,}; a table can have {MOST_ROWS:,} rows")
            filled = {at for at, column in page.cells if column in columns.values()}
            kept = any(column.formula for column in block.columns)  # else an empty row is a row like any other
            rows = [at for at in range(row + 1, last + 1) if at in filled or not kept]
        for key, column in columns.items():
            self.cells[f"{block.key}.{key}"] = [None if at is None else (at, column) for at in rows]

    def _last_row(self, block: Table, page: Page, row: int, columns: dict[str, int], end: int) -> int:
        """The last row with formulas, or of a table without any; below, the last filled in like a row of the table."""
        computed = [columns[column.key] for column in block.columns if column.formula and column.key in columns]
        typed = [columns[column.key] for column in block.columns if column.typed and column.key in columns]
        last = row if computed else min(row + block.rows, end - 1)
        for at in sorted({at for at, column in page.cells if row < at < end and column in columns.values()}):
            filled = [page.cells[at, column] for column in typed if (at, column) in page.cells]
            like_a_row = len(filled) > 1 and not any(cell.formula for cell in filled) and (at, typed[0]) in page.cells
            if like_a_row or any(page.has_formula((at, column)) for column in computed):
                last = max(last, at)
        return last


class Page:
    """The cells of a sheet, with an index of its words."""

    def __init__(self, cells: Cells) -> None:
        self.cells = cells
        self.rows = max((row for row, _ in cells), default=0) + 1
        self.words: dict[str, list[At]] = {}
        for spot, cell in cells.items():
            if isinstance(cell.value, str) and not cell.formula:
                self.words.setdefault(same(cell.value), []).append(spot)

    def where(self, words: str) -> list[At]:
        """The cells that say this, however spaced."""
        return self.words.get(same(words), []) if words.strip() else []

    def value(self, spot: At) -> Any:
        return self.cells[spot].value if spot in self.cells else None

    def has_formula(self, spot: At) -> bool:
        return spot in self.cells and bool(self.cells[spot].formula)


def same(value: Any) -> str:
    """Words as they compare: a number as Python writes it, spaces and capitals aside."""
    text = f"{value:g}" if isinstance(value, (int, float)) else str(value)
    return " ".join(text.split()).casefold()


def known_words(sheet: Sheet) -> Iterator[str]:
    """Everything of a sheet that is there to read, as it compares."""
    yield from (same(sheet.title), same(sheet.purpose))
    for block in sheet.blocks:
        yield same(block.title)
        if isinstance(block, Fields):
            for field in block.fields:
                yield from (same(field.label), same(field.note))
        elif isinstance(block, Table):
            yield from (same(column.heading) for column in block.columns)
        elif isinstance(block, Text):
            yield from (same(line) for line in block.lines)
