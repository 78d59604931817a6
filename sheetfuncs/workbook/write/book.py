"""XlsxWriter, made to write formulas and values as they are, and names with words beside them."""

from __future__ import annotations

import datetime
import re
from collections.abc import Mapping
from io import BytesIO
from pathlib import Path
from typing import Any

from xlsxwriter import Workbook
from xlsxwriter.worksheet import Worksheet

from sheetfuncs.workbook.model.parts import Macros
from sheetfuncs.workbook.write import limits, styles
from sheetfuncs.workbook.write.names import Definition

MADE = datetime.datetime(2026, 1, 1)  # a fixed stamp, so that the same season gives the same bytes
# The version of the calculation that Excel 2019 to 365 write.  An older number, or none, makes Excel compute
# every cell when it opens the file: a version without LET or LAMBDA would show #NAME? for each value.
CALCULATED_BY = 191029


class Page(Worksheet):
    """A worksheet that takes formulas as they are: ours name later functions by their stored names
    already, and looking for each of XlsxWriter's list in every formula took half the time."""

    def _prepare_formula(self, formula: str, expand_future_functions: bool = False) -> str:
        return formula.removeprefix("=")

    def _xml_formula_element(self, formula: str, result: Any, attributes: Any = ()) -> None:
        """Text that is empty is text: Excel would read a result without a type as a number."""
        super()._xml_formula_element(formula, result, [*attributes, *([("t", "str")] if result == "" else [])])


class Book(Workbook):
    """A workbook file whose names have words beside them, and whose values Excel keeps as they are stored."""

    def __init__(self) -> None:
        # in memory: XlsxWriter's own temporary files, some thirty, outlive a program that is killed
        options: dict[str, Any] = {"strings_to_formulas": False, "strings_to_urls": False, "in_memory": True}
        options |= {"default_format_properties": dict(styles.BASE)}  # XlsxWriter puts more into it
        self.content = BytesIO()
        super().__init__(self.content, options)
        self.set_calc_mode("auto", CALCULATED_BY)
        self.calc_on_load = False
        self.comments: dict[str, str] = {}

    def stamp(self, properties: Mapping[str, str]) -> None:
        """What stands beside the sheets: the title and other properties of the file."""
        self.set_properties({"title": properties.get("title", ""), "created": MADE})
        for name, text in properties.items():
            self.set_custom_property(name, text)

    def define(self, definition: Definition) -> None:
        limits.name(*definition)
        self.define_name(definition.name, f"={definition.formula}")
        self.comments[definition.name] = definition.comment

    def bring(self, macros: Macros) -> None:
        """The VBA project of xlwings, and the sheet where it looks for its settings."""
        self.add_vba_project(BytesIO(macros.project), is_stream=True)
        page = self.add_worksheet("xlwings.conf")
        page.set_column(0, 1, 20)
        for row, setting in enumerate(macros.settings.items()):
            page.write_row(row, 0, setting)

    def finish(self, out: Path | BytesIO) -> None:
        """Write the file, once it is whole: XlsxWriter leaves its archive open where a disk is full."""
        self.close()
        if isinstance(out, Path):
            out.write_bytes(self.content.getbuffer())
        else:
            out.write(self.content.getbuffer())

    def _write_defined_name(self, defined_name: Any) -> None:
        name, _, formula, _ = defined_name
        if name not in self.comments:
            super()._write_defined_name(defined_name)
            return
        self._xml_data_element("definedName", formula, [("name", name), ("comment", self.comments[name])])


class Words(str):
    """A formula's text: "2024" too, which XlsxWriter would store as a number where a formula is dynamic."""

    def __float__(self) -> float:
        raise ValueError


def storable(value: Any) -> Any:
    """A formula's value as XML takes it: XlsxWriter does this for typed texts only (ECMA-376 part 1, 22.9.2.19)."""
    if not isinstance(value, str):
        return value
    value = re.sub(r"(?=_x[0-9a-fA-F]{4}_)", "_x005F", value)
    return Words(re.sub(r"[\x00-\x08\x0b-\x1f\ufffe\uffff]", lambda found: f"_x{ord(found[0]):04X}_", value))
