"""Names defined in the text of a workbook part, and nothing else of it changed.

The text is not parsed and written again: a parser only says at which bytes things stand, so that
prolog, namespaces, order and spacing stay as whoever wrote them left them.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Sequence
from typing import NamedTuple
from xml.parsers import expat
from xml.sax.saxutils import escape, quoteattr

from sheetfuncs.workbook.write.names import Definition

MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main"
STRICT = "http://purl.oclc.org/ooxml/spreadsheetml/main"
# What may stand before the names in a workbook part: ISO/IEC 29500-1, 18.2.27.
BEFORE = ("sheets", "functionGroups", "externalReferences")

_START_TAG = re.compile(rb"""<(?P<name>[^\s/>]+)(?:[^>"']|"[^"]*"|'[^']*')*>""")

Edit = tuple[int, int, str]  # from where to where, and what stands there then


class Entities(ValueError):
    """The XML defines entities, which no spreadsheet writes."""


class Element(NamedTuple):
    """An element: its local name, where it begins and ends, its attributes and its text."""

    name: str
    start: int
    end: int
    attributes: dict[str, str]
    text: str


class WorkbookPart:
    """The workbook part of a file: what it says, and where its names stand.

    ValueError, with what is wrong, where no names can be put there; expat's own error where it is no XML.
    """

    def __init__(self, content: bytes) -> None:
        if b"\0" in content[:4]:
            raise ValueError("its XML is written in UTF-16")
        self.content = content
        self.root = ""
        self.elements: list[Element] = []  # below the root
        self.names: list[Element] = []
        self._open: list[tuple[str, int, dict[str, str]]] = []
        self._text: list[str] = []
        parser = expat.ParserCreate(namespace_separator=" ")
        parser.StartElementHandler = lambda name, attributes: self._begin(name, attributes, parser.CurrentByteIndex)
        parser.EndElementHandler = lambda name: self._finish(parser.CurrentByteIndex)
        parser.CharacterDataHandler = self._text.append
        parser.StartDoctypeDeclHandler = _no_entities
        parser.Parse(content, True)

    @property
    def strict(self) -> bool:
        """Whether the file keeps to the strict form of the standard, whose namespaces are others."""
        return self.root.startswith(f"{STRICT} ")

    def defined(self, name: str) -> list[Element]:
        """Where a name is defined: for the workbook, or for one of its sheets alone."""
        return [one for one in self.names if one.attributes.get("name", "").casefold() == name.casefold()]

    def with_names(self, definitions: Iterable[Definition], recompute: bool = False) -> bytes:
        """The text with these names: each takes the place of those it has, or stands behind the others.

        `recompute` asks the program that opens the file to compute every cell.
        """
        edits: list[Edit] = []
        new = []
        for definition in definitions:
            known = self.defined(definition.name)
            edits += [(one.start, one.end, self._element(definition, one)) for one in known]
            if all("localSheetId" in one.attributes for one in known):
                new.append(self._element(definition))
        if new:
            edits.append(self._added("".join(new)))
        if recompute:
            edits += self._recomputed()
        content = self.content
        for start, end, text in sorted(edits, key=lambda edit: edit[:2], reverse=True):
            # in plain ASCII, which is the same in whatever encoding the file has
            content = content[:start] + text.encode("ascii", "xmlcharrefreplace") + content[end:]
        return content

    def _begin(self, name: str, attributes: dict[str, str], start: int) -> None:
        self.root = self.root or name
        self._open.append((name, start, attributes))
        self._text.clear()

    def _finish(self, position: int) -> None:
        name, start, attributes = self._open.pop()
        namespace, _, local = name.rpartition(" ")
        if len(self._open) not in (1, 2) or namespace != self.root.rpartition(" ")[0]:
            return
        tag = _START_TAG.match(self.content, start)
        assert tag, "the parser found a tag here"
        end = tag.end() if tag[0].endswith(b"/>") else self.content.index(b">", position) + 1
        element = Element(local, start, end, attributes, "".join(self._text))
        if len(self._open) == 1:
            self.elements.append(element)
        elif local == "definedName":
            self.names.append(element)

    def _last(self, names: Sequence[str]) -> Element:
        found = [one for one in self.elements if one.name in names]
        if not found:
            raise ValueError("it lists no sheets")
        return found[-1]

    def _tag(self, name: str) -> str:
        """An element's name as this file writes it, with its prefix if it has one."""
        tag = _START_TAG.match(self.content, self._last(BEFORE).start)
        assert tag, "the parser found a tag here"
        prefix, colon, _ = tag["name"].decode().rpartition(":")
        return f"{prefix}{colon}{name}"

    def _element(self, definition: Definition, old: Element | None = None) -> str:
        """A definition; one for a sheet alone stays so."""
        attributes = {"name": definition.name, "comment": definition.comment}
        if old and "localSheetId" in old.attributes:
            attributes["localSheetId"] = old.attributes["localSheetId"]
        tag = self._tag("definedName")
        return f"<{tag}{_written(attributes)}>{escape(definition.formula)}</{tag}>"

    def _added(self, names: str) -> Edit:
        """Where names that are new go: behind those that are there, or into a list of their own."""
        tag = self._tag("definedNames")
        lists = [one for one in self.elements if one.name == "definedNames"]
        if not lists:
            place = self._last(BEFORE).end
            return place, place, f"<{tag}>{names}</{tag}>"
        start, end = lists[0].start, lists[0].end
        if self.content[start:end].endswith(b"/>"):
            return start, end, f"<{tag}>{names}</{tag}>"
        place = self.content.rindex(b"</", start, end)
        return place, place, names

    def _recomputed(self) -> Iterator[Edit]:
        tag = self._tag("calcPr")
        for one in self.elements:
            if one.name == "calcPr":
                yield one.start, one.end, f"<{tag}{_written(one.attributes | {'fullCalcOnLoad': '1'})}/>"
                return
        place = self._last((*BEFORE, "definedNames")).end
        yield place, place, f'<{tag} fullCalcOnLoad="1"/>'


def _written(attributes: dict[str, str]) -> str:
    return "".join(f" {name}={quoteattr(value)}" for name, value in attributes.items())


def _no_entities(*_: object) -> None:
    raise Entities("its XML defines entities, which no spreadsheet writes")
