"""The grammar -> syntax/tables.py and box_tables.py: the automaton's tables as plain data, so that no start has to work
them out. A box's own file has tables of its own, so that a design's lexer never looks for a word of a box's.

`python -m shuntwise.house.tables` writes the files, and the words of the part kinds into the grammar; with `--check` it
only says whether they are fresh. It is run in a checkout, after every change of grammar/shuntwise.lark or
model/kinds.py. The parser library works the tables out; here they are numbered in an order of their own, so that
equal grammars give equal files.
"""

from __future__ import annotations

import re
import sys
from collections.abc import Iterator
from pathlib import Path
from typing import Any

from lark import Lark
from lark.lexer import PatternStr
from lark.parsers.lalr_analysis import Shift

from shuntwise.house.fresh import write_or_check
from shuntwise.model.kinds import KINDS

GRAMMAR = Path(__file__).parents[3] / "grammar" / "shuntwise.lark"
TABLES = Path(__file__).parents[1] / "syntax" / "tables.py"
BOX_TABLES = TABLES.with_name("box_tables.py")

DESIGN, BOX = "start", "box_file"
"""The rules that a design and a box's own file begin at."""

_HEAD = '''"""A design's automaton as tables. Do not edit: made from the grammar by `python -m shuntwise.house.tables`.

`TERMINALS` are patterns in the order in which they are tried, `KEYWORDS` words that are names elsewhere. A rule is
its symbol, its node's name (None: its children go to the rule above), its length, the places of the children that
are kept, and whether a lone child stands for the node. A state leads by symbol to another, or (below zero) to the
rule ~n that is then reduced. `PART_KINDS` are the words that declare a part, each with an example of what follows.

The module is long because it is a table.
"""

from __future__ import annotations

from shuntwise.syntax.automaton import Tables

'''

_BOX_HEAD = '''"""Tables of a box's own file. Do not edit: made from the grammar by `python -m shuntwise.house.tables`.

They are as those of `tables.py`, which says what is what.
"""

from __future__ import annotations

from shuntwise.syntax.automaton import Tables

'''


def grammar() -> str:
    """The grammar with the words of all part kinds. Raises ValueError if it has no place for them."""
    words = "|".join(re.sub(" +", r"[ \\t]+", word) for word in sorted(KINDS, key=lambda word: -len(word.split())))
    text, found = re.subn(
        r"^(KIND\S*): .*$",
        lambda line: rf"{line[1]}: /(?:{words})(?!\w)/",
        GRAMMAR.read_text(encoding="utf-8"),
        flags=re.MULTILINE,
    )
    if found != 1:
        raise ValueError(f"{GRAMMAR.name} must define the terminal KIND once, on one line")
    return text


def parser(start: str = DESIGN) -> Lark:
    """The library's parser of the grammar: what the tables are made from, and what tests hold them against."""
    return Lark(
        grammar(),
        start=start,
        parser="lalr",
        lexer="contextual",
        propagate_positions=True,
        maybe_placeholders=False,
    )


def tables() -> str:
    """The module for designs as text."""
    kinds = [
        "PART_KINDS: dict[str, str] = {\n",
        *(f"    {k.word!r}: {k.example!r},\n" for k in KINDS.values()),
        "}\n\n",
    ]
    return _module(_HEAD, DESIGN, kinds)


def box_tables() -> str:
    """The module for boxes' own files as text."""
    return _module(_BOX_HEAD, BOX, [])


def _module(head: str, start: str, more: list[str]) -> str:
    lark: Any = parser(start)
    table = lark.parser.parser._parse_table
    states = _in_order(table.states, table.start_states[start])
    new = {old: number for number, old in enumerate(states)}
    taken = {name for old in states for name in table.states[old]}
    terminals = [one for one in lark.parser.lexer.root_lexer.terminals if one.name in {*taken, *lark.ignore_tokens}]
    patterns = {terminal.name: terminal.pattern.to_regexp() for terminal in terminals}
    reduced = {argument for old in states for kind, argument in table.states[old].values() if kind is not Shift}
    rules = sorted(reduced, key=lambda rule: (rule.origin.name, rule.order, str(rule)))
    number_of = {rule: number for number, rule in enumerate(rules)}

    def action(entry: tuple[Any, Any]) -> int:
        kind, argument = entry
        return new[argument] if kind is Shift else ~number_of[argument]

    lines = [head, f"START, END = 0, {new[table.end_states[start]]}\n"]
    lines.append(f"IGNORED = frozenset({sorted(lark.ignore_tokens)!r})\n\n")
    lines += more
    lines.append("TERMINALS: dict[str, str] = {\n")
    lines += [f"    {name!r}: {pattern!r},\n" for name, pattern in patterns.items()]
    lines.append("}\n\nKEYWORDS: dict[str, str] = {\n")
    lines += [f"    {word!r}: {name!r},\n" for word, name in _keywords(terminals, patterns)]
    lines.append("}\n\nRULES: tuple[tuple[str, str | None, int, tuple[int, ...], bool], ...] = (\n")
    lines += [f"    {_rule(rule)!r},  # {rule.origin.name}: {_spelled(rule)}\n" for rule in rules]
    lines.append(")\n\nSTATES: tuple[dict[str, int], ...] = (\n")
    lines += [f"    {({name: action(table.states[old][name]) for name in sorted(table.states[old])})!r},\n"
              for old in states]  # fmt: skip
    name = "BOX" if start == BOX else "DESIGN"
    lines.append(f")\n\n{name} = Tables(START, END, IGNORED, TERMINALS, KEYWORDS, RULES, STATES)\n")
    return "".join(lines)


def _keywords(terminals: list[Any], patterns: dict[str, str]) -> Iterator[tuple[str, str]]:
    """Words that the pattern of names fits as well."""
    name = next(terminal for terminal in terminals if terminal.name == "NAME")
    for terminal in terminals:
        word, rival = terminal.pattern.value, terminal.priority == name.priority
        if rival and isinstance(terminal.pattern, PatternStr) and re.fullmatch(patterns["NAME"], word):
            yield word, terminal.name


def _in_order(states: dict[Any, dict[str, Any]], start: Any) -> list[Any]:
    """The states in the order in which they are reached, by the names of what leads to them."""
    order = {start: 0}
    waiting = [start]
    for state in waiting:
        for name in sorted(states[state]):
            kind, argument = states[state][name]
            if kind is Shift and argument not in order:
                order[argument] = len(order)
                waiting.append(argument)
    return list(order)


def _rule(rule: Any) -> tuple[str, str | None, int, tuple[int, ...], bool]:
    taken = tuple(i for i, symbol in enumerate(rule.expansion) if not (symbol.is_term and symbol.filter_out))
    origin = str(rule.origin.name)
    name = str(rule.alias) if rule.alias else None if origin.startswith("_") else origin
    return origin, name, len(rule.expansion), taken, bool(rule.options.expand1 and not rule.alias)


def _spelled(rule: Any) -> str:
    return " ".join(symbol.name for symbol in rule.expansion) or "nothing"


if __name__ == "__main__":
    raise SystemExit(
        write_or_check(sys.argv[1:], "shuntwise.house.tables", GRAMMAR, grammar)
        or write_or_check(sys.argv[1:], "shuntwise.house.tables", TABLES, tables)
        or write_or_check(sys.argv[1:], "shuntwise.house.tables", BOX_TABLES, box_tables)
    )
