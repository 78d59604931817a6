"""Drives LibreOffice for the tests.  Runs under a Python that has `uno`, not the tests' own.

    python calc_driver.py SOFFICE PROFILE_URL [window]

It starts LibreOffice in that profile, then answers requests: a line of JSON in, `[method, ...]`,
a line of JSON out.  When its input ends, LibreOffice is closed.
"""

import contextlib
import json
import os
import subprocess
import sys
import time
from typing import Any

import uno
from com.sun.star.beans import PropertyValue
from com.sun.star.connection import NoConnectException
from com.sun.star.sheet.CellFlags import FORMULA
from com.sun.star.sheet.FillDirection import TO_BOTTOM
from com.sun.star.sheet.FormulaResult import ERROR


def properties(**named):
    made = []
    for name, value in named.items():
        one = PropertyValue()
        one.Name, one.Value = name, value
        made.append(one)
    return tuple(made)


# LibreOffice draws a column a ninth wider than the pixels that its width means in Excel and Google Sheets.
AS_WIDE_AS_ELSEWHERE = 89  # percent
START = 120  # seconds that LibreOffice may take to answer, on a machine that does much else


class Driver:
    def __init__(self, soffice, profile, *how):
        self.hidden = not how
        pipe = f"sheetfuncs-{os.getpid()}"
        accept = f"--accept=pipe,name={pipe};urp"
        command = [soffice, f"-env:UserInstallation={profile}", "--norestore", "--nologo", accept]
        command += ["--headless"] if self.hidden else []
        self.process = subprocess.Popen(command, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        local = uno.getComponentContext()
        resolver = local.ServiceManager.createInstanceWithContext("com.sun.star.bridge.UnoUrlResolver", local)
        until = time.monotonic() + START
        while True:
            try:
                self.context = resolver.resolve(f"uno:pipe,name={pipe};urp;StarOffice.ComponentContext")
                break
            except NoConnectException:
                if time.monotonic() > until or self.process.poll() is not None:
                    self.process.kill()
                    raise
                time.sleep(0.1)
        self.desktop = self.service("com.sun.star.frame.Desktop")
        self.document: Any = None

    def service(self, name):
        return self.context.ServiceManager.createInstanceWithContext(name, self.context)

    def close(self):
        with contextlib.suppress(Exception):  # it hangs up while it answers
            self.document.close(True)  # or else a window asks whether to save it
            self.desktop.terminate()
        self.process.wait(60)

    # What can be asked for

    def open(self, path=None, macros=False):
        """A new sheet, or a file; with macros allowed or not, in a window as its user has chosen."""
        if self.document is not None:
            self.document.close(True)
        url = uno.systemPathToFileUrl(path) if path else "private:factory/scalc"
        allowed = properties(Hidden=self.hidden, MacroExecutionMode=4 if macros else 0 if self.hidden else 3)
        self.document = self.desktop.loadComponentFromURL(url, "_blank", 0, allowed)

    def show(self, title, width, height, bare=False):
        """Bring a sheet into the window, so large; bare: cells alone, as on a phone."""
        controller = self.document.CurrentController
        controller.Frame.LayoutManager.setVisible(not bare)
        controller.Frame.ContainerWindow.setPosSize(0, 0, width, height, 15)  # all four
        for part in ("ColumnRowHeaders", "SheetTabs", "VerticalScrollBar", "HorizontalScrollBar"):
            setattr(controller, f"Has{part}", not bare)
        controller.ZoomType, controller.ZoomValue = 3, AS_WIDE_AS_ELSEWHERE if bare else 100  # by value
        sheet = self.document.Sheets.getByName(title)
        controller.setActiveSheet(sheet)
        controller.select(sheet.getCellByPosition(0, 0))
        toolkit = self.service("com.sun.star.awt.Toolkit")
        for _ in range(3):
            time.sleep(0.15)
            toolkit.processEventsToIdle()

    def basic(self, modules):
        """Put modules of Basic into the document, by their names; its cells may call their functions."""
        libraries = self.document.BasicLibraries
        library = (
            libraries.getByName("Standard") if libraries.hasByName("Standard") else libraries.createLibrary("Standard")
        )
        for name, text in modules.items():
            library.insertByName(name, text)

    def save(self, path, kind):
        """Save a copy; `kind` is the name of an export filter."""
        self.document.storeToURL(uno.systemPathToFileUrl(path), properties(FilterName=kind))

    def fill(self, contents, sheet=0):
        """Put numbers, texts and formulas into cells by their address."""
        place = self.document.Sheets.getByIndex(sheet)
        for address, content in contents.items():
            cell = place.getCellRangeByName(address)
            if isinstance(content, str):
                cell.setFormula(content)
            else:
                cell.setValue(content)

    def insert(self, what, at, count, sheet=0):
        """Put in rows or columns before one, or a sheet, as a user does after taking the protection off."""
        if what == "Sheet":
            self.document.Sheets.insertNewByName(f"Sheet {at}", at)
            return
        place = self.document.Sheets.getByIndex(sheet)
        place.unprotect("")
        getattr(place, what).insertByIndex(at, count)

    def fill_array(self, address, formula, sheet=0):
        self.document.Sheets.getByIndex(sheet).getCellRangeByName(address).setArrayFormula(formula)

    def data(self, address, rows, sheet=0):
        """Put numbers and texts into a block of cells, exactly as they are."""
        self.document.Sheets.getByIndex(sheet).getCellRangeByName(address).setDataArray(tuple(map(tuple, rows)))

    def formulas(self, address, rows, sheet=0):
        """Put formulas into a block of cells."""
        self.document.Sheets.getByIndex(sheet).getCellRangeByName(address).setFormulaArray(tuple(map(tuple, rows)))

    def fill_down(self, address, formula, sheet=0):
        """Put a formula into the first cell of a column and drag it down."""
        column = self.document.Sheets.getByIndex(sheet).getCellRangeByName(address)
        column.getCellByPosition(0, 0).setFormula(formula)
        column.fillAuto(TO_BOTTOM, 1)

    def retype(self, words):
        """Type every formula anew that has one of these words, as replacing = by = does: names are looked up again."""
        for sheet in self.document.Sheets:
            sheet.unprotect("")
            for cells in sheet.queryContentCells(FORMULA).getCells():
                formula = cells.getFormula()
                if not any(word in formula.upper() for word in words):
                    continue
                if formula.startswith("{"):
                    cells.setArrayFormula("")  # typed as an array, its names of Basic are not looked up
                    cells.setFormula(formula[1:-1])
                else:
                    cells.setFormula(formula)

    def recalculate(self):
        """Compute everything again; returns the seconds that it took."""
        start = time.perf_counter()
        self.document.calculateAll()
        return time.perf_counter() - start

    def formula(self, address, sheet=0):
        return self.document.Sheets.getByIndex(sheet).getCellRangeByName(address).getFormula()

    def read(self, address, sheet=0):
        """Rows of values: a number, a text, or the text of an error."""
        return contents(self.document.Sheets.getByIndex(sheet).getCellRangeByName(address))

    def sheets(self):
        """The value of every formula: {sheet: {address: value}}."""
        found = {}
        for sheet in self.document.Sheets:
            cursor = sheet.createCursor()
            cursor.gotoEndOfUsedArea(False)
            last = cursor.getRangeAddress()
            cells = sheet.getCellRangeByPosition(0, 0, last.EndColumn, last.EndRow)
            values = contents(cells)
            found[sheet.Name] = {
                f"{letters(column)}{row + 1}": values[row][column]
                for row, formulas in enumerate(cells.getFormulaArray())
                for column, formula in enumerate(formulas)
                if formula.startswith(("=", "{="))
            }
        return found

    def describe(self, name):
        """What the Function Wizard says of a function."""
        record = {
            part.Name: part.Value for part in self.service("com.sun.star.sheet.FunctionDescriptions").getByName(name)
        }
        record["Arguments"] = [[one.Name, one.Description, one.IsOptional] for one in record["Arguments"]]
        return record

    def call(self, name, arguments):
        """Call a function without a sheet."""
        return self.service("com.sun.star.sheet.FunctionAccess").callFunction(name, tuple(arguments))


def contents(cells):
    """Rows of what cells hold; their data alone does not tell an error from nothing."""
    rows = [["" if content is None else content for content in row] for row in cells.getDataArray()]
    corner = cells.getRangeAddress()
    for cell in cells.queryFormulaCells(ERROR).getCells():
        place = cell.getCellAddress()
        rows[place.Row - corner.StartRow][place.Column - corner.StartColumn] = error_text(cell.getError())
    return rows


def error_text(number):
    """What Calc shows for an error: LibreOffice Help, "Error Codes in LibreOffice Calc"."""
    shown = {503: "#NUM!", 519: "#VALUE!", 524: "#REF!", 525: "#NAME?", 532: "#DIV/0!", 32767: "#N/A"}
    return shown.get(number, f"Err:{number}")


def letters(column):
    """A column's name: 0 is A, 26 is AA."""
    return (letters(column // 26 - 1) if column >= 26 else "") + chr(ord("A") + column % 26)


def main():
    driver = Driver(*sys.argv[1:])
    for line in sys.stdin:
        method, *arguments = json.loads(line)
        try:
            answer = {"done": getattr(driver, method)(*arguments)}
        except Exception as error:
            answer = {"failed": f"{type(error).__name__}: {error}"}
        print(json.dumps(answer), flush=True)
    driver.close()


if __name__ == "__main__":
    main()
