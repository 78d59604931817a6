"""A length as a person writes it: a number and a unit, or feet and inches.  Nothing is evaluated."""

from __future__ import annotations

import re

from sheetfuncs.files import Refused

FOOT, INCH = 0.3048, 0.0254  # exact: the international yard and pound agreement of 1959
METRES = {
    **dict.fromkeys(("ft", "ft.", "foot", "feet", "'"), FOOT),
    **dict.fromkeys(("in", "in.", "inch", "inches", '"', "''"), INCH),
    **dict.fromkeys(("m", "metre", "metres", "meter", "meters"), 1.0),
    **dict.fromkeys(("km", "kilometre", "kilometres", "kilometer", "kilometers"), 1000.0),
    **dict.fromkeys(("cm", "centimetre", "centimetres", "centimeter", "centimeters"), 0.01),
    **dict.fromkeys(("yd", "yard", "yards"), 3 * FOOT),
    **dict.fromkeys(("mi", "mile", "miles"), 5280 * FOOT),
}
_NUMBER = r"(?:\d+(?:\.\d*)?|\.\d+)"
_UNIT, _INCHES = (
    "|".join(re.escape(name) for name in sorted(METRES, key=len, reverse=True) if METRES[name] == INCH or not inches)
    for inches in (False, True)
)
_LENGTH = re.compile(rf"([-+]?)\s*({_NUMBER})\s*({_UNIT})?(?:\s*({_NUMBER})\s*(?:{_INCHES}))?", re.ASCII)
SHOWN = 60  # letters of what was typed
_PARTED = re.compile(r"\d[\s,]+\d")
_PLAIN = str.maketrans({"\N{MINUS SIGN}": "-", "\N{PRIME}": "'", "\N{RIGHT SINGLE QUOTATION MARK}": "'"})
_PLAIN |= str.maketrans({"\N{DOUBLE PRIME}": '"', "\N{RIGHT DOUBLE QUOTATION MARK}": '"', "\N{NO-BREAK SPACE}": " "})


def metres(option: str, text: str, unit: str) -> float:
    """A length in metres; a bare number is in `unit`.

    Numbers have a decimal point.  A comma or a space in one may part thousands or decimals, so it is not guessed.
    """
    words = text.translate(_PLAIN).strip()
    found = _LENGTH.fullmatch(words.casefold())
    sign, number, symbol, inches = found.groups() if found else ("", "", "", "")
    if not found or (inches and METRES.get(symbol) != FOOT):
        why = (
            "as a number has no comma and no space in it"
            if _PARTED.search(words)
            else "which is one number and its unit"
        )
        raise Refused(f"{option} {text[:SHOWN]!r}: not a length, {why}; write it as '650 ft', '5 ft 6 in' or '200 m'")
    length = float(number) * METRES[symbol or unit] + float(inches or 0) * INCH
    return -length if sign == "-" else length
