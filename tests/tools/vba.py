"""A grammar of VBA: what a module's text violates; and how far its statements run on."""

from __future__ import annotations

from collections.abc import Sequence

from antlr4 import CommonTokenStream, InputStream
from antlr4.error.ErrorListener import ErrorListener
from antlr4_vba.vbaLexer import vbaLexer
from antlr4_vba.vbaParser import vbaParser


class _Listener(ErrorListener):  # type: ignore[misc]
    def __init__(self) -> None:
        self.errors: list[str] = []

    def syntaxError(self, recognizer, symbol, line, column, message, error) -> None:
        self.errors.append(f"line {line}: {message}")


def grammar_errors(text: str) -> list[str]:
    """What the VBA grammar of the package antlr4-vba says, which follows [MS-VBAL]."""
    listener = _Listener()
    lexer = vbaLexer(InputStream(text))
    parser = vbaParser(CommonTokenStream(lexer))
    for part in (lexer, parser):
        part.removeErrorListeners()
        part.addErrorListener(listener)
    parser.startRule()
    return listener.errors


def longest_continuation(lines: Sequence[str]) -> int:
    """How often the statement that runs over the most lines is continued."""
    run = longest = 0
    for line in lines:
        run = run + 1 if line.endswith(" _") else 0
        longest = max(longest, run)
    return longest
