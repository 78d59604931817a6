"""A function of the catalogue as statements of a programming language, from its trace.

What Python checks before computing comes first, each check leaving the function with its error.
Then every step that is used more than once gets a variable, as in a LET and in Python whichever way
a choice goes; a step that is used once, on one side of a choice, is computed on that side only.
"""

from __future__ import annotations

from abc import ABC, abstractmethod
from collections.abc import Sequence

from sheetfuncs.formulas.card import Card
from sheetfuncs.hosts.expression import COMPARISONS, NA, NUM, VALUE, Expression, needs_brackets
from sheetfuncs.hosts.trace import distinct, guarded

# An expression of VBA may be "too complex", and a long line is not read: longer ones get a variable.
WIDTH = 88

TRUTH, NUMBER, WORD = "truth", "number", "word"
ERRORS = tuple(error.head for error in (NUM, VALUE, NA))


class Language(ABC):
    """How a language writes what a function is made of."""

    equals: dict[str, str]  # = and <> between numbers
    every: str  # between conditions that must all hold
    any_of: str  # between conditions of which one is enough

    @abstractmethod
    def number(self, digits: str) -> str:
        """A constant."""

    @abstractmethod
    def word(self, quoted: str) -> str:
        """A text, from one that a spreadsheet would read."""

    @abstractmethod
    def operation(self, head: str, operands: list[str]) -> str:
        """Arithmetic, or a function of one number."""

    @abstractmethod
    def is_text(self, name: str) -> str: ...

    @abstractmethod
    def same_word(self, name: str, word: str, same: bool) -> str:
        """Whether an argument is, or is not, this word; capitals do not count."""

    @abstractmethod
    def negated(self, condition: str) -> str: ...

    @abstractmethod
    def as_number(self, condition: str) -> str:
        """1 where a condition holds, else 0."""

    @abstractmethod
    def either(self, condition: str, yes: str, no: str) -> str:
        """One of two values that cost nothing."""

    @abstractmethod
    def assign(self, name: str, value: str) -> str: ...

    @abstractmethod
    def leave(self, condition: str, error: str) -> list[str]:
        """End the function with an error where a condition holds."""

    @abstractmethod
    def branches(self, condition: str, yes: list[str], no: list[str]) -> list[str]: ...


class Body:
    """The statements of one function: `lines`, the kind of each variable, and the text of the result."""

    def __init__(self, card: Card, language: Language) -> None:
        self.language = language
        self.lines: list[str] = []
        self.variables: dict[str, str] = {}
        words = {name for name, argument in card.arguments.items() if argument.allowed} | {"units"}
        self._names = {name: WORD if name in words else NUMBER for name in card.parameters}
        units: Expression | str = Expression("units") if card.units else "US"
        self._steps, self._uses = distinct(guarded(card, [Expression(name) for name in card.arguments], units))
        self._held: dict[int, str] = {}
        self.result = self._written()

    def _written(self) -> str:
        root = len(self._steps) - 1
        for place, (step, _) in enumerate(self._steps):
            if self._uses[place] > 1 and step.operands and place not in self._held:
                self._hold(place, self._text(place))
            while self._checks(root) and self._children(root)[0] <= place:
                condition, error, rest = self._children(root)
                self._leave(self._alternatives(condition), self._step(error))
                root = rest
        return self._value(root)

    def _step(self, place: int) -> Expression:
        return self._steps[place][0]

    def _children(self, place: int) -> tuple[int, ...]:
        return self._steps[place][1]

    def _checks(self, place: int) -> bool:
        """Whether a step is a check: an error where its condition holds."""
        return self._step(place).head == "IF(" and self._is_error(self._children(place)[1])

    def _is_error(self, place: int) -> bool:
        return self._step(place).head in ERRORS

    def _kind(self, place: int) -> str:
        step, children = self._steps[place]
        if not step.operands:
            return self._names.get(step.head) or (WORD if step.head.startswith('"') else NUMBER)
        if step.head in COMPARISONS or step.head == "ISTEXT(":
            return TRUTH
        if step.head == "IF(":
            kinds = {self._kind(child) for child in children[1:] if not self._is_error(child)}
            return kinds.pop() if len(kinds) == 1 else NUMBER
        return NUMBER

    def _value(self, place: int) -> str:
        """A step as a number or a word."""
        text = self._text(place)
        return self.language.as_number(text) if self._kind(place) == TRUTH else text

    def _text(self, place: int) -> str:
        step, children = self._steps[place]
        if place in self._held:
            return self._held[place]
        if not step.operands:
            return self._leaf(step)
        text = self._choice(place) if step.head == "IF(" else self._computed(step, children)
        if len(text) > WIDTH:
            self._hold(place, text)
            return self._held[place]
        return text

    def _leaf(self, step: Expression) -> str:
        if step.head in ERRORS:
            raise TypeError(f"{step.head} stands where only a whole branch can be an error")
        if step.head in self._names:
            return step.head
        return self.language.word(step.head) if step.head.startswith('"') else self.language.number(step.head)

    def _computed(self, step: Expression, children: Sequence[int]) -> str:
        language = self.language
        if step.head == "ISTEXT(":
            return language.is_text(self._text(children[0]))
        if step.head in ("=", "<>") and WORD in map(self._kind, children):
            name, word = map(self._text, children)
            return language.same_word(name, word, step.head == "=")
        operands = []
        for position, child in enumerate(children):
            text = self._value(child)
            inner = self._behind_checks(child)
            whole = child in self._held or inner in self._held or self._kind(child) == TRUTH
            if not whole and needs_brackets(step, self._step(inner), position):
                text = f"({text})"
            operands.append(text)
        if step.head in COMPARISONS:
            return f" {language.equals.get(step.head, step.head)} ".join(operands)
        return language.operation(step.head, operands)

    def _behind_checks(self, place: int) -> int:
        """The step whose text a check leaves standing."""
        while place not in self._held and self._step(place).head == "IF(":
            _, yes, no = self._children(place)
            if self._is_error(yes):
                place = no
            elif self._is_error(no):
                place = yes
            else:
                break
        return place

    def _hold(self, place: int, text: str) -> None:
        """Give a step a variable, if its text is not one already."""
        if text not in self.variables:
            name = self._variable(self._kind(place))
            self.lines.append(self.language.assign(name, text))
            text = name
        self._held[place] = text

    def _variable(self, kind: str) -> str:
        name = f"v{len(self.variables) + 1}"
        self.variables[name] = kind
        return name

    def _choice(self, place: int) -> str:
        language = self.language
        condition, yes, no = self._children(place)
        if self._is_error(yes):
            self._leave(self._alternatives(condition), self._step(yes))
            return self._text(no)
        if self._is_error(no):
            self._leave([language.negated(self._condition(condition))], self._step(no))
            return self._text(yes)
        holds = self._condition(condition)
        if self._is_plain(yes) and self._is_plain(no):
            return language.either(holds, self._value(yes), self._value(no))
        name = self._variable(self._kind(place))
        self.lines += self._assigned(name, holds, yes, no)
        return name

    def _assigned(self, name: str, holds: str, yes: int, no: int) -> list[str]:
        """The choice of a variable's value: on each side the statements that only that side needs."""
        outer, sides = self.lines, []
        for side in (yes, no):
            self.lines = []
            if self._branches(side):
                condition, *inner = self._children(side)
                self.lines += self._assigned(name, self._condition(condition), *inner)
            else:
                value = self._text(side) if self.variables[name] == TRUTH else self._value(side)
                self.lines.append(self.language.assign(name, value))
            sides.append(self.lines)
        self.lines = outer
        return self.language.branches(holds, *sides)

    def _branches(self, place: int) -> bool:
        """Whether a step is a choice that needs statements of its own on either side."""
        if self._is_plain(place) or self._uses[place] > 1 or self._step(place).head != "IF(":
            return False
        sides = self._children(place)[1:]
        return not any(map(self._is_error, sides)) and not all(map(self._is_plain, sides))

    def _is_plain(self, place: int) -> bool:
        """Whether a step costs nothing: a constant, a name, a variable."""
        return not self._step(place).operands or place in self._held

    def _condition(self, place: int) -> str:
        """A step as a condition; counts of conditions are read as what they stand for."""
        if self._kind(place) == TRUTH:
            return self._text(place)
        step, children = self._steps[place]
        if place not in self._held and self._is_logic(place):
            between = self.language.any_of if step.head == "+" else self.language.every
            return between.join(self._inner_condition(child, step.head) for child in children)
        return f"{self._value(place)} {self.language.equals['<>']} {self.language.number('0')}"

    def _inner_condition(self, place: int, outer: str) -> str:
        text = self._condition(place)
        bare = self._kind(place) == TRUTH or self._step(place).head == outer
        return text if bare else f"({text})"

    def _is_logic(self, place: int) -> bool:
        """Whether a step adds or multiplies nothing but conditions."""
        if self._kind(place) == TRUTH:
            return True
        step, children = self._steps[place]
        return step.head in ("+", "*") and place not in self._held and all(map(self._is_logic, children))

    def _alternatives(self, place: int) -> list[str]:
        """The conditions of which one is enough."""
        if self._step(place).head == "+" and place not in self._held and self._is_logic(place):
            return [text for child in self._children(place) for text in self._alternatives(child)]
        return [self._condition(place)]

    def _leave(self, alternatives: list[str], error: Expression) -> None:
        """Leave with an error where one of these holds: as many to a line as it takes."""
        line = alternatives[0]
        for text in alternatives[1:]:
            if len(line) + len(text) > WIDTH:
                self.lines += self.language.leave(line, error.head)
                line = text
            else:
                line += self.language.any_of + text
        self.lines += self.language.leave(line, error.head)
