"""Formulas that several sheets share, as text."""

from __future__ import annotations

from collections.abc import Sequence

from sheetfuncs.formulas.quantities import Limits
from sheetfuncs.workbook.model.parts import ASK, MEND, TELL, WORDS, Column, Finding

MONTHS = ("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec")


def mend(condition: str, sentence: str) -> Finding:
    """Something that must be mended."""
    return Finding(condition, sentence, MEND)


def ask(condition: str, sentence: str) -> Finding:
    """Something doubtful, to look at."""
    return Finding(condition, sentence, ASK)


def tell(condition: str, sentence: str) -> Finding:
    """Something worth knowing."""
    return Finding(condition, sentence, TELL)


def first_found(findings: Sequence[Finding], otherwise: str = '""') -> str:
    """The sentence of the first condition that holds, or something else."""
    formula = otherwise
    for condition, sentence, _ in reversed(findings):
        formula = f'IF({condition},"{sentence}",{formula})'
    return formula


def look(*findings: Finding) -> Column:
    """The Look cell of a row: what is wrong with it, or nothing."""
    return Column("look", "Look", WORDS, first_found(findings), findings=findings)


def not_a_number(key: str, words: str) -> Finding:
    """Text stands where a number belongs."""
    return mend(f"ISTEXT([{key}])", f"{words} is text, not a number: type the number alone.")


def not_a_date(key: str) -> Finding:
    """A date came out as text."""
    return mend(f"ISTEXT([{key}])", "The date is text: type it again as a date.")


def not_a_time(key: str) -> Finding:
    """A time of day came out as text."""
    return mend(f"ISTEXT([{key}])", "Time is text: type it as 14:30.")


def outside(key: str, limits: Limits, words: str) -> Finding:
    """A number no instrument shows."""
    low, high = limits
    return mend(f"AND(ISNUMBER([{key}]),OR([{key}]<{low},[{key}]>{high}))", f"{words} must be {low:g} to {high:g}.")


def when(condition: str, formula: str) -> str:
    """A value where a row is filled in and the sum works out; else nothing."""
    return f'IF({condition},IFERROR({formula},""),"")'


def numbers(*keys: str) -> str:
    """Whether each of these cells of the row is a number."""
    return f"COUNT({','.join(f'[{key}]' for key in keys)})={len(keys)}"


def day(date: str) -> str:
    """A date to read aloud, the same in every language of the spreadsheet."""
    months = ",".join(f'"{month}"' for month in MONTHS)
    return f'DAY({date})&" "&CHOOSE(MONTH({date}),{months})'


def rounded(number: str, digits: int = 1) -> str:
    """A number inside a sentence, with the decimal mark of the spreadsheet."""
    return f"FIXED({number},{digits},TRUE)"


def of_row(key: str, names: str, wanted: str) -> str:
    """From a table: what stands under `key` beside the name that is wanted."""
    return f"INDEX({key},MATCH({wanted},{names},0))"
