"""How cells look: a number format for each kind, and few colours that also read in grey."""

from __future__ import annotations

from typing import Any, NamedTuple

from sheetfuncs.workbook.model import parts
from sheetfuncs.workbook.model.parts import Units

FONT = "Arial"
INK, QUIET, BAR, TINT, RULE, LOOK, CAUTION = (
    "#222222",
    "#666666",
    "#4A3728",  # heading bars, bark
    "#FFF4D6",  # cells to type in, thin syrup
    "#C9BFB4",
    "#9C2A00",
    "#FBE9E2",
)


class Style(NamedTuple):
    """Number format, width in characters and alignment of a kind."""

    number: str
    width: float = 10
    align: str = "right"


def style(kind: str, units: Units) -> Style:
    """The style of a kind of cell."""
    if kind == parts.DATE:
        return Style(units.pick("mmm d, yyyy", "d mmm yyyy"), 13, "center")
    if kind == parts.BRIX:
        return Style("0.0", 8)
    if kind == parts.WORDS:
        return Style("@", 40, "left")
    if kind == parts.TEXT:
        return Style("@", 15, "left")
    return {
        parts.TIME: Style("hh:mm", 8, "center"),
        parts.VOLUME: Style(units.pick("#,##0.00", "#,##0.0"), 9),
        parts.SMALL: Style(units.pick("#,##0.0", "#,##0"), 10),
        parts.MASS: Style("#,##0.00", 9),
        parts.LENGTH: Style("0.0", 9),
        parts.AREA: Style(units.pick("0.0", "0.00"), 9),
        parts.SHARE: Style("0%", 8),
        parts.COUNT: Style("0", 8),
        parts.NUMBER: Style("0", 10),
        parts.MONEY: Style("#,##0.00", 10),
        parts.TEMPERATURE: Style("0.0", 9),
        parts.DIFFERENCE: Style("0.0", 9),
        parts.PRESSURE: Style(units.pick("0.00", "0"), 10),
        parts.DAYS: Style("0", 8),
        parts.HOURS: Style("0.0", 8),
        parts.MINUTES: Style("0", 9),
        parts.RATIO: Style("0.0", 9),
        parts.ELEVATION: Style("#,##0", 10),
        parts.FUEL: Style("0.###", 10),
        parts.FUEL_PRICE: Style("#,##0.00", 10),
    }[kind]


def cell_format(kind: str, role: str, units: Units) -> dict[str, Any]:
    """The format of a cell for typing ("typed"), a computed one ("computed") or a heading."""
    look: dict[str, Any] = {"font_name": FONT, "font_size": 10, "font_color": INK, "valign": "vcenter"}
    chosen = style(kind, units)
    if role in ("typed", "computed", "answer", "strong"):
        look |= {"num_format": chosen.number, "align": chosen.align, "border": 1, "border_color": RULE}
        look |= {"indent": 1} if chosen.align == "left" else {}
        if chosen.align == "left":
            look |= {"text_wrap": kind == parts.WORDS, "num_format": "General" if role != "typed" else "@"}
    if role == "typed":
        look |= {"bg_color": TINT, "locked": False}
    if role == "answer":
        look |= {"bold": True, "font_size": 12, "text_wrap": False}
    if role == "strong":
        look |= {"bold": True, "font_size": 14}
    if role == "sentence":
        look |= {"bold": True, "font_size": 12, "text_wrap": True, "border": 1, "border_color": RULE, "indent": 1}
    return look


# The formats that do not depend on a kind.
PLAIN: dict[str, dict[str, Any]] = {
    "title": {"bold": True, "font_size": 18},
    "purpose": {"font_color": QUIET, "italic": True},
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
    "note": {"font_color": QUIET, "valign": "vcenter", "indent": 1},
    "look": {"font_color": LOOK, "border": 1, "border_color": RULE, "valign": "vcenter"},
    "line": {"text_wrap": True, "valign": "top"},
    "caution": {"text_wrap": True, "valign": "top", "bg_color": CAUTION},
}


def plain_format(role: str) -> dict[str, Any]:
    """The format of a title, label, note or line of text."""
    return {"font_name": FONT, "font_size": 10, "font_color": INK, **PLAIN[role]}
