"""Names that every SPICE takes, made from whatever the author wrote.

In: an author's name (any Unicode). Out: `[a-z][a-z0-9_]*`, at most 60 characters, unique, readable; and
text that is safe inside a comment line. It refuses to know what the name belongs to: an author's text
reaches a netlist through this module or not at all.
"""

from __future__ import annotations

import re
import unicodedata

LONGEST_NAME = 60
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

    A `+` is spelled `plus`, and a `-` that ends a word `minus`: these are the pads of a driver.
    """
    spelled = "".join(_latin(c) or "_" for c in text[:_READ_FIRST]).lower()
    spelled = re.sub(r"-(?![a-z0-9])", "_minus_", spelled.replace("+", "_plus_"))
    return re.sub(r"[^a-z0-9]+", "_", spelled).strip("_")


class NameTable:
    """The names given out so far in one netlist.

    Nodes and elements draw on one table, although SPICE keeps two: gnucap prints `vm(r1)` of the
    element when there is one, and of the node otherwise.
    """

    def __init__(self) -> None:
        self._taken: set[str] = set(CLASH_WORDS)
        self._next: dict[str, int] = {}

    def node(self, author: str, prefix: str = "") -> str:
        """A new name for a node."""
        base = plain(author)
        if not prefix and not base[:1].isalpha():
            base = "n" + base
        return self._claim(prefix + base)

    def element(self, kind: str, author: str, prefix: str = "") -> str:
        """A new name for an element, which starts with the letter of its kind: R, L, C, K, V or I."""
        letter, base = kind.lower(), plain(author) or "x"
        if prefix or not base.startswith(letter) or base == letter:
            base = f"{letter}_{prefix}{base}"
        return self._claim(base)

    def _claim(self, wanted: str) -> str:
        base = name = wanted[:LONGEST_NAME].rstrip("_")
        while name in self._taken:
            number = self._next[base] = self._next.get(base, 1) + 1
            tail = f"_{number}"
            name = base[: LONGEST_NAME - len(tail)] + tail
        self._taken.add(name)
        return name
