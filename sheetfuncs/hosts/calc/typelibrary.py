"""The type library: which methods the add-in has and what they take, as LibreOffice reads it.

The binary format is described in LibreOffice's source, unoidl/README.md, "Specification of the
new UNOIDL types.rdb format".  Of it, this writes one interface in one module.
"""

from __future__ import annotations

from collections.abc import Mapping
from struct import pack

MAGIC = b"UNOIDL\xff\0"
HEADER = len(MAGIC) + 8  # the magic, where the root map is, how many entries it has
BANNER = b"\0** Created by sheetfuncs **\0"
MODULE, INTERFACE = 0, 5  # kinds of entries
ROOT_OF_ALL = "com.sun.star.uno.XInterface"
ALREADY_WRITTEN = 0x80000000  # set in an offset that stands for a text written before
IN = 0  # the direction of a parameter

Methods = Mapping[str, Mapping[str, str]]  # a method's name, its parameters and their types


def type_library(interface: str, methods: Methods) -> bytes:
    """The library of an interface, `module.XName`, whose methods all return `any`."""
    module, name = interface.split(".")
    library = _Library()
    described = library.interface(methods)
    inner = library.map({name: described}, bytes([MODULE]) + _uint(1))
    root = library.map({module: inner})
    return MAGIC + _uint(root) + _uint(1) + bytes(library.body)


class _Library:
    """The file behind its header, as it grows; offsets count from the start of the file."""

    def __init__(self) -> None:
        self.body = bytearray(BANNER)
        self.texts: dict[str, int] = {}

    @property
    def here(self) -> int:
        return HEADER + len(self.body)

    def text(self, text: str) -> None:
        """A text, or where it stands already."""
        if text in self.texts:
            self.body += _uint(ALREADY_WRITTEN | self.texts[text])
        else:
            self.texts[text] = self.here
            self.body += _uint(len(text)) + text.encode("ascii")

    def interface(self, methods: Methods) -> int:
        """An interface that extends the root of all; where it was written."""
        start = self.here
        self.body += bytes([INTERFACE]) + _uint(1)
        self.text(ROOT_OF_ALL)
        self.body += _uint(0) + _uint(0)  # no optional bases, no attributes
        self.body += _uint(len(methods))
        for name, parameters in methods.items():
            self.text(name)
            self.text("any")
            self.body += _uint(len(parameters))
            for parameter, kind in parameters.items():
                self.body += bytes([IN])
                self.text(parameter)
                self.text(kind)
            self.body += _uint(0)  # no exceptions declared
        return start

    def map(self, entries: Mapping[str, int], before: bytes = b"") -> int:
        """Names and where each one's entry is, after `before`; where that was written."""
        names = {}
        for name in entries:
            names[name] = self.here
            self.body += name.encode("ascii") + b"\0"
        start = self.here
        self.body += before
        for name, entry in entries.items():
            self.body += _uint(names[name]) + _uint(entry)
        return start


def _uint(number: int) -> bytes:
    return pack("<I", number)
