"""The XML of a workbook's parts, one event after the other: nothing is built, so that nothing can grow.

Entities are refused: no spreadsheet writes any, and with a few of them a small file becomes a huge one.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from typing import IO, NamedTuple
from xml.parsers import expat

from sheetfuncs.files import Refused
from sheetfuncs.workbook.read.contents import Limits

PIECE = 1 << 16
MOST_IN_ONE = 4_000_000  # bytes of one tag or one comment, letters of one text
DEEPEST = 256

Attributes = Mapping[str, str]


class Start(NamedTuple):
    """An element begins."""

    name: str
    attributes: Attributes


class End(NamedTuple):
    """An element ends."""

    name: str


Event = Start | End | str  # or text


def events(stream: IO[bytes], prefixes: Mapping[str, str], limits: Limits) -> Iterator[Event]:
    """What a part says, in order.  Names have the prefix that their namespace has here; of others, "?:"."""
    found: list[Event] = []
    parser = expat.ParserCreate(namespace_separator="}")
    parser.buffer_text = True
    short = _shortener(prefixes)
    depth = letters = 0

    def start(name: str, attributes: dict[str, str]) -> None:
        nonlocal depth, letters
        depth, letters = depth + 1, 0
        limits.element()
        if depth > DEEPEST:
            raise limits.too_much(f"its XML is over {DEEPEST} elements deep")
        found.append(Start(short(name), {short(key) if "}" in key else key: text for key, text in attributes.items()}))

    def end(name: str) -> None:
        nonlocal depth, letters
        depth, letters = depth - 1, 0
        found.append(End(short(name)))

    def text(words: str) -> None:
        nonlocal letters
        letters += len(words)
        if letters > MOST_IN_ONE:
            raise limits.too_much("a text in its XML is far too long")
        found.append(words)

    def entity(*_: object) -> int:
        raise Refused(f"{limits.file}: its XML defines entities, which no spreadsheet writes; it is not read")

    parser.StartElementHandler, parser.EndElementHandler = start, end
    parser.CharacterDataHandler = text
    parser.EntityDeclHandler = parser.UnparsedEntityDeclHandler = parser.ExternalEntityRefHandler = entity
    silent = 0
    while piece := stream.read(PIECE):
        parser.Parse(piece, False)
        silent = 0 if found else silent + len(piece)
        if silent > MOST_IN_ONE:
            raise limits.too_much("a piece of its XML is far too long")
        limits.clock()
        yield from found
        found.clear()
    parser.Parse(b"", True)
    yield from found


def _shortener(prefixes: Mapping[str, str]) -> Callable[[str], str]:
    known: dict[str, str] = {}

    def short(name: str) -> str:
        if name not in known:
            if len(known) > 10_000:
                known.clear()
            uri, mark, local = name.rpartition("}")
            known[name] = f"{prefixes.get(uri, '?:')}{local}" if mark else local
        return known[name]

    return short
