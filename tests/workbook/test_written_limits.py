"""What a spreadsheet does not take is refused when a workbook is written: at the limit yes, one over no."""

from __future__ import annotations

import pytest

from sheetfuncs.workbook.write import limits
from sheetfuncs.workbook.write.limits import OverLimit
from sheetfuncs.workbook.write.names import definitions


def let(pairs: int) -> str:
    return f"_xlfn.LET({','.join(f'_xlpm.v_{number},{number}' for number in range(pairs))},1)"


SHAPES = {
    "text": lambda over: f'LEN("{"a" * (254 + over)}""")',
    "names of a LET": lambda over: let(126 + over),
    "arguments": lambda over: f"SUM({','.join('1' * (255 + over))})",
    "depth": lambda over: "ABS(" * (64 + over) + "1" + ")" * (64 + over),
}


@pytest.mark.parametrize("what", SHAPES)
def test_the_shape_of_a_formula(what: str) -> None:
    limits.shape(SHAPES[what](0))
    with pytest.raises(OverLimit, match=r"a spreadsheet takes (255|126|64)"):
        limits.shape(SHAPES[what](1))


def test_commas_and_brackets_in_text_are_no_arguments() -> None:
    limits.shape(f'IF(A1="{",(" * 100}",1,2)')


def test_a_name() -> None:
    limits.name("a" * 255, "1", "b" * 255)
    limits.name("JAR_REST", "1" * 8192, "")
    for text, formula, comment in [("a" * 256, "1", ""), ("JAR", "1" * 8193, ""), ("JAR", "1", "b" * 256)]:
        with pytest.raises(OverLimit, match="a spreadsheet takes"):
            limits.name(text, formula, comment)
    for text in ("TAP12", "R1C1", "two words", "2nd", "A-B"):
        with pytest.raises(OverLimit, match="cannot be a name"):
            limits.name(text, "1", "")


def test_a_validation() -> None:
    limits.validation({"error_message": "a" * 255, "input_title": "a" * 32, "source": ["a" * 127, "b" * 127]}, "Sap")
    for key, text in [("error_message", "a" * 256), ("input_title", "a" * 33), ("source", ["a" * 127, "b" * 128])]:
        with pytest.raises(OverLimit, match=f"{key} of Sap has"):
            limits.validation({key: text}, "Sap")


def test_every_function_keeps_to_them() -> None:
    for definition in definitions():
        limits.name(*definition)
        limits.shape(definition.formula)
