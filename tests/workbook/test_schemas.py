"""Every XML part of every kind of file against the schemas of ISO/IEC 29500-4, and the stored grammar by itself."""

from __future__ import annotations

import io
import zipfile
from pathlib import Path

import pytest

from sheetfuncs.workbook.commands.carry import carry
from sheetfuncs.workbook.commands.excel_folder import write_folder
from tests.tools import schemas
from tests.tools.edits import example
from tests.tools.templates import ROOT

DOWNLOADED = sorted(
    path.relative_to(ROOT).as_posix() for folder in ("templates", "examples") for path in (ROOT / folder).glob("*.xlsx")
)
OTHERS = sorted((ROOT / "tests" / "data" / "workbooks").rglob("*.xls[xm]"))


@pytest.mark.parametrize("name", DOWNLOADED)
def test_every_part_of_what_a_user_downloads(name: str) -> None:
    assert list(schemas.faults((ROOT / name).read_bytes())) == []


@pytest.mark.parametrize("edition", ["carried", "inline", "linked"])
def test_every_part_of_each_edition(edition: str, tmp_path: Path) -> None:
    example().write(tmp_path / "season.xlsx", edition)
    assert list(schemas.faults((tmp_path / "season.xlsx").read_bytes())) == []


def test_every_part_of_a_workbook_with_macros(tmp_path: Path) -> None:
    write_folder(tmp_path / "excel", "US", replace=False)
    (path,) = (tmp_path / "excel").glob("*.xlsm")
    assert list(schemas.faults(path.read_bytes())) == []


@pytest.mark.parametrize("path", OTHERS, ids=lambda path: path.name)
def test_a_workbook_part_with_our_names_is_as_good_as_it_was(path: Path) -> None:
    """Whatever the schema had against it before, it has not more against it after."""
    workbook = carry.read(path)
    after = zipfile.ZipFile(io.BytesIO(carry.carried(workbook)[0])).read(workbook.part)
    before = [line.partition(": ")[2] for line in schemas.faults_of(workbook.archive.read(workbook.part))]
    assert [line.partition(": ")[2] for line in schemas.faults_of(after)] == before


def test_the_schemas_find_what_is_wrong() -> None:
    """Or an empty answer would say nothing."""
    path = ROOT / "tests" / "data" / "workbooks" / "excel-writer-xlsx" / "dynamic_array01.xlsx"
    assert list(schemas.faults(path.read_bytes())) == []
    out = io.BytesIO()
    with zipfile.ZipFile(path) as source, zipfile.ZipFile(out, "w") as target:
        for name in source.namelist():
            part = source.read(name)
            part = part.replace(b"<calcPr", b"<calcPr/><definedNames/><calcPr") if name == "xl/workbook.xml" else part
            target.writestr(name, part.replace(b"<v>", b"<value>").replace(b"</v>", b"</value>"))
    found = list(schemas.faults(out.getvalue()))
    assert any("xl/workbook.xml" in line and "definedNames" in line for line in found)
    assert any("worksheets/sheet1.xml" in line and "value" in line for line in found)
