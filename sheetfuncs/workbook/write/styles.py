"""How cells look: a number format for each kind, and few colours that also read in grey."""

from __future__ import annotations

import textwrap
from typing import Any

from sheetfuncs.workbook.model.kinds import WORDS, Kind
from sheetfuncs.workbook.model.parts import ASK, MEND, TELL, Table
from sheetfuncs.workbook.model.systems import Units

FONT = "Arial"
# What the widths of columns are counted in.  Without a scheme: a font with one is that of the theme, whatever its name.
BASE: dict[str, Any] = {"font_name": FONT, "font_size": 10, "font_scheme": "none"}
BOLD = 1.08  # bold letters beside digits
SENTENCE, SAID, HUGE = 11, 9, 60  # points of an answer, of what a row says, of the number of a card
INK, QUIET, BAR, TINT, RULE, LOOK, CAUTION = (
    "#222222",
    "#666666",
    "#4A3728",  # heading bars, bark
    "#FFF4D6",  # cells to type in, thin syrup
    "#C9BFB4",
    "#9C2A00",
    "#FBE9E2",
)


def cell_format(kind: Kind, role: str, units: Units) -> dict[str, Any]:
    """The format of a cell for typing ("typed", or "noted" in a row of several lines) or of a computed one."""
    look: dict[str, Any] = {"font_name": FONT, "font_size": 10, "font_color": INK, "valign": "vcenter"}
    typed = role in ("typed", "noted")
    if typed or role in ("computed", "answer", "strong", "huge"):
        look |= {"num_format": kind.format(units), "align": kind.align, "border": 1, "border_color": RULE}
        look |= {"indent": 1} if kind.align == "left" else {}
        if kind.align == "left":
            look |= {"text_wrap": kind is WORDS or role == "noted", "num_format": "@" if typed else "General"}
    if typed:
        look |= {"bg_color": TINT, "locked": False}
    if role == "answer":
        look |= {"bold": True, "font_size": SENTENCE, "text_wrap": False}
    if role == "strong":
        look |= {"bold": True, "font_size": 18, "align": "center"}
    if role == "huge":
        form = f'{kind.format(units)}" {kind.unit(units)}"'
        look |= {"bold": True, "font_size": HUGE, "align": "center", "num_format": form}
    if role == "sentence":
        look |= {"bold": True, "font_size": SENTENCE, "text_wrap": True, "border": 1, "border_color": RULE, "indent": 1}
    return look


def high(lines: int, points: int) -> float:
    """The height of a row with so many lines of letters."""
    return lines * points * 1.25 + 6


# What a row says of itself, by its weight: dark on pale, told apart in grey by weight and slant too.
OF_WEIGHT: dict[str, dict[str, Any]] = {
    MEND: {"bg_color": "#F6C7B6", "font_color": "#7A1F00", "bold": True},
    ASK: {"bg_color": "#FFE3A3", "font_color": "#5A3B00"},
    TELL: {"bg_color": "#E3ECF2", "font_color": "#1F3F55"},
}
NEXT: dict[str, Any] = {"bg_color": "#FFD966"}  # the cell of a log to type in next
GUESS: dict[str, Any] = {"italic": True, "font_color": "#7A6A55"}
# Tabs by what a sheet is for: to read first, to fill in once, logs, results, paper.
TABS = {"now": "#9C2A00", "once": "#C9BFB4", "log": "#E0B040", "result": "#6E8B8B", "paper": "#4A3728"}

WAY: dict[str, Any] = {"font_color": "#1F4E79", "underline": 1}
# The formats that do not depend on a kind.
PLAIN: dict[str, dict[str, Any]] = {
    "title": {"bold": True, "font_size": 18},
    "purpose": {"font_color": QUIET, "italic": True},
    "opening": {"bold": True, "text_wrap": True, "valign": "top"},
    "block": {"bold": True, "font_size": 12, "bottom": 2, "bottom_color": BAR},
    "heading": {
        "bold": True,
        "font_color": "#FFFFFF",
        "bg_color": BAR,
        "text_wrap": True,
        "align": "center",
        "valign": "vcenter",
        "border": 1,
        "border_color": RULE,
    },
    "label": {"valign": "vcenter"},
    "question": {"valign": "bottom", "bold": True, "font_color": BAR},
    "way": WAY | {"font_size": 9},
    "question way": {"valign": "bottom", "bold": True} | WAY,
    "label way": {"valign": "vcenter"} | WAY,
    "line way": {"text_wrap": True, "valign": "top"} | WAY,
    "note": {"font_color": QUIET, "valign": "vcenter", "indent": 1},
    "look": {"border": 1, "border_color": RULE, "valign": "vcenter", "text_wrap": True, "font_size": SAID, "indent": 1},
    "line": {"text_wrap": True, "valign": "top"},
    "caution": {"text_wrap": True, "valign": "top", "bg_color": CAUTION},
}
LINE = PLAIN["line"]
# Lines that show the colours they tell of.
PLAIN |= {"like typed": LINE | {"bg_color": TINT}, "like next": LINE | NEXT, "like a guess": LINE | GUESS}
PLAIN |= {f"like {weight}": LINE | look for weight, look in OF_WEIGHT.items()}


def plain_format(role: str) -> dict[str, Any]:
    """The format of a title, label, note or line of text."""
    return {"font_name": FONT, "font_size": 10, "font_color": INK, **PLAIN[role]}


def heading_height(table: Table, units: Units) -> float:
    """Room for the longest heading of a table, broken into lines as wide as its column."""
    most = 2
    for column in table.columns:
        if not column.hidden:
            across = int((column.width or column.kind.width) / BOLD)
            most = max(most, len(textwrap.wrap(column.title(units), max(across, 4), break_long_words=False)))
    return high(most, BASE["font_size"])
