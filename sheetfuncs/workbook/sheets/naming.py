"""Cells that name several things at once: "B1, B2", "b1;B2", "B1 and B2", "All Sap", a place."""

from __future__ import annotations

ALL_SAP, ALL_PART = "all sap", "all part-boiled"  # what a blank means: in a boil, in a batch
MOST_NAMES = 8  # of a cell that are looked up one by one
_LONGEST = 200  # characters of a list that is taken apart

_APART = (("\u00a0", " "), (";", ","), ("+", ","), ("&", ","), (" and ", ","), ("*", ""), ("?", ""), ("~", ""))
_SYNONYMS = ((",all,", f",{ALL_SAP},"), (",sap,", f",{ALL_SAP},"), (",,", ","), (",,", ","))


def listed(cell: str, blank: str) -> str:
    """The names of a cell as ",b1,all sap,"; so a lot is named where "*,b1,*" matches."""
    words = f'LOWER(IF(TRIM({cell})="","{blank}",{cell}))'
    words = f'SUBSTITUTE({words},CHAR(10),",")'
    for old, new in _APART:
        words = f'SUBSTITUTE({words},"{old}","{new}")'
    words = f'","&SUBSTITUTE(SUBSTITUTE(TRIM({words}),", ",",")," ,",",")&","'
    for old, new in _SYNONYMS:
        words = f'SUBSTITUTE({words},"{old}","{new}")'
    return words


def nth(names: str, number: int) -> str:
    """One name of such a list, counted from 1; "" where there are not so many."""
    return f'TRIM(MID(SUBSTITUTE({names},",",REPT(" ",{_LONGEST})),{_LONGEST * number + 1},{_LONGEST}))'


def too_many(names: str) -> str:
    """Whether a list is longer than it can be taken apart."""
    return f'OR(LEN({names})>{_LONGEST},LEN({names})-LEN(SUBSTITUTE({names},",",""))>{MOST_NAMES + 1})'


def naming(name: str) -> str:
    """The criterion for lists that hold the name that a formula gives."""
    return f'"*,"&{name}&",*"'


def literally(name: str) -> str:
    """The criterion for lists that hold this very name."""
    return f'"*,{name},*"'


def cleaned(cell: str) -> str:
    """A single name as lists have it."""
    return f'LOWER(TRIM(SUBSTITUTE({cell},"\u00a0"," ")))'
