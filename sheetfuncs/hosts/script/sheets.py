"""The functions for Google Sheets: one file for its Apps Script, each function a custom function."""

from __future__ import annotations

from sheetfuncs import __version__
from sheetfuncs.formulas.card import Card
from sheetfuncs.formulas.catalogue import CATALOGUE
from sheetfuncs.hosts.script.javascript import SHARED, function_text


def script_text() -> str:
    """The whole file, to be pasted into the script editor of a spreadsheet."""
    parts = [HEAD.format(version=__version__)]
    parts += [_public(function.card) for function in CATALOGUE.values()]
    parts += [SHARED, OWN]
    parts += [function_text(function.card) for function in CATALOGUE.values()]
    return "\n\n".join(part.strip("\n") for part in parts) + "\n"


def _public(card: Card) -> str:
    """What a cell calls, with what Sheets shows while it is typed."""
    lines = ["/**", f" * {card.sentence}", " *"]
    for name, words in card.parameter_help.items():
        shown = f"[{name}]" if name == "units" else name
        lines.append(f" * @param {{number|string}} {shown} {words}")
    lines += [f" * @return {{number|string}} {card.returns}", " * @customfunction", " */"]
    names = ", ".join(card.parameters)
    lines += [f"function {card.name}({names}) {{", f"  return cell_({card.name}_, [{names}]);", "}"]
    return "\n".join(lines)


HEAD = """\
// Maple sugaring functions for Google Sheets, of sheetfuncs {version}.
// Written by `sheetfuncs script-addin`: do not edit, but write it anew.
"""

OWN = """\
// Sheets hands over an empty cell as an empty text, here 0 as in any sum, and an error as its text
// or as an Error.  A lone error is thrown: Sheets shows #ERROR! and the text beside it.  In a range
// it is the text itself, so that the other cells keep their answers.
function cell_(relation, given) {
  const plain = (value) => {
    if (Array.isArray(value)) return value.map((part) => (part === undefined || part === null ? 0 : plain(part)));
    if (value === undefined || value === null) return null;
    if (value === "") return 0;
    return value instanceof Error ? value.message : value;
  };
  return each_(relation, given.map(plain), (text, inRange) => {
    if (inRange) return text;
    throw new Error(text);
  });
}
"""
