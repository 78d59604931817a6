"""Names that every host can take: of functions, as a cell calls them, and of their arguments."""

from __future__ import annotations

import keyword
import re

import pytest
from openpyxl.utils import FORMULAE

from sheetfuncs.formulas.catalogue import CATALOGUE

ARGUMENTS = sorted({name for function in CATALOGUE.values() for name in function.card.parameters})

# Reserved by Visual Basic for Applications: MS-VBAL (VBA Language Specification) 3.3.5.2, from memory.
VBA = """
abs addressof and any array as attribute boolean byref byte byval call case cbool cbyte ccur cdate cdbl cdec
cint clng clnglng clngptr close const csng cstr currency cvar cverr date debug decimal declare defbool defbyte
defcur defdate defdbl defint deflng deflnglng deflngptr defobj defsng defstr defvar dim do doevents double
each else elseif empty end endif enum eqv erase error event exit false fix for friend function get global go
gosub goto if imp implements in input inputb instr instrb int integer is lbound len lenb let like lock long
longlong longptr loop lset me mid midb mod new next not nothing null object on open option optional or
paramarray preserve print private pset public put raiseevent redim rem resume return rset scale seek select
set sgn shared single spc static stop string sub tab then to true type typeof ubound unlock until variant
vb_attribute wend while width with withevents write xor
"""
# Reserved by the interface language of LibreOffice: UNOIDL, unoidl/source/sourceprovider-scanner.l, from memory.
UNOIDL = """
any attribute boolean bound byte case char constants constrained default double enum exception false float get
hyper in inout interface long maybeambiguous maybedefault maybevoid module oneway optional out property
published raises readonly removable sequence service set short singleton string struct switch transient true
type typedef union unsigned void
"""


@pytest.mark.parametrize("name", CATALOGUE)
def test_a_functions_name_is_plain_capitals(name):
    assert re.fullmatch(r"[A-Z]+(_[A-Z]+)+", name)
    assert len(name) <= 31


@pytest.mark.parametrize("name", ARGUMENTS)
def test_an_arguments_name_is_plain_words(name):
    assert re.fullmatch(r"[a-z]+(_[a-z]+)*", name)
    assert len(name) <= 31


@pytest.mark.parametrize("name", [*CATALOGUE, *ARGUMENTS])
def test_no_name_reads_as_a_cell(name):
    assert not re.fullmatch(r"[A-Z]{1,3}[0-9]+", name, re.IGNORECASE)  # A1, and TAP12
    assert not re.fullmatch(r"R[0-9]*(C[0-9]*)?|C[0-9]*", name, re.IGNORECASE)  # R1C1, R, C


@pytest.mark.parametrize("name", [*CATALOGUE, *ARGUMENTS])
def test_no_name_is_reserved(name):
    assert name.lower() not in VBA.split() + UNOIDL.split()
    assert not keyword.iskeyword(name)
    assert name.lower() not in ("true", "false", "null")


@pytest.mark.parametrize("name", CATALOGUE)
def test_no_function_hides_one_of_the_spreadsheets_own(name):
    assert name not in FORMULAE  # openpyxl's list of Excel's functions


def test_names_differ_by_more_than_capitals():
    lower = [name.lower() for name in (*CATALOGUE, *ARGUMENTS)]
    assert len(set(lower)) == len(lower)


def test_no_argument_is_called_as_the_tracer_calls_its_steps():
    assert not [name for name in ARGUMENTS if re.fullmatch(r"u|v_[0-9]+", name)]
