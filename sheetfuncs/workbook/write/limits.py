"""What a workbook file may hold, asked while it is written: Excel repairs or refuses a file with more.

Microsoft, "Excel specifications and limits"; the lengths of what a validation says as in ISO/IEC
29500-1, 18.3.1.32, and as XlsxWriter's documentation gives them.  Google Sheets takes more of each
(50,000 characters in a cell).
"""

from __future__ import annotations

import functools
import re
from collections.abc import Mapping
from typing import Any

FORMULA, CELL, NAME, COMMENT, TITLE = 8192, 32_767, 255, 255, 31
ARGUMENTS, PAIRS, DEPTH, TEXT_IN_A_FORMULA = 255, 126, 64, 255
VALIDATION = {"input_title": 32, "input_message": 255, "error_title": 32, "error_message": 255, "source": 255}

_PIECES = re.compile(r'"(?:[^"]|"")*"|[A-Za-z_][\w.]*\(|[(){},]')
_LEGAL_NAME = re.compile(r"[A-Za-z_\\][\w.\\]*$")
_A_CELL = re.compile(r"[A-Z]{1,3}[0-9]+$|R[0-9]*C[0-9]*$", re.IGNORECASE)


class OverLimit(ValueError):
    """A workbook that a spreadsheet would not open as it is: shorten what the message names."""


def at_most(limit: int, length: int, what: str) -> None:
    """Refuse what is longer than it may be."""
    if length > limit:
        raise OverLimit(f"{what} has {length:,}, a spreadsheet takes {limit:,}")


def name(text: str, formula: str, comment: str) -> None:
    """A defined name, what it stands for and the words beside it; `shape` is asked of the formulas by a test."""
    at_most(NAME, len(text), f"the name {text[:20]}...")
    at_most(COMMENT, len(comment), f"the comment of {text}")
    at_most(FORMULA, len(formula), f"the formula of {text}")
    if not _LEGAL_NAME.match(text) or _A_CELL.match(text):
        raise OverLimit(f"{text} cannot be a name in a spreadsheet")


@functools.cache
def shape(formula: str) -> None:
    """How deep a formula is, how many arguments its calls have, how long its texts are.

    The same for every row of a column, so asked once for a column.
    """
    calls: list[tuple[str, int]] = []  # the calls that are open, each with its commas
    for found in _PIECES.finditer(formula):
        piece = found[0]
        if piece.startswith('"'):
            at_most(TEXT_IN_A_FORMULA, len(piece.replace('""', '"')) - 2, f"a text in {formula[:60]}")
        elif piece.endswith(("(", "{")):
            calls.append((piece, 0))
            at_most(DEPTH, sum(len(head) > 1 for head, _ in calls), f"the depth of {formula[:60]}")
        elif piece == ",":
            if calls:
                calls[-1] = calls[-1][0], calls[-1][1] + 1
        elif calls:
            head, commas = calls.pop()
            if len(head) > 1:
                at_most(ARGUMENTS, commas + 1, f"{head} in {formula[:60]}")
            if head.endswith("LET("):
                at_most(PAIRS, commas // 2, f"the names of a LET in {formula[:60]}")


def validation(rule: Mapping[str, Any], what: str) -> None:
    """What a cell accepts and says: XlsxWriter itself leaves out a rule that is too long."""
    for key, limit in VALIDATION.items():
        text = rule.get(key, "")
        at_most(limit, len(",".join(map(str, text)) if isinstance(text, list) else text), f"{key} of {what}")
