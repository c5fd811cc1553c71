"""Names that every SPICE takes, made from whatever the author wrote.

In: an author's name (any Unicode). Out: `[a-z][a-z0-9_]*`, unique, readable, at most 11 characters for a node and
60 for anything else; and text that is safe inside a comment line. It refuses to know what the name belongs to: an
author's text reaches a netlist through this module or not at all.

Nodes are short because they are printed. ngspice 39 heads a column with the first 15 characters of what is printed
(`%-16.15s`), whatever the width of the numbers, and under one heading a builder takes one driver for another. gnucap
2017.10 cuts nothing, but a longer heading pushes those behind it off their columns. So `vm(NODE)` stands whole with
up to 11 characters, and `vdb(NODE)` still tells any two apart. Elements are never printed.

A name depends on its author's name alone wherever two do not clash, so that a part more renames no node elsewhere.
"""

from __future__ import annotations

import hashlib
import re
import unicodedata
from base64 import b32encode
from collections.abc import Iterable
from itertools import count
from string import ascii_lowercase

LONGEST_NAME = 60
LONGEST_NODE = 15 - len("vm()")
LONGEST_NOTE = 120
"""Past about 500 characters ngspice cuts a title line and reads the rest as circuit."""

_READ_FIRST = 400
"""Only this much of an author's text is looked at, so that a name of a million characters costs nothing."""

CLASH_WORDS = frozenset((
    "gnd", "ground", "in", "time", "frequency", "hertz", "temp", "temper",
    "all", "allv", "alli", "ally", "and", "or", "not", "eq", "ne", "gt", "lt", "ge", "le",
))  # fmt: skip
"""Ground or a column of its own to a simulator at least, or, to ngspice's `.print`, "all" or an operator."""

_SPELLED = {"\u03a9": "ohm", "\u2126": "ohm", "\u00b5": "u", "\u03bc": "u", "°": "deg", "×": "x", "±": "+-"}
_SPELLED |= {"‘": "'", "’": "'", "“": '"', "”": '"', "–": "-", "—": "-", "−": "-", "∅": "0", "ß": "ss"}


def _latin(character: str) -> str:
    """One character in printable ASCII: itself, its base letter, the name of its letter, or ''."""
    if " " <= character <= "~":
        return character
    if character in _SPELLED:
        return _SPELLED[character]
    base = "".join(c for c in unicodedata.normalize("NFKD", character) if " " <= c <= "~")
    if base:
        return base
    letter = re.search(r" LETTER ([A-Z]+)", unicodedata.name(character, ""))
    if letter:
        return letter[1].lower() if character.islower() else letter[1].capitalize()
    return f"u{ord(character):x}" if character.isalnum() else ""


def note(text: str) -> str:
    r"""`text` as it may stand in a comment: one line of printable ASCII, 120 characters at most.

    A character without an ASCII spelling becomes `?`. There is no `\` at the end, which would join the next
    line to it. The caller puts a fixed prefix before it, which is what keeps a comment from being a command
    (`*#` and `*ng_script` are commands to ngspice).
    """
    spelled = "".join(_latin(c) or "?" for c in text[:_READ_FIRST])
    return spelled[:LONGEST_NOTE].rstrip("\\ ")


def plain(text: str) -> str:
    """`text` as lower-case words of a-z and 0-9 joined by `_`; may be empty or start with a digit.

    A `+` is spelled `p`, and a `-` that ends a word `m`: these are the pads of a driver.
    """
    spelled = "".join(_latin(c) or "_" for c in text[:_READ_FIRST]).lower()
    spelled = re.sub(r"-(?![a-z0-9])", "_m_", spelled.replace("+", "_p_"))
    return re.sub(r"[^a-z0-9]+", "_", spelled).strip("_")


_BRIEF = {"inside": "in", "between": "", "and": "", "of": "", "the": ""}
"""The words of names that no author gave: `inside woofer.re`, `between C1 and R1`."""


def _brief(name: str) -> str:
    """A plain name without the words that say least."""
    words = (_BRIEF.get(word, word) for word in name.split("_"))
    return "_".join(word for word in words if word) or name


def _shortened(name: str, room: int) -> str:
    """A plain name in `room` characters: vowels go, then other letters, from the end of the longest word that has any.

    First letters stay, and figures, which are what alike names differ in: `in_wofr2_re`. If that is not enough, the
    words are joined, and cut.
    """
    words = name[:LONGEST_NAME].split("_")
    for letters, shortest in (("aeiou", 3), (ascii_lowercase, 2)):
        droppable = re.compile(f"(?<=.)[{letters}](?!.*[{letters}])")
        while len("_".join(words)) > room:
            longest = max((w for w in words if len(w) >= shortest and droppable.search(w)), key=len, default=None)
            if longest is None:
                break
            words[words.index(longest)] = droppable.sub("", longest)
    joined = "_".join(words)
    return joined if len(joined) <= room else "".join(words)[:room]


class NameTable:
    """The names given out so far in one netlist.

    Nodes and elements draw on one table, although SPICE keeps two: gnucap prints `vm(r1)` of the
    element when there is one, and of the node otherwise.
    """

    def __init__(self) -> None:
        self._taken: set[str] = set(CLASH_WORDS)
        self._next: dict[str, int] = {}

    def nodes(self, authors: Iterable[str], prefix: str = "", before: int = 0) -> dict[str, str]:
        """A new name for each node; those that need no other than the author's get theirs first."""
        authors = list(authors)
        given = dict.fromkeys(authors, "")
        for author in sorted(authors, key=lambda author: plain(author) != author):
            given[author] = self.node(author, prefix, before)
        return given

    def node(self, author: str, prefix: str = "", before: int = 0) -> str:
        """A new name for a node; `before` characters more stand before it wherever it is printed.

        Where the name is taken, its end is a mark of the author's name, not a number: numbers would move.
        """
        room = LONGEST_NODE - before
        name = plain(author)
        if len(prefix + name) > room:
            name = _brief(name)
        if not prefix and (not name[:1].isalpha() or name in CLASH_WORDS):
            prefix = "n_"
        wanted = (prefix + _shortened(name, room - len(prefix))).rstrip("_")
        attempts = count()
        given = wanted
        while given in self._taken:
            mark = _mark(author, next(attempts))
            given = f"{wanted[: room - 1 - len(mark)].rstrip('_')}_{mark}"
        self._taken.add(given)
        return given

    def element(self, kind: str, author: str, prefix: str = "") -> str:
        """A new name for an element, which starts with the letter of its kind: R, L, C, K, V or I."""
        letter, base = kind.lower(), plain(author) or "x"
        if prefix or not base.startswith(letter) or base == letter:
            base = f"{letter}_{prefix}{base}"
        return self._numbered(base)

    def model(self, author: str) -> str:
        """A new name for a subcircuit."""
        return self._numbered(plain(author))

    def _numbered(self, wanted: str) -> str:
        base = name = wanted[:LONGEST_NAME].rstrip("_")
        while name in self._taken:
            number = self._next[base] = self._next.get(base, 1) + 1
            tail = f"_{number}"
            name = base[: LONGEST_NAME - len(tail)] + tail
        self._taken.add(name)
        return name


def _mark(author: str, attempt: int) -> str:
    """Three characters of a digest, more of them after many attempts in vain: `k3x`."""
    digest = hashlib.sha256(f"{attempt} {author}".encode("utf-8", "backslashreplace")).digest()
    return b32encode(digest).decode().lower()[: min(3 + attempt // 8, 6)]
