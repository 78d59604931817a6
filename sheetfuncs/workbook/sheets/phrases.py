"""Formulas that several sheets share."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from sheetfuncs.formulas.quantities import Limits
from sheetfuncs.workbook.model.days import MONTHS
from sheetfuncs.workbook.model.formula import NOTHING, cases, keys, say, text
from sheetfuncs.workbook.model.kinds import COUNT, WORDS
from sheetfuncs.workbook.model.parts import ASK, MEND, TELL, WEIGHTS, Column, Finding
from sheetfuncs.workbook.model.systems import Units

MOST_CHOICES = 25  # of one CHOOSE: LibreOffice jumps to 30 places and no further
LOOK, NUMBER = "look", "finding"  # the column that says what is wrong with its row, and the one that knows which

NOTE = "A line for the next keeper: what you would do again, and what not. Report and handover print it."


def mend(condition: str, sentence: str, cell: str = "", **parts: str) -> Finding:
    """Something that must be mended."""
    return _finding(condition, sentence, MEND, cell, parts)


def ask(condition: str, sentence: str, cell: str = "", **parts: str) -> Finding:
    """Something doubtful, to look at."""
    return _finding(condition, sentence, ASK, cell, parts)


def tell(condition: str, sentence: str, cell: str = "", **parts: str) -> Finding:
    """Something worth knowing."""
    return _finding(condition, sentence, TELL, cell, parts)


def _finding(condition: str, sentence: str, weight: str, cell: str, parts: dict[str, str]) -> Finding:
    """A finding about a column; where none is named, about the first in its condition."""
    return Finding(sentence, cell or next(keys(condition), ""), condition, say(sentence, **parts), weight)


def which(findings: Sequence[Finding]) -> str:
    """The number, from 1, of the first finding whose condition holds; 0 for none."""
    return cases(*((one.condition, str(number)) for number, one in enumerate(findings, 1)), otherwise="0")


def words_of(findings: Sequence[Finding], number: str, otherwise: str = NOTHING) -> str:
    """What the finding of a number says."""
    if not findings:
        return otherwise
    said = [one.said for one in findings]
    formula = NOTHING
    for start in reversed(range(0, len(said), MOST_CHOICES)):
        choice = f"CHOOSE({number}-{start},{','.join(said[start : start + MOST_CHOICES])})"
        formula = f"IF({number}<={start + MOST_CHOICES},{choice},{formula})"
    return f"IF({number}=0,{otherwise},{formula})"


def look(*findings: Finding, heading: str = "Look", otherwise: str = NOTHING, width: float | None = None) -> Column:
    """Where a row says what is wrong with it, or else something of its own; `judged` completes it."""
    key = LOOK if otherwise == NOTHING else "do"
    return Column(key, heading, WORDS, otherwise, findings=findings, number=NUMBER, width=width)


def judged(columns: Sequence[Column], units: Units) -> tuple[Column, ...]:
    """The columns of a log with its Look made whole, the gravest first, and a hidden column that tells which it says."""
    place = next(number for number, column in enumerate(columns) if column.number)
    found = columns[place]
    findings = sorted((*of_kind(columns, units), *found.findings), key=lambda one: WEIGHTS.index(one.weight))
    said = words_of(findings, f"[{NUMBER}]", str(found.formula))
    number = Column(NUMBER, f"Which {found.heading}", COUNT, which(findings), hidden=True)
    return (*columns[:place], found._replace(formula=said, findings=findings), *columns[place + 1 :], number)


def of_kind(columns: Sequence[Column], units: Units) -> Iterator[Finding]:
    """Text where a number, a day or a time belongs, and those beyond their limits: from the columns themselves."""
    for column in columns:
        if not column.typed or column.kind.wordy or column.choices:
            continue
        cell = f"[{column.key}]"
        said = text(column.kind.is_text(column.words, units))
        yield Finding(f"text {column.key}", column.key, f"ISTEXT({cell})", said, MEND, of_kind=True)
        if ends := column.kind.ends(column.limits):
            said = text(column.kind.outside(column.words, column.limits, units))
            yield Finding(f"limits {column.key}", column.key, beyond(cell, ends), said, MEND, of_kind=True)


def beyond(cell: str, limits: Limits) -> str:
    """Whether a cell holds a number outside its limits."""
    low, high = limits
    return f"AND(ISNUMBER({cell}),OR(N({cell})<{low},N({cell})>{high}))"


def when(condition: str, formula: str) -> str:
    """A value where a row is filled in and the sum works out; else nothing."""
    return f'IF({condition},IFERROR({formula},""),"")'


def numbers(*names: str) -> str:
    """Whether each of these cells of the row is a number."""
    return f"COUNT({','.join(f'[{key}]' for key in names)})={len(names)}"


def day(date: str, units: Units) -> str:
    """A date to read aloud, the same in every language of the spreadsheet: Mar 5, or 5 Mar."""
    months = ",".join(f'"{month}"' for month in MONTHS)
    month, number = f"CHOOSE(MONTH({date}),{months})", f"DAY({date})"
    return str(units.pick(f'{month}&" "&{number}', f'{number}&" "&{month}'))


def weekday(date: str) -> str:
    """The day of the week of a date: Thu."""
    return f'CHOOSE(WEEKDAY({date},2),"Mon","Tue","Wed","Thu","Fri","Sat","Sun")'


def rounded(number: str, digits: int = 1) -> str:
    """A number inside a sentence, with the decimal mark of the spreadsheet."""
    return f"FIXED({number},{digits},TRUE)"


def counted(number: str, one: str, more: str, digits: int = 0) -> str:
    """A number with its word: 1 minute, 2 minutes."""
    return f'FIXED({number},{digits},TRUE)&" "&IF(ROUND({number},{digits})=1,"{one}","{more}")'


def clock(time: str, units: Units) -> str:
    """A time of day to read aloud: 2:30 PM, or 14:30."""
    minute = f"MOD(ROUND(({time})*1440,0),1440)"
    hour = f"INT({minute}/60)"
    past = f'RIGHT("0"&MOD({minute},60),2)'
    twelve = f'IF(MOD({hour},12)=0,12,MOD({hour},12))&":"&{past}&IF({hour}<12," AM"," PM")'
    return str(units.pick(twelve, f'RIGHT("0"&{hour},2)&":"&{past}'))


def of_row(key: str, names: str, wanted: str) -> str:
    """From a table: what stands under `key` beside the name that is wanted."""
    return f"INDEX({key},MATCH({wanted},{names},0))"
