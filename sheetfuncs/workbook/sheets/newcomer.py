"""Newcomer: the first page of a workbook that was handed over; what is known of this yard."""

from __future__ import annotations

from collections.abc import Sequence

from sheetfuncs.workbook.model.parts import Sheet, Text

TITLE = "Newcomer"
ACROSS = 10


def sheet(parts: Sequence[tuple[str, Sequence[str]]]) -> Sheet:
    """Titles, each with its lines."""
    return Sheet(
        TITLE,
        "What is known of this yard. Read the Guide next, then fill in Yard and keep Weekend open.",
        [Text(title, lines, across=ACROSS) for title, lines in parts],
        widths=(11,) * ACROSS,
        portrait=True,
    )
