"""Nodes whose names are taken for one another.

In: a `Circuit` and its open ends. Out: `LookAlike` pairs. An open end with a similar name is told of by
`loose-node`, and not here. Refuses to know what hangs on the nodes.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator
from dataclasses import dataclass
from math import inf

from shuntwise.checks.faults.ends import Ends
from shuntwise.graph.circuit import Circuit
from shuntwise.model.wiring import RETURN_WORDS

_SAME_LOOKS = str.maketrans("01i", "oll")

LEAST_FOR_SLIP = 4
"""Shorter names that differ by a letter, such as `hp` and `lp`, are meant to differ."""


@dataclass(frozen=True)
class LookAlike:
    """`names` first the doubtful one, then the one that it looks like; `nets` theirs."""

    names: tuple[str, str]
    nets: frozenset[str]


def find_look_alikes(circuit: Circuit, ends: Ends) -> tuple[LookAlike, ...]:
    """Pairs of names on different nets that a reader takes for one name, the rarer first.

    Names that read alike (capitals, O and 0, l and 1 and I) always; names that one slip of a finger tells
    apart only if one of them stands in the text once.
    """
    design = circuit.design

    def uses(node: str) -> float:
        """How often a node is named; the return counts as named everywhere."""
        return len(design.node_spans[node]) if node else inf

    by_scope: dict[str, list[str]] = defaultdict(list)
    for node in design.node_spans:
        by_scope[node.rpartition(".")[0]].append(node)
    found = []
    for scope, nodes in by_scope.items():
        words = {node.rpartition(".")[2]: node for node in nodes}
        if not scope and len(design.feeds) == 1:
            words |= dict.fromkeys(RETURN_WORDS, "")
        for a, b in _close(list(words)):
            rare, common = sorted((a, b), key=lambda word: uses(words[word]))
            nets = frozenset(circuit.net_of[words[word] or f"{design.feeds[0].name}-"] for word in (a, b))
            if len(nets) == 1 or nets & ends.nets or nets & circuit.doubtful:
                continue
            if _reads_as(a) == _reads_as(b) or uses(words[rare]) == 1 or not words[common]:
                found.append(LookAlike((words[rare], words[common] or common), nets))
    return tuple(found)


def _reads_as(word: str) -> str:
    return word.casefold().translate(_SAME_LOOKS)


def _close(words: list[str]) -> Iterator[tuple[str, str]]:
    """Pairs of words that read alike or that a slip of one letter tells apart, each once.

    Words with one letter left out are looked up in a table, so that not every word meets every other.
    """
    seen: set[tuple[str, str]] = set()
    table: dict[str, list[str]] = defaultdict(list)
    for word in words:
        keys = {_reads_as(word)}
        if len(word) >= LEAST_FOR_SLIP:
            keys |= {word, *(word[:i] + word[i + 1 :] for i in range(len(word)) if word[i].isalpha())}
        for key in keys:
            for other in table[key]:
                if other != word and (other, word) not in seen and is_slip(other, word):
                    seen.add((other, word))
                    yield other, word
            table[key].append(word)


def is_slip(a: str, b: str) -> bool:
    """Do the words read alike, or does one letter dropped, doubled, changed or exchanged make one the other?

    Numbers, and the first and last letter of a word, are what a careful author tells names apart by.
    """
    if _reads_as(a) == _reads_as(b):
        return True
    if min(len(a), len(b)) < LEAST_FOR_SLIP:
        return False
    start = next((i for i, (x, y) in enumerate(zip(a, b, strict=False)) if x != y), min(len(a), len(b)))
    if len(a) == len(b):
        if a[start + 2 :] == b[start + 2 :] and a[start : start + 2] == b[start : start + 2][::-1]:
            return a[start : start + 2].isalpha()
        inner = 0 < start < len(a) - 1 and a[start - 1] != "_" and a[start + 1] != "_"
        return inner and a[start].isalpha() and b[start].isalpha() and a[start + 1 :] == b[start + 1 :]
    shorter, longer = sorted((a, b), key=len)
    return longer[start + 1 :] == shorter[start:] and longer[start].isalpha()
