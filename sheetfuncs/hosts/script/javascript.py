"""The functions in JavaScript: what Google Sheets' Apps Script and Office's custom functions share.

A name that ends in an underscore is private, as Apps Script has it.
"""

from __future__ import annotations

import json

from sheetfuncs.formulas.card import Card
from sheetfuncs.formulas.quantities import SYSTEMS
from sheetfuncs.hosts.cells import ERRORS
from sheetfuncs.hosts.script.statements import Body, Language

FUNCTIONS = {"SQRT(": "Math.sqrt", "EXP(": "Math.exp", "LN(": "Math.log", "INT(": "Math.floor"}


class JavaScript(Language):
    equals: dict[str, str] = {"=": "===", "<>": "!=="}  # noqa: RUF012
    every = " && "
    any_of = " || "

    def number(self, digits: str) -> str:
        return digits

    def word(self, quoted: str) -> str:
        return json.dumps(quoted[1:-1].replace('""', '"'))

    def operation(self, head: str, operands: list[str]) -> str:
        if head == "^":
            return f"Math.pow({', '.join(operands)})"
        return f"{FUNCTIONS[head]}({operands[0]})" if head in FUNCTIONS else f" {head} ".join(operands)

    def is_text(self, name: str) -> str:
        return f'typeof {name} === "string"'

    def same_word(self, name: str, word: str, same: bool) -> str:
        return f"{'' if same else '!'}sameWord_({name}, {word})"

    def negated(self, condition: str) -> str:
        return f"!({condition})"

    def as_number(self, condition: str) -> str:
        return f"({condition} ? 1 : 0)"

    def either(self, condition: str, yes: str, no: str) -> str:
        return f"({condition} ? {yes} : {no})"

    def assign(self, name: str, value: str) -> str:
        return f"{name} = {value};"

    def leave(self, condition: str, error: str) -> list[str]:
        return [f'if ({condition}) throw new Error("{error}");']

    def branches(self, condition: str, yes: list[str], no: list[str]) -> list[str]:
        return [f"if ({condition}) {{", *_indented(yes), "} else {", *_indented(no), "}"]


def function_text(card: Card) -> str:
    """The sums of one cell: `NAME_`, which throws the text of an error."""
    language = JavaScript()
    body = Body(card, language)
    lines = language.leave(language.any_of.join(f"{name} === null" for name in card.arguments), "#N/A")
    if card.units:
        lines.append(f'if (units === null) units = "{SYSTEMS[0]}";')
    if body.variables:
        lines.append(f"let {', '.join(body.variables)};")
    lines += [*body.lines, f"return {body.result};"]
    return "\n".join([f"function {card.name}_({', '.join(card.parameters)}) {{", *_indented(lines), "}"])


def _indented(lines: list[str]) -> list[str]:
    return [f"  {line}" for line in lines]


SHARED = f"""\
const ERRORS_ = {json.dumps(ERRORS)};

// One call: alone, or for each cell of its ranges.  Ranges are laid beside each other as in an array
// formula: one row or column is repeated, and where another range has no cell the answer is #N/A.
// What becomes of an error is for `failed` to say: by the text of the error, and whether it stands in a range.
function each_(relation, given, failed) {{
  const ranges = given.filter(Array.isArray);
  const one = (values, inRange) => {{
    try {{
      const coming = values.find((value) => ERRORS_.includes(value));
      if (coming !== undefined) throw new Error(coming);
      const answer = relation(...values.map(number_));
      if (typeof answer === "number" && !isFinite(answer)) throw new Error("#NUM!");
      return answer;
    }} catch (error) {{
      return failed(ERRORS_.includes(error.message) ? error.message : "#VALUE!", inRange);
    }}
  }};
  if (ranges.length === 0) return one(given, false);
  const rows = Math.max(...ranges.map((range) => range.length));
  const columns = Math.max(...ranges.map((range) => range[0].length));
  return Array.from({{ length: rows }}, (_, row) =>
    Array.from({{ length: columns }}, (_, column) => one(given.map((value) => element_(value, row, column)), true))
  );
}}

function element_(value, row, column) {{
  if (!Array.isArray(value)) return value;
  const cells = value[value.length === 1 ? 0 : row];
  if (cells === undefined) return "#N/A";
  const place = cells.length === 1 ? 0 : column;
  return place < cells.length ? cells[place] : "#N/A";
}}

// Truth is 1 or 0, and a date the number of its day, as in a spreadsheet: day 0 is 30 December 1899.
function number_(value) {{
  if (value === true) return 1;
  if (value === false) return 0;
  if (!(value instanceof Date)) return value;
  const day = Date.UTC(value.getFullYear(), value.getMonth(), value.getDate());
  const time = (value.getHours() * 60 + value.getMinutes()) * 60 + value.getSeconds();
  return (day - Date.UTC(1899, 11, 30)) / 86400000 + time / 86400;
}}

function sameWord_(given, word) {{
  return typeof given === "string" && given.toLowerCase() === word.toLowerCase();
}}
"""
