"""What a workbook holds that is no cell, and has no place in a new one: pictures, charts, links, page footers."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterable, Iterator, Sequence

from sheetfuncs.workbook.read.xml import Event, Start

_OF_NOBODY = re.compile(r"&Apage&Pof&N|&A|\w{0,12}&P")  # ours, and what LibreOffice gives each new sheet
_LOOKS = re.compile(r'&[LCR]|&"[^"]*"|&\d+|&K[0-9A-Fa-f+-]{6}|\s+')  # where it stands, its type, its size, its colour
_DRAWN = ("draw:text-box", "draw:custom-shape", "draw:rect", "draw:ellipse", "draw:line", "draw:path")
_FOOTERS = ("oddHeader", "oddFooter", "evenHeader", "evenFooter", "firstHeader", "firstFooter")


class Seen:
    """Counts what is met while the parts are read; `told` puts it into words.

    Links are those that lead out of the workbook: inside it lead ours.
    """

    def __init__(self) -> None:
        self.counted = Counter[str]()
        self.charts = Counter[str]()
        self.framed = ""  # what the frame that we are in holds
        self.footers: set[str] = set()
        self.words: list[str] = []

    def sheet(self, title: str, event: Event, text: Sequence[str]) -> None:
        """Something on a sheet that is no cell."""
        if isinstance(event, str):
            return
        if isinstance(event, Start):
            self.counted["link"] += event.name == "hyperlink" and not event.attributes.get("location")
        elif event.name in _FOOTERS:
            self.footer(title, "".join(text))

    def footer(self, title: str, text: str) -> None:
        """What stands above or below each printed page."""
        bare = _LOOKS.sub("", text)
        if bare and not _OF_NOBODY.fullmatch(bare):
            self.footers.add(title)

    def drawing(self, title: str, events: Iterable[Event]) -> None:
        """What floats over a sheet."""
        for event in events:
            if isinstance(event, Start):
                self.counted["picture"] += event.name == "draw:pic"
                self.counted["text box or drawing"] += event.name in ("draw:sp", "draw:cxnSp")
                self.charts[title] += event.name == "chart:chart"

    def floating(self, title: str, name: str, inside: Sequence[str], to: str = "") -> None:
        """An element of an OpenDocument sheet: a chart has a picture of itself beside it, which is none."""
        if name == "draw:frame":
            self.framed = ""
        elif name == "draw:object":
            self.framed = name
            self.charts[title] += 1
        elif name == "draw:image":
            self.counted["picture"] += self.framed != "draw:object"
        elif name == "text:a":
            self.counted["link"] += not to.startswith("#")
        elif name in _DRAWN:
            self.counted["text box or drawing"] += "office:annotation" not in inside

    def rest(self, parts: Iterable[str], chart_sheets: Sequence[str], described: str) -> None:
        """What stands beside the sheets."""
        parts = set(parts)
        self.words += [f"the chart sheet {title!r}" for title in chart_sheets]
        if "xl/vbaProject.bin" in parts:
            self.words.append("macros")
        if described:
            self.words.append(f"a description in its properties ({described})")

    def told(self) -> Iterator[str]:
        """Each kind in words."""
        for what, count in self.counted.items():
            if count:
                plural = {"text box or drawing": "text boxes or drawings"}.get(what, f"{what}s")
                yield f"{count} {what if count == 1 else plural}"
        if self.footers:
            yield f"headers or footers of your own for printing ({', '.join(sorted(self.footers))})"
        yield from self.words
