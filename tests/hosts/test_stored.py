"""The grammar of what a file stores: the published forms, Excel's own files, and ours beside them."""

from __future__ import annotations

import re
import zipfile
from pathlib import Path

import pytest

from sheetfuncs.formulas.catalogue import CATALOGUE
from sheetfuncs.workbook.write.names import definitions
from tests.tools.edits import example

# What Excel for Mac 16.115 stored for what was typed: xln, probes/README.md, F9 (2026-10-06); and for LAMBDA and
# LET alone, the documentation of libxlsxwriter ("lambda.c") and rust_xlsxwriter ("app_lambda").
STORED = {
    "LAMBDA(value, rate, [periods], IF(ISOMITTED(periods), value, rate))": (
        "_xlfn.LAMBDA(_xlpm.value,_xlpm.rate,_xlop.periods, "
        "IF(_xlfn.ISOMITTED(_xlpm.periods), _xlpm.value, _xlpm.rate))"
    ),
    "LAMBDA([x], [y], IF(ISOMITTED(x), 1, y))": (
        "_xlfn.LAMBDA(_xlop.x,_xlop.y, IF(_xlfn.ISOMITTED(_xlpm.x), 1, _xlpm.y))"
    ),
    "LAMBDA(x, LET(y, x * 2, z, y + 1, y * z))": (
        "_xlfn.LAMBDA(_xlpm.x, _xlfn.LET(_xlpm.y, _xlpm.x * 2, _xlpm.z, _xlpm.y + 1, _xlpm.y * _xlpm.z))"
    ),
    "LAMBDA(temp, (5/9) * (temp-32))": "_xlfn.LAMBDA(_xlpm.temp, (5/9) * (_xlpm.temp-32))",
}
EXCELS = Path(__file__).parents[1] / "data" / "workbooks" / "excel-writer-xlsx"
_TOKEN = re.compile(r'"(?:[^"]|"")*"|\[?[A-Za-z_][\w.]*\]?(?=\()?|.')
_NEW = {"LAMBDA", "LET", "ISOMITTED"}  # functions that came after the format and are stored with a prefix


def typed(stored: str) -> str:
    """What a person would have typed for what is stored."""
    text = re.sub(r"_xlop\.(\w+)", r"[\1]", stored)
    return re.sub(r"_xlpm\.|_xlfn\.", "", text)


def as_excel_stores(text: str) -> str:
    """The rule that the published forms follow: what a LAMBDA or LET binds has a prefix, and what is new has one."""
    bound = set(re.findall(r"\[(\w+)\]", text))
    for found in re.finditer(r"\b(?:LAMBDA|LET)\(([^()]*)", text):
        first = found[0].partition("(")[0]
        words = [word.strip() for word in found[1].split(",")]
        bound |= {word for word in words if re.fullmatch(r"[a-z]\w*", word)} if first == "LAMBDA" else set(words[:1])
    bound |= set(re.findall(r"(?:LET\(|,\s*)([a-z]\w*)(?=,)", text))

    def stored(found: re.Match[str]) -> str:
        token = found[0]
        if token.startswith("["):
            return f"_xlop.{token[1:-1]}"
        if token in _NEW:
            return f"_xlfn.{token}"
        return f"_xlpm.{token}" if token in bound else token

    return re.sub(r"\s*(,)\s*(?=\[|_xlop)", r"\1", _TOKEN.sub(stored, text))


@pytest.mark.parametrize("text", STORED)
def test_the_rule_gives_the_published_forms(text: str) -> None:
    assert re.sub(r"\s", "", as_excel_stores(text)) == re.sub(r"\s", "", STORED[text])
    assert re.sub(r"\s", "", typed(STORED[text])) == re.sub(r"\s", "", text)


@pytest.mark.parametrize("name", CATALOGUE)
def test_a_function_is_stored_by_the_rule(name: str) -> None:
    """Shown as a person would type it and stored again by the rule, it is the same to the letter."""
    formula = next(one.formula for one in definitions() if one.name == name)
    assert as_excel_stores(typed(formula)) == formula


def _parts(path: Path) -> dict[str, str]:
    with zipfile.ZipFile(path) as archive:
        return {name: archive.read(name).decode("utf-8", "replace") for name in archive.namelist()}


@pytest.fixture(scope="module")
def carried(tmp_path_factory: pytest.TempPathFactory) -> dict[str, str]:
    path = tmp_path_factory.mktemp("carried") / "season.xlsx"
    example().write(path, "carried")
    return _parts(path)


def test_dynamic_arrays_are_declared_as_excel_does(carried: dict[str, str]) -> None:
    """metadata.xml, its content type and its relation, from a workbook that Excel wrote."""
    excel = _parts(EXCELS / "dynamic_array01.xlsx")
    assert carried["xl/metadata.xml"].splitlines() == excel["xl/metadata.xml"].splitlines()
    for part, kind in [
        ("[Content_Types].xml", r"<Override[^>]*metadata[^>]*>"),
        ("xl/_rels/workbook.xml.rels", 'Type="[^"]*sheetMetadata"'),
    ]:
        (ours,), (theirs,) = re.findall(kind, carried[part]), re.findall(kind, excel[part])
        assert ours == theirs


def test_a_call_is_stored_as_excel_stores_a_dynamic_formula(carried: dict[str, str]) -> None:
    excel = _parts(EXCELS / "dynamic_array01.xlsx")["xl/worksheets/sheet1.xml"]
    form = re.compile(
        r'<c r="([A-Z]+[0-9]+)"(?: s="[0-9]+")? cm="1"(?: t="(?:str|e)")?><f t="array" ref="([A-Z]+[0-9]+)">'
    )
    assert form.search(excel)
    calls = 0
    for part, text in carried.items():
        if part.startswith("xl/worksheets/sheet"):
            for cell in re.findall(r"<c [^>]*cm=[^>]*><f [^>]*>", text):
                found = form.match(cell)
                assert found, cell
                assert found[1] == found[2]  # one cell
                calls += 1
    assert calls > 100


def test_no_result_is_without_a_type_and_empty(carried: dict[str, str]) -> None:
    """Excel stores an empty text with t="str"."""
    sheets = "".join(text for part, text in carried.items() if part.startswith("xl/worksheets/sheet"))
    empty = re.findall(r"<c ([^>]*)><f[^>]*>[^<]*</f><v></v>", sheets)
    assert len(empty) > 100
    assert all('t="str"' in one for one in empty)


def test_values_are_kept_until_an_edit(carried: dict[str, str]) -> None:
    """The number of the calculation that Excel 2019 to 365 write, and no word that all is to be computed."""
    assert '<calcPr calcId="191029"/>' in carried["xl/workbook.xml"]


def test_every_name_has_its_words_beside_it(carried: dict[str, str]) -> None:
    for definition in definitions():
        assert f'<definedName name="{definition.name}" comment="' in carried["xl/workbook.xml"]
