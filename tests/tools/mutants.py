"""Formulas made wrong in random places: does the net of the sheets' cases catch each?

    python -m tests.tools.mutants [HOW MANY] [SEED]

A function is misspelt, a ratio turned over, a sign flipped, a condition dropped or reversed.  A mutant is
caught when the formula is refused at its definition, or when a row of tests/reference/sheets fails; stored
values and golden files do not count.  Prints what was not caught, and the share that was.
"""

from __future__ import annotations

import functools
import random
import sys
from collections.abc import Iterator
from typing import Any

from sheetfuncs.workbook.model import formula as formulas
from sheetfuncs.workbook.model.formula import Sort, Token, WrongFormula
from sheetfuncs.workbook.model.layout import Layout
from sheetfuncs.workbook.model.parts import Column, Field, Fields, Sheet, Table, named
from sheetfuncs.workbook.season import Season
from tests.tools import cases

HOW_MANY, SEED, HALF = 50, 1, 0.5
FLIPPED = {"+": "-", "-": "+", "<": ">=", ">": "<=", "<=": ">", ">=": "<", "=": "<>", "<>": "=", "/": "*"}


def mutations(formula: str, rng: random.Random) -> Iterator[tuple[str, str]]:
    """A formula made wrong once, in words and as text."""
    tokens = list(formulas.tokens(formula))
    places = list(range(len(tokens)))
    rng.shuffle(places)
    for place in places:
        token = tokens[place]
        if token.sort is Sort.CALL and token.name == "IF":
            given, _ = formulas.arguments(tuple(tokens), place + 1)
            before = "".join(one.text for one in tokens[: place + 1])
            after = "".join(one.text for one in tokens[place + 1 :])
            rest = after[after.index(given[0]) + len(given[0]) :]
            if given[0].strip() == "TRUE":
                continue
            # behind a guard that is dropped an IFERROR may still give nothing: such a guard is turned round
            if given[1].strip().startswith("IFERROR") or rng.random() < HALF:
                yield "condition reversed", f"{before}NOT({given[0]}){rest}"
            else:
                yield "condition dropped", f"{before}TRUE{rest}"
        elif token.sort is Sort.CALL:
            yield "function misspelt", _with(tokens, place, token.name[:-1] + "Q" + token.name[-1] + "(")
        elif token.text.strip() in FLIPPED and token.sort in (Sort.OTHER, Sort.COMPARE):
            yield f"{token.text} to {FLIPPED[token.text.strip()]}", _with(tokens, place, FLIPPED[token.text.strip()])


def _with(tokens: list[Token], place: int, text: str) -> str:
    return "".join(token.text for token in (*tokens[:place], Token(Sort.OTHER, text), *tokens[place + 1 :]))


def replaced(sheets: list[Sheet], name: str, formula: str) -> list[Sheet]:
    """The sheets with another formula in one column or labelled cell."""
    block_key, _, key = name.partition(".")

    def cell(what: Any) -> Any:
        if isinstance(what, Field) and what.beside and what.beside.key == key:
            return what._replace(beside=what.beside._replace(formula=formula))
        return what._replace(formula=formula) if what.key == key else what

    found = []
    for sheet in sheets:
        blocks: list[Any] = []
        for block in sheet.blocks:
            if isinstance(block, Table) and block.key == block_key:
                block = block._replace(columns=tuple(map(cell, block.columns)))
            elif isinstance(block, Fields) and block.key == block_key:
                block = block._replace(fields=tuple(map(cell, block.fields)))
            blocks.append(block)
        found.append(sheet._replace(blocks=tuple(blocks)))
    return found


@functools.cache
def _due() -> list[cases.Expected]:
    return cases.expected()


def caught(name: str, formula: str) -> str:
    """By what a wrong formula is caught; "" if by nothing."""
    due = _due()
    groups = {(one.case, one.units): any(other.cell == name and other[1:3] == one[1:3] for other in due) for one in due}
    for case, units in sorted(groups, key=lambda group: not groups[group]):  # those that ask for this very cell first
        try:
            season = _season(case, units, name, formula)
        except WrongFormula:
            return "refused at its definition"
        for one in due:
            if (one.case, one.units) == (case, units) and cases.wrong(season.shown(one.cell, one.row - 1), one):
                return one.place
    table = name.partition(".")[0]
    for said in cases.provoked():
        if said.cell.partition(".")[0] == table:
            season = _season(said.case, said.units, name, formula, said.typed)
            column = next(key for key, what in season.cells.items() if key.startswith(f"{table}.") and what.number)
            if said.sentence not in str(season.value(column, said.row - 1)):
                return said.place
    return ""


def _season(case: str, units: str, name: str, formula: str, typed: Any = None) -> Season:
    season = Season(units, cases.inputs(case, units, typed), cases.ROWS)
    season.pages = replaced(season.pages, name, formula)
    season.layout, season.cells = Layout(season.pages), named(season.pages)
    season.compute()
    return season


def main() -> None:
    count = int(sys.argv[1]) if len(sys.argv) > 1 else HOW_MANY
    rng = random.Random(int(sys.argv[2]) if len(sys.argv) > 2 else SEED)  # noqa: S311 (no secret)
    computed: list[tuple[str, Column | Field]] = [
        (name, what) for name, what in cases.cells("US").items() if what.formula and isinstance(what.formula, str)
    ]
    missed = done = 0
    while done < count:
        name, what = rng.choice(computed)
        mutant = next(mutations(str(what.formula), rng), None)
        if mutant is None:
            continue
        done += 1
        how, formula = mutant
        by = caught(name, formula)
        missed += not by
        print(f"{'caught' if by else 'MISSED':7} {name:28} {how:24} {by}", flush=True)
    print(f"{done - missed} of {done} caught, {(done - missed) / done:.0%}")


if __name__ == "__main__":
    main()
