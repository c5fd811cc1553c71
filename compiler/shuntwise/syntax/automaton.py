"""The grammar at work: a text cut into tokens, and tokens shifted and reduced to a tree.

In: a text and the tables of its grammar (`tables.py`, `box_tables.py`, made from
grammar/shuntwise.lark). Out: tokens, and a tree of `Node`s. Refuses to know the words of the language, and
what to do about a slip.

An LALR(1) automaton (F. L. DeRemer, Practical translators for LR(k) languages, MIT, 1969) with a lexer that looks
only for what its present state can take, so that most words are names wherever they mean nothing else.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass
from functools import cache


@dataclass(frozen=True, eq=False, slots=True)
class Tables:
    """The tables of one grammar; `tables.py` says what stands in each."""

    start: int
    end: int
    ignored: frozenset[str]
    terminals: dict[str, str]
    keywords: dict[str, str]
    rules: tuple[tuple[str, str | None, int, tuple[int, ...], bool], ...]
    states: tuple[dict[str, int], ...]

    def pattern(self, terminal: str) -> re.Pattern[str]:
        """The pattern of one terminal."""
        return re.compile(self.terminals[terminal])


class Token(str):
    """A piece of text, with the grammar's name for it and its place."""

    __slots__ = ("end_pos", "start_pos", "type")
    type: str
    start_pos: int
    end_pos: int

    def __new__(cls, type: str, text: str, start_pos: int, end_pos: int) -> Token:
        token = super().__new__(cls, text)
        token.type, token.start_pos, token.end_pos = type, start_pos, end_pos
        return token


class Node:
    """A rule of the grammar as it was read. `start` and `end` are None where no token belongs to it."""

    __slots__ = ("children", "data", "end", "start")

    def __init__(self, data: str, children: list[Child], start: int | None, end: int | None) -> None:
        self.data, self.children, self.start, self.end = data, children, start, end


Child = Token | Node


@dataclass(slots=True)
class _Value:
    """What stands on the stack: a token, a node, or the children of a rule that has no node of its own.

    The place is that of all tokens that were read for it, brackets included.
    """

    content: Child | list[Child]
    start: int | None
    end: int | None


class UnexpectedToken(Exception):
    """A token that the present state cannot take."""

    def __init__(self, token: Token) -> None:
        super().__init__(token)
        self.token = token


class UnexpectedCharacter(Exception):
    """A place at which no token begins."""

    def __init__(self, at: int) -> None:
        super().__init__(at)
        self.at = at


class Automaton:
    """The states and values of one reading. `feed` raises UnexpectedToken and then has changed nothing."""

    def __init__(self, tables: Tables) -> None:
        self.tables, self.table, self.rules = tables, tables.states, tables.rules
        self.scanners = _scanners(tables)
        self.states: list[int] = [tables.start]
        self.values: list[_Value] = []

    @property
    def terminals(self) -> Iterable[str]:
        """What the present state has in its table: some of it fits only until what came before is reduced."""
        known = self.tables.terminals
        return (name for name in self.table[self.states[-1]] if name in known or name == "$END")

    def next_token(self, text: str, at: int) -> Token | None:
        """The first token from `at`, None at the end of the text. Raises UnexpectedToken or UnexpectedCharacter."""
        tables, state = self.tables, self.states[-1]
        scanner = self.scanners.get(state)
        if scanner is None:
            scanner = self.scanners[state] = _scanner(tables, state)
        while at < len(text):
            match = scanner.match(text, at)
            if match is None:
                return _stray(tables, text, at)
            kind, word = match.lastgroup or "", match[0]
            if kind not in tables.ignored:
                if kind == "NAME" and tables.keywords.get(word) in self.table[state]:
                    kind = tables.keywords[word]
                return Token(kind, word, at, match.end())
            at = match.end()
        return None

    def fits(self, *terminals: str) -> bool:
        """Could these terminals come next, in this order?"""
        rules, states = self.rules, self.table
        kept, grown = len(self.states) - 1, [self.states[-1]]  # what is untouched, and what is on top of it
        for terminal in terminals:
            while True:
                action = states[grown[-1]].get(terminal)
                if action is None:
                    return False
                if action >= 0:
                    grown.append(action)
                    break
                origin, _, length, _, _ = rules[~action]
                for _ in range(length):
                    grown.pop()
                    if not grown:
                        kept -= 1
                        grown.append(self.states[kept])
                grown.append(states[grown[-1]][origin])
        return True

    def feed(self, token: Token) -> None:
        """Shift a token, after the reductions that it asks for."""
        table = self.table
        action = table[self.states[-1]].get(token.type)
        if action is None or (action < 0 and not self.fits(token.type)):
            raise UnexpectedToken(token)
        while action < 0:
            self._reduce(~action)
            action = table[self.states[-1]][token.type]
        self.states.append(action)
        self.values.append(_Value(token, token.start_pos, token.end_pos))

    def finish(self) -> Node:
        """The whole tree. Raises UnexpectedToken if something is still open."""
        end = Token("$END", "", 0, 0)
        while self.states[-1] != self.tables.end:
            action = self.table[self.states[-1]].get("$END")
            if action is None or action >= 0:
                raise UnexpectedToken(end)
            self._reduce(~action)
        content = self.values[-1].content
        assert isinstance(content, Node)
        return content

    def _reduce(self, number: int) -> None:
        origin, name, length, taken, lone = self.rules[number]
        states, table = self.states, self.table
        if lone and length == 1 and not isinstance(self.values[-1].content, list):
            # An expression's way through every level of precedence: half of all reductions, and nothing changes.
            states.pop()
            states.append(table[states[-1]][origin])
            return
        values = self.values[len(self.values) - length :] if length else []
        if length:
            del states[-length:], self.values[-length:]
        children: list[Child] = []
        for place in taken:
            content = values[place].content
            if not isinstance(content, list):
                children.append(content)
            elif children:
                children += content
            else:  # a repetition grows in place, so that a long one costs no more than its length
                children = content
        start = end = None
        for value in values:
            if value.end is not None:  # it has a place
                start, end = value.start if start is None else start, value.end
        content = children if name is None else Node(name, children, start, end)
        if lone and len(children) == 1:
            content = children[0]
        self.values.append(_Value(content, start, end))
        states.append(table[states[-1]][origin])

    # --- places to come back to

    def save(self) -> Saved:
        """What `restore` needs to come back to here. Repetitions grow in place, so their lengths are kept too."""
        lengths = [len(value.content) if isinstance(value.content, list) else 0 for value in self.values]
        return Saved(list(self.states), list(self.values), lengths)

    def restore(self, saved: Saved) -> None:
        for value, length in zip(saved.values, saved.lengths, strict=True):
            if isinstance(value.content, list):
                del value.content[length:]
        self.states[:], self.values[:] = saved.states, saved.values


@dataclass(frozen=True, slots=True)
class Saved:
    """A place of an `Automaton` to come back to."""

    states: list[int]
    values: list[_Value]
    lengths: list[int]


def _stray(tables: Tables, text: str, at: int) -> Token:
    """Name what stands where nothing of the kind can; always raises."""
    match = _everything(tables).match(text, at)
    if match is None:
        raise UnexpectedCharacter(at)
    kind = match.lastgroup or ""
    kind = tables.keywords.get(match[0], kind) if kind == "NAME" else kind
    raise UnexpectedToken(Token(kind, match[0], at, match.end()))


@cache
def _scanners(tables: Tables) -> dict[int, re.Pattern[str]]:
    """Those of the states that have been read from so far."""
    return {}


def _scanner(tables: Tables, state: int) -> re.Pattern[str]:
    """What one state can take, and what is passed over everywhere."""
    return _pattern(tables, frozenset(tables.terminals.keys() & tables.states[state].keys()))


@cache
def _pattern(tables: Tables, accepted: frozenset[str]) -> re.Pattern[str]:
    # A keyword is told from a name by looking it up, wherever a name can stand too.
    looked_up = frozenset(tables.keywords.values()) if "NAME" in accepted else frozenset()
    names = [
        name for name in tables.terminals if name in tables.ignored or (name in accepted and name not in looked_up)
    ]
    return re.compile("|".join(f"(?P<{name}>{tables.terminals[name]})" for name in names))


@cache
def _everything(tables: Tables) -> re.Pattern[str]:
    return _pattern(tables, frozenset(tables.terminals))
