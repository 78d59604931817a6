"""Installing, updating and removing the add-in with LibreOffice's own installer, each in a fresh profile."""

from __future__ import annotations

import re
import subprocess
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import openpyxl
import pytest

import sheetfuncs
from sheetfuncs import FINISH_TEMP
from sheetfuncs.formulas.card import Card
from sheetfuncs.formulas.catalogue import CATALOGUE
from sheetfuncs.hosts.calc import builder
from tests.tools import office
from tests.tools.calc_office import OLDEST, Office, own_folder, uno_python, write_other_addin

CALL = "=FINISH_TEMP(66.9;29.92)"
RIGHT = FINISH_TEMP(66.9, 29.92)
NO_SUCH_NAME, NO_PARAMETERS = "#NAME?", "Err:504"

DOUBLE = "return 2 * x"
NOT_EVEN_STARTING = "return 2 *"


@pytest.fixture
def fresh() -> Iterator[Office]:
    office.needed(OLDEST)
    with own_folder() as folder:
        yield Office(folder)


def install(into: Office, name: str = "sheetfuncs.oxt", *options: str) -> None:
    builder.write_addin(into.folder / name)
    done = into.unopkg("add", *options, into.folder / name)
    assert done.returncode == 0, done.stderr


def computed(where: Office, *formulas: str) -> list[Any]:
    with where.calc() as calc:
        return calc.computed(*formulas)


def versions(where: Office) -> dict[str, str]:
    """What is installed, by identifier."""
    listed = where.unopkg("list").stdout
    return dict(re.findall(r"^Identifier: (\S+)\n\s+Version: (\S*)", listed, re.MULTILINE))


def test_install_update_and_remove(fresh: Office, monkeypatch: pytest.MonkeyPatch) -> None:
    assert computed(fresh, CALL) == [NO_SUCH_NAME]
    install(fresh)
    assert versions(fresh) == {builder.IDENTIFIER: sheetfuncs.__version__}
    assert computed(fresh, CALL) == [RIGHT]

    # The next version has one function less, and says something else.
    monkeypatch.setattr(sheetfuncs, "__version__", "99.0")
    monkeypatch.setattr(builder, "CATALOGUE", {n: f for n, f in CATALOGUE.items() if n != "JAR_COUNT"})
    monkeypatch.setattr(Card, "sentence", property(lambda card: f"Newer: {card.summary}"))
    install(fresh, "newer.oxt")
    assert versions(fresh) == {builder.IDENTIFIER: "99.0"}
    with fresh.calc() as calc:
        assert calc.computed(CALL, "=JAR_COUNT(1;16)") == [RIGHT, NO_SUCH_NAME]
        assert calc.describe("FINISH_TEMP")["Description"].startswith("Newer: ")

    assert fresh.unopkg("remove", builder.IDENTIFIER).returncode == 0
    assert versions(fresh) == {}
    assert computed(fresh, CALL) == [NO_SUCH_NAME]


def test_a_broken_file_does_no_harm(fresh: Office) -> None:
    """Half a file and a text are refused; of a file without content LibreOffice makes an extension without content."""
    install(fresh)
    whole = (fresh.folder / "sheetfuncs.oxt").read_bytes()
    for name, content in {"half.oxt": whole[: len(whole) // 2], "text.oxt": b"not an add-in", "empty.oxt": b""}.items():
        (fresh.folder / name).write_bytes(content)
        done = fresh.unopkg("add", "--force", fresh.folder / name)
        assert done.returncode != 0 or name == "empty.oxt"
        assert versions(fresh)[builder.IDENTIFIER] == sheetfuncs.__version__
    assert computed(fresh, CALL) == [RIGHT]


@pytest.mark.parametrize("program, answer", [(DOUBLE, 4.0), (NOT_EVEN_STARTING, NO_PARAMETERS)])
def test_another_add_in_beside_it(fresh: Office, program: str, answer: Any) -> None:
    """One that computes, and one whose Python does not even start."""
    install(fresh)
    write_other_addin(fresh.folder / "other.oxt", {"x": "double"}, program)
    assert fresh.unopkg("add", fresh.folder / "other.oxt").returncode == 0
    assert set(versions(fresh)) == {builder.IDENTIFIER, "other"}
    assert computed(fresh, CALL, "=OTHER(2)", CALL) == [RIGHT, answer, RIGHT]
    assert fresh.unopkg("remove", "other").returncode == 0
    assert computed(fresh, CALL) == [RIGHT]


def test_another_sheetfuncs_on_the_machine_is_not_taken_for_it(fresh: Office) -> None:
    install(fresh)
    asked = [uno_python(), "-m", "site", "--user-site"]
    site = subprocess.run(asked, capture_output=True, text=True, env=fresh.environment, **fresh.user).stdout.strip()
    (Path(site) / "sheetfuncs").mkdir(parents=True)
    (Path(site) / "sheetfuncs" / "__init__.py").write_text("raise ImportError('not this one')")
    seen = subprocess.run(
        [uno_python(), "-c", "import sheetfuncs"],
        capture_output=True,
        text=True,
        cwd=fresh.folder,
        env=fresh.environment,
        **fresh.user,
    )
    assert "not this one" in seen.stderr
    assert computed(fresh, CALL) == [RIGHT]


def test_for_everybody_and_not_for_the_tests(fresh: Office, monkeypatch: pytest.MonkeyPatch) -> None:
    """Installed for everybody, each user has it; the LibreOffice of a test has only what that test installs."""
    install(fresh, "sheetfuncs.oxt", "--shared")
    assert builder.IDENTIFIER in fresh.unopkg("list", "--shared").stdout
    assert versions(fresh) == {}
    assert computed(fresh, CALL) == [RIGHT]

    monkeypatch.setenv(office.FOR_EVERYBODY, fresh.environment[office.FOR_EVERYBODY])
    with own_folder() as folder:
        other = Office(folder)
        assert computed(other, CALL) == [NO_SUCH_NAME]
    with own_folder() as folder:
        book = openpyxl.Workbook()
        book.worksheets[0]["A1"] = "=FINISH_TEMP(66.9,29.92)"
        book.save(folder / "call.xlsx")

        def shown(name: str) -> str:
            (folder / name).mkdir()
            return office.convert(folder / "call.xlsx", "csv", office.new_profile(folder / name)).read_text().strip()

        assert shown("alone") == NO_SUCH_NAME
        monkeypatch.setattr(office, "own_extensions", lambda _: {})
        assert float(shown("with what the machine has")) == pytest.approx(RIGHT)
