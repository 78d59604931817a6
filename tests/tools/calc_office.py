"""LibreOffice Calc with the add-in, for the tests: installed into a profile of its own, then driven.

LibreOffice refuses to install an extension for root alone, so where the tests run as root
everything here runs as the user "nobody", in a folder that belongs to it.
"""

from __future__ import annotations

import json
import os
import shutil
import subprocess
import tempfile
import zipfile
from collections.abc import Iterator, Mapping, Sequence
from contextlib import contextmanager
from functools import cache
from pathlib import Path
from typing import Any

from sheetfuncs.hosts.calc.builder import write_addin
from sheetfuncs.hosts.calc.typelibrary import type_library
from tests.tools import office

OLDEST = (7, 4)  # of LibreOffice, for the add-in
NOBODY = 65534
DRIVER = Path(__file__).with_name("calc_driver.py")
SOFFICE = "soffice"


class Office:
    """LibreOffice in a profile of its own, in a folder that also takes the files it reads and writes."""

    def __init__(self, folder: Path, soffice: str = SOFFICE) -> None:
        self.folder = folder
        self.soffice = soffice
        self.profile = folder / "profile"
        as_root = hasattr(os, "geteuid") and os.geteuid() == 0
        self.user: dict[str, Any] = {"user": NOBODY, "group": NOBODY} if as_root else {}
        kept = {name: value for name, value in os.environ.items() if not name.startswith("PYTHON")}
        self.environment = {**kept, "HOME": str(folder), **office.own_extensions(folder)}
        folder.chmod(0o755)
        if as_root:
            os.chown(folder, NOBODY, NOBODY)
        if not self.profile.exists():
            office.new_profile(folder)
            if as_root:
                for made in (self.profile, *self.profile.rglob("*")):
                    os.chown(made, NOBODY, NOBODY)

    def unopkg(self, command: str, *arguments: str | Path) -> subprocess.CompletedProcess[str]:
        """Run LibreOffice's installer of extensions."""
        unopkg = str(Path(shutil.which(self.soffice) or self.soffice).resolve().with_name("unopkg"))
        return self._run(unopkg, command, f"-env:UserInstallation={self.profile.as_uri()}", *map(str, arguments))

    def takes(self, path: Path, name: str) -> Path:
        """A copy of a file in the folder, that may be changed."""
        copy = self.folder / name
        copy.write_bytes(path.read_bytes())
        copy.chmod(0o644)
        return copy

    def convert(self, path: Path, kind: str) -> Path:
        """Load a file of the folder, compute it and save it as another kind."""
        out = self.folder / "converted"
        out.mkdir(exist_ok=True)
        out.chmod(0o777)
        profile = f"-env:UserInstallation={self.profile.as_uri()}"
        command = [self.soffice, profile, "--headless", "--convert-to", kind, "--outdir", str(out), str(path)]
        done = self._run(*command)
        made = out / f"{path.stem}.{kind.partition(':')[0]}"
        assert made.exists(), done.stderr
        return made

    def _run(self, *command: str) -> subprocess.CompletedProcess[str]:
        return subprocess.run(
            command, capture_output=True, text=True, timeout=300, env=self.environment, cwd=self.folder, **self.user
        )

    @contextmanager
    def calc(self, display: str = "") -> Iterator[Calc]:
        """A running LibreOffice to talk with; with a display, in a window there."""
        command = [uno_python(), "-c", DRIVER.read_text(), self.soffice, self.profile.as_uri()]
        command += ["window"] if display else []
        process = subprocess.Popen(
            command,
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            text=True,
            env=self.environment | ({"DISPLAY": display} if display else {}),
            cwd=self.folder,
            **self.user,
        )
        try:
            calc = Calc(process)
            calc.open()
            yield calc
        finally:
            process.communicate(timeout=120)


class Calc:
    """Sends requests to the driver: each method of its `Driver` can be called here."""

    def __init__(self, process: subprocess.Popen[str]) -> None:
        self.process = process

    def __getattr__(self, method: str) -> Any:
        def ask(*arguments: Any) -> Any:
            assert self.process.stdin and self.process.stdout
            self.process.stdin.write(json.dumps([method, *map(_plain, arguments)]) + "\n")
            self.process.stdin.flush()
            answer = json.loads(self.process.stdout.readline())
            assert "done" in answer, answer
            return answer["done"]

        return ask

    def computed(self, *formulas: str) -> list[Any]:
        """What formulas give, each in a cell of a new sheet."""
        self.open()
        self.fill({f"A{row}": formula for row, formula in enumerate(formulas, 1)})
        return [row[0] for row in self.read(f"A1:A{len(formulas)}")]

    def answers(
        self,
        calls: Sequence[tuple[str, Sequence[Any]]],
        blank: Any,
        errors: Sequence[str],
        modules: Mapping[str, str] | None = None,
    ) -> list[Any]:
        """What calls give, each a name and arguments that stand in cells: `blank` in none, an error as itself.

        `modules` are texts of Basic that the cells may call.
        """
        columns = "ABCDEFG"
        self.open(None, bool(modules))
        if modules:
            self.basic(modules)
        texts = {error: f"={error}" for error in errors} | {True: "=TRUE()", False: "=FALSE()"}
        by_formula = {(type(value), value): text for value, text in texts.items()}
        plain = [["" if v in (None, blank) or (type(v), v) in by_formula else v for v in given] for _, given in calls]
        self.data(f"A1:G{len(calls)}", [row + [""] * (len(columns) - len(row)) for row in plain])
        places = [
            {f"{column}{row}": value for column, value in zip(columns, given, strict=False)}
            for row, (_, given) in enumerate(calls, 1)
        ]
        asked = {place: by_formula.get((type(value), value), "") for row in places for place, value in row.items()}
        self.fill({place: text for place, text in asked.items() if text})
        given = [";".join(place if value is not None else "" for place, value in row.items()) for row in places]
        self.formulas(f"H1:H{len(calls)}", [[f"={name}({text})"] for (name, _), text in zip(calls, given, strict=True)])
        return [row[0] for row in self.read(f"H1:H{len(calls)}")]


def _plain(argument: Any) -> Any:
    return str(argument) if isinstance(argument, Path) else argument


@contextmanager
def own_folder() -> Iterator[Path]:
    """A folder that other users of this machine may enter, as those of pytest are not."""
    with tempfile.TemporaryDirectory(prefix="sheetfuncs-", ignore_cleanup_errors=True) as name:
        yield Path(name)


@contextmanager
def with_addin(oldest: tuple[int, ...] = office.OLDEST_WITH_LET) -> Iterator[Office]:
    """LibreOffice in a fresh profile with the add-in installed."""
    office.needed(oldest)
    with own_folder() as folder:
        made = Office(folder)
        write_addin(folder / "sheetfuncs.oxt")
        done = made.unopkg("add", folder / "sheetfuncs.oxt")
        assert done.returncode == 0, done.stderr
        yield made


@cache
def uno_python() -> str:
    """A Python that can talk with LibreOffice: the system's, or the one that LibreOffice brings."""
    beside = Path(shutil.which(SOFFICE) or SOFFICE).resolve().with_name("python")
    for python in ("/usr/bin/python3", str(beside)):
        if shutil.which(python) and not subprocess.run([python, "-c", "import uno"], capture_output=True).returncode:
            return python
    raise AssertionError("no Python here has the module uno: install python3-uno")


def write_other_addin(path: Path, parameters: dict[str, str], body: str) -> None:
    """A neighbour among the add-ins, with one function OTHER: as small as an add-in can be."""
    manifest = "".join(
        f'<m:file-entry m:full-path="{name}" m:media-type="application/vnd.sun.star.{kind}"/>'
        for name, kind in {
            "o.rdb": "uno-typelibrary;type=RDB",
            "o.components": "uno-components",
            "CalcAddIns.xcu": "configuration-data",
        }.items()
    )
    files: dict[str, str | bytes] = {
        "META-INF/manifest.xml": f'<m:manifest xmlns:m="http://openoffice.org/2001/manifest">{manifest}</m:manifest>',
        "description.xml": """<description xmlns="http://openoffice.org/extensions/description/2006">
            <identifier value="other"/><version value="1.0"/></description>""",
        "o.components": """<components xmlns="http://openoffice.org/2010/uno-components">
            <component loader="com.sun.star.loader.Python" uri="o.py"><implementation name="other.Other">
            <service name="other.Other"/><service name="com.sun.star.sheet.AddIn"/>
            </implementation></component></components>""",
        "CalcAddIns.xcu": """<o:component-data xmlns:o="http://openoffice.org/2001/registry" o:name="CalcAddIns"
            o:package="org.openoffice.Office"><node o:name="AddInInfo"><node o:name="other.Other" o:op="replace">
            <node o:name="AddInFunctions"><node o:name="OTHER" o:op="replace">
            <prop o:name="DisplayName"><value xml:lang="en-US">OTHER</value></prop>
            </node></node></node></node></o:component-data>""",
        "o.rdb": type_library("other.XOther", {"OTHER": parameters}),
        "o.py": f"""
import uno, unohelper
class Other(unohelper.Base, uno.getClass("other.XOther")):
    def __init__(self, context): pass
    def OTHER(self, {", ".join(parameters)}): {body}
g_ImplementationHelper = unohelper.ImplementationHelper()
g_ImplementationHelper.addImplementation(Other, "other.Other", ("other.Other", "com.sun.star.sheet.AddIn"))
""",
    }
    with zipfile.ZipFile(path, "w") as archive:
        for name, content in files.items():
            archive.writestr(name, content)
