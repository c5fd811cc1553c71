"""The grammar -> syntax/tables.py: the automaton's tables as plain data, so that no start has to work them out.

`python -m shuntwise.house.tables` writes the file, and the words of the part kinds into the grammar; with `--check` it
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

_HEAD = '''"""The automaton's tables. Do not edit: made from the grammar by `python -m shuntwise.house.tables`.

`TERMINALS` are patterns in the order in which they are tried, `KEYWORDS` words that are names elsewhere. A rule is
its symbol, its node's name (None: its children go to the rule above), its length, the places of the children that
are kept, and whether a lone child stands for the node. A state leads by symbol to another, or (below zero) to the
rule ~n that is then reduced. `PART_KINDS` are the words that declare a part, each with an example of what follows.

The module is long because it is a table.
"""

from __future__ import annotations

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


def parser() -> Lark:
    """The library's parser of the grammar: what the tables are made from, and what tests hold them against."""
    return Lark(
        grammar(),
        parser="lalr",
        lexer="contextual",
        propagate_positions=True,
        maybe_placeholders=False,
    )


def tables() -> str:
    """The module as text."""
    lark: Any = parser()
    table = lark.parser.parser._parse_table
    terminals = lark.parser.lexer.root_lexer.terminals
    patterns = {terminal.name: terminal.pattern.to_regexp() for terminal in terminals}
    rules = sorted(lark.rules, key=lambda rule: (rule.origin.name, rule.order, str(rule)))
    number_of = {rule: number for number, rule in enumerate(rules)}
    states = _in_order(table.states, table.start_states["start"])
    new = {old: number for number, old in enumerate(states)}

    def action(entry: tuple[Any, Any]) -> int:
        kind, argument = entry
        return new[argument] if kind is Shift else ~number_of[argument]

    lines = [_HEAD, f"START, END = 0, {new[table.end_states['start']]}\n"]
    lines.append(f"IGNORED = frozenset({sorted(lark.ignore_tokens)!r})\n\n")
    lines.append("PART_KINDS: dict[str, str] = {\n")
    lines += [f"    {kind.word!r}: {kind.example!r},\n" for kind in KINDS.values()]
    lines.append("}\n\nTERMINALS: dict[str, str] = {\n")
    lines += [f"    {name!r}: {pattern!r},\n" for name, pattern in patterns.items()]
    lines.append("}\n\nKEYWORDS: dict[str, str] = {\n")
    lines += [f"    {word!r}: {name!r},\n" for word, name in _keywords(terminals, patterns)]
    lines.append("}\n\nRULES: tuple[tuple[str, str | None, int, tuple[int, ...], bool], ...] = (\n")
    lines += [f"    {_rule(rule)!r},  # {rule.origin.name}: {_spelled(rule)}\n" for rule in rules]
    lines.append(")\n\nSTATES: tuple[dict[str, int], ...] = (\n")
    lines += [f"    {({name: action(table.states[old][name]) for name in sorted(table.states[old])})!r},\n"
              for old in states]  # fmt: skip
    return "".join([*lines, ")\n"])


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
    )
