"""How long 20,000 calls of FINISH_TEMP take in LibreOffice Calc.

    python -m tests.tools.benchmark_calc

Compared: the add-in, an add-in's function that does nothing, and the same cells in the inline
edition.  Each column alone is computed anew, five times; the quickest counts.
Wanted: at most 15 µs a call over the empty function, and at least 5 times faster than inline.
"""

from __future__ import annotations

import sys

from sheetfuncs import FINISH_TEMP
from sheetfuncs.formulas.catalogue import CATALOGUE
from sheetfuncs.hosts.calc.builder import methods, write_addin
from sheetfuncs.hosts.trace import inline
from tests.tools.calc_office import Office, own_folder, write_other_addin

CALLS = 20000
STRENGTH, PRESSURE = 66.9, 29.92
MOST_OVER_EMPTY = 15e-6
LEAST_FASTER = 5.0


def main() -> int:
    with own_folder() as folder:
        office = Office(folder)
        write_addin(folder / "sheetfuncs.oxt")
        write_other_addin(folder / "other.oxt", methods()["FINISH_TEMP"], "return 0.0")
        for name in ("sheetfuncs.oxt", "other.oxt"):
            office.unopkg("add", folder / name)
        addin = seconds(office, "=FINISH_TEMP(A1;B1)", FINISH_TEMP(STRENGTH, PRESSURE))
        empty = seconds(office, "=OTHER(A1;B1)", 0.0)
        written_out = seconds(office, inline_formula(), FINISH_TEMP(STRENGTH, PRESSURE))
    over, faster = (addin - empty) / CALLS, written_out / addin
    for name, each in {"add-in": addin, "empty function": empty, "inline": written_out}.items():
        print(f"{name:15} {each / CALLS * 1e6:7.1f} µs a call")
    print(f"add-in over an empty function: {over * 1e6:.1f} µs (at most {MOST_OVER_EMPTY * 1e6:.0f})")
    print(f"inline over add-in: {faster:.1f} times (at least {LEAST_FASTER:.0f})")
    return 0 if over <= MOST_OVER_EMPTY and faster >= LEAST_FASTER else 1


def seconds(office: Office, formula: str, first: float) -> float:
    """The time of one computation of all calls."""
    with office.calc() as calc:
        calc.data(f"A1:B{CALLS}", [[STRENGTH + row / CALLS, PRESSURE + row / CALLS] for row in range(CALLS)])
        calc.fill_down(f"C1:C{CALLS}", formula)
        best: float = min(calc.recalculate() for _ in range(5))
        [[found]] = calc.read("C1")
        assert abs(found - first) < 1e-9, found
        return best


def inline_formula() -> str:
    text = inline(CATALOGUE["FINISH_TEMP"].card, ["A1", "B1"])
    return "=" + text.replace("_xlfn.", "").replace("_xlpm.", "p_").replace(",", ";")


if __name__ == "__main__":
    sys.exit(main())
