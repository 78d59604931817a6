"""The editions of a workbook: how the functions come along.  Cell for cell they are alike."""

from __future__ import annotations

from typing import NamedTuple


class Edition(NamedTuple):
    """How the functions come along, and where that computes.

    `inline`: each cell holds its whole formula; else it calls the function by its name.
    `named`: the functions are defined as names, for cells of the user's own too.
    `suffix` ends the name of a file beside those of other editions.  `opening` stands as plain text
    on top of the first sheet, so that it is read where nothing computes.
    """

    name: str
    words: str
    inline: bool
    named: bool
    suffix: str = ""
    opening: str = ""

    @property
    def by_name(self) -> bool:
        """Whether its cells call names that it defines."""
        return self.named and not self.inline


INLINE = Edition("inline", "computes wherever LET does; nothing to install", inline=True, named=True)
CARRIED = Edition(
    "carried",
    "the cells call names that the workbook holds: Excel 365 and 2024, or LibreOffice with the add-in",
    inline=False,
    named=True,
    suffix="-carried",
    opening="Computes in Excel 365 and 2024, once you press Enable Editing, and in LibreOffice with the sheetfuncs "
    "add-in. Elsewhere nothing is answered: take the inline edition.",
)
LINKED = Edition(
    "linked",
    "the cells call the functions of an add-in, in LibreOffice or Excel for Windows",
    inline=False,
    named=False,
    suffix="-linked",
    opening="Computes with an add-in alone: that of sheetfuncs in LibreOffice, or its macros in Excel for Windows. "
    "Elsewhere nothing is answered: take the inline edition.",
)
EDITIONS = {edition.name: edition for edition in (INLINE, CARRIED, LINKED)}
DEFAULT = INLINE
