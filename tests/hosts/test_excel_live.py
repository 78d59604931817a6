"""The workbook that is open in Excel, with a stand-in for Excel: there is none here."""

from __future__ import annotations

import sys
from pathlib import Path
from types import SimpleNamespace
from typing import Any

import pytest
import xlwings

from sheetfuncs.files import Refused
from sheetfuncs.hosts.excel import live


class _Book:
    """A workbook as xlwings gives it: on Windows Excel writes a copy, on a Mac it says whether all is saved."""

    def __init__(self, path: Path, saved: bool = True) -> None:
        self.name, self.fullname = path.name, str(path)
        self.api = SimpleNamespace(SaveCopyAs=self._copy, saved=SimpleNamespace(get=lambda: saved))

    def _copy(self, path: str) -> None:
        Path(path).write_text("with what is not saved yet")


def _open(monkeypatch: pytest.MonkeyPatch, platform: str, book: Any) -> None:
    monkeypatch.setattr(sys, "platform", platform)
    monkeypatch.setattr(xlwings, "books", SimpleNamespace(active=book))


@pytest.fixture
def season(tmp_path: Path) -> Path:
    path = tmp_path / "Grandpa's season.xlsm"
    path.write_text("as last saved")
    return path


@pytest.fixture
def place(tmp_path: Path) -> Path:
    place = tmp_path / "copies"
    place.mkdir()
    return place


def test_on_windows_excel_writes_the_copy(monkeypatch: pytest.MonkeyPatch, season: Path, place: Path) -> None:
    _open(monkeypatch, "win32", _Book(season))
    copy = live.open_workbook_copy(place)
    assert copy == place / season.name
    assert copy.read_text() == "with what is not saved yet"
    assert season.read_text() == "as last saved"


def test_a_workbook_that_was_never_saved(monkeypatch: pytest.MonkeyPatch, place: Path) -> None:
    _open(monkeypatch, "win32", _Book(Path("Book1")))
    assert live.open_workbook_copy(place).name == "Book1.xlsx"


def test_on_a_mac_the_saved_file_is_copied(monkeypatch: pytest.MonkeyPatch, season: Path, place: Path) -> None:
    _open(monkeypatch, "darwin", _Book(season))
    assert live.open_workbook_copy(place).read_text() == "as last saved"
    _open(monkeypatch, "darwin", _Book(season, saved=False))
    with pytest.raises(Refused, match="has changes that are not saved"):
        live.open_workbook_copy(place)


@pytest.mark.parametrize("platform", ["win32", "darwin"])
def test_excel_says_no(monkeypatch: pytest.MonkeyPatch, platform: str, season: Path, place: Path) -> None:
    book = _Book(season)
    book.fullname = str(season.with_name("moved.xlsm"))

    def busy(path: str) -> None:
        raise RuntimeError("Call was rejected by callee.")

    book.api.SaveCopyAs = busy
    _open(monkeypatch, platform, book)
    with pytest.raises(Refused, match=r"Grandpa's season.xlsm: Excel gives no copy \(.*\); close any window"):
        live.open_workbook_copy(place)


def test_no_workbook_is_open(monkeypatch: pytest.MonkeyPatch, place: Path) -> None:
    _open(monkeypatch, "win32", None)
    with pytest.raises(Refused, match="no workbook is open in Excel"):
        live.open_workbook_copy(place)


def test_no_excel_runs(monkeypatch: pytest.MonkeyPatch, place: Path) -> None:
    """xlwings itself, which finds no Excel here, even if it is told that this is Windows."""
    monkeypatch.setattr(sys, "platform", "win32")
    with pytest.raises(Refused, match=r"no workbook is open in Excel \(.*xlwings"):
        live.open_workbook_copy(place)


def test_where_there_is_no_excel(monkeypatch: pytest.MonkeyPatch, place: Path) -> None:
    monkeypatch.setattr(sys, "platform", "linux")
    with pytest.raises(Refused, match="there is no Excel on this machine; save the workbook, and give the file's name"):
        live.open_workbook_copy(place)


def test_without_xlwings(monkeypatch: pytest.MonkeyPatch, place: Path) -> None:
    monkeypatch.setattr(sys, "platform", "win32")
    monkeypatch.setitem(sys.modules, "xlwings", None)
    with pytest.raises(Refused, match="this Python has no xlwings; install it: python -m pip install"):
        live.open_workbook_copy(place)
