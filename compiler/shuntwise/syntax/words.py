"""The words that begin a statement, words people type for them, and how to find the nearest word.

Knows no grammar rule; the parser's messages and the model's share it.
"""

from __future__ import annotations

from collections.abc import Iterable
from difflib import get_close_matches
from itertools import islice
from unicodedata import normalize

from shuntwise.syntax.tables import PART_KINDS

STATEMENTS = (
    "design",
    "amplifier",
    "input",
    "posts",
    "connector",
    "driver",
    *PART_KINDS,
    "coupling",
    "testpoint",
    "let",
    "network",
    "use",
    "leg",
    "include",
    "variant",
    "choice",
    "position",
    "set",
    "omit",
    "fit",
    "expect",
    "allow",
    "limit",
    "board",
    "layout",
    "bench",
)

BOX_STATEMENTS = ("box", "variant", "bench", "measured", "reading", "sweep", "beside", "rework", "note")
"""The words that begin a line of a box's own file."""

BOX_KEYWORDS = frozenset((*BOX_STATEMENTS, "of", "at", "to", "into"))

BOARD_LINES = ("outline", "thickness", "copper", "seen", "corner", "area", "track", "holes", "hole", "tags", "tag",
               "fixing")  # fmt: skip
LAYOUT_LINES = ("cut", "drill", "jumper", "bus", "place", "lead out", "depth")
PLACING_LINES = ("axis", "leads", "tie", "raised", "note")
"""The words that begin a line of a board, of a layout, and of how a part is placed."""

BOARD_WORDS = frozenset(word for line in (*BOARD_LINES, *LAYOUT_LINES, *PLACING_LINES) for word in line.split()) - {
    "note"
} | frozenset(("cut", "parts", "side", "solder"))
"""Words of the language inside boards and layouts; everywhere else they are names."""

KEYWORDS = frozenset(
    word for statement in STATEMENTS for word in statement.split()
) | frozenset(("and", "as", "at", "above", "because", "below", "from", "given", "in", "into", "library", "of", "on",
               "through", "to", "unused", "within"))  # fmt: skip

SAID_FOR = {
    "amp": "amplifier",
    "cap": "capacitor",
    "caps": "capacitor",
    "choke": "coil",
    "inductor": "coil",
    "ind": "coil",
    "condenser": "capacitor",
    "electrolytic": "capacitor",
    "npe": "capacitor",
    "bipolar": "capacitor",
    "autotransformer": "tapped coil",
    "autoformer": "tapped coil",
    "res": "resistor",
    "bulb": "lamp",
    "ptc": "protector",
    "potentiometer": "attenuator",
    "knob": "attenuator",
    "thermistor": "protector",
    "jumper": "link",
    "wire": "link",
    "speaker": "driver",
    "woofer": "driver woofer",
    "tweeter": "driver tweeter",
    "mid": "driver mid",
    "import": "include",
    "title": "design",
    "name": "design",
    "couple": "coupling",
    "mutual": "coupling",
    "require": "expect",
    "assert": "expect",
    "ignore": "allow",
    "waive": "allow",
    "remove": "omit",
    "variation": "variant",
    "option": "choice",
    "switch": "choice",
    "version": "variant",
    "branch": "leg",
    "section": "leg",
    "subcircuit": "network",
    "post": "posts",
    "terminals": "posts",
    "inputs": "input",
    "socket": "connector",
    "jack": "connector",
    "plug": "connector",
}
"""Words that people say, with the word of the language for the same thing."""

EXPLAINED = {
    "lpad": 'a pad is a network of the library: `include "lpad" from library`, then `use lpad as P1 { loss 4 dB }`',
    "transformer": "a transformer is no part of its own: a `tapped coil` is one with a common winding",
}
"""Words that people begin a line with, for which no word of the language stands, and what to write."""

ATTRIBUTES_SAID_FOR = {
    "npe": "non-polar electrolytic",
    "np": "non-polar electrolytic",
    "nonpolar": "non-polar electrolytic",
    "bipolar": "bipolar electrolytic",
    "mkp": "film",
    "mkt": "film",
    "iron": "iron core",
    "ferrite": "ferrite core",
    "air": "air core",
    "fast": "quick acting",
    "quick": "quick acting",
    "slow": "time lag",
    "lag": "time lag",
    "awg": "wire",
    "gauge": "wire",
}
"""Words that people write on a part, with those of the language for the same thing."""

RENAMED = {
    "wright_kr": "r_factor",
    "wright_xr": "r_exponent",
    "wright_ki": "x_factor",
    "wright_xi": "x_exponent",
}
"""Words of earlier versions of the language, with those that have taken their place; grammar/CHANGES.md."""

LIBRARY = ("lpad", "notch", "trap", "zobel")
"""The networks that come with the program."""

LIBRARY_BOARDS = ("gusset", "lath", "trestle")
"""The boards that come with it."""

KIND_OF_LETTER = {"L": "coil", "C": "capacitor", "R": "resistor"}
"""The letters that labels of parts begin with (IEC 60617 and the trade agree on these three)."""

_MOST_CANDIDATES = 300
"""A real design has some dozens of names; the bound keeps a hostile text with ten thousand from costing minutes."""


def _fold(word: str) -> str:
    return normalize("NFKC", word).casefold()


def nearest(word: str, candidates: Iterable[str]) -> str | None:
    """The candidate most like `word` (case and width folded, at most about a third of it different), or None."""
    by_fold: dict[str, str] = {}
    for candidate in islice(candidates, _MOST_CANDIDATES):
        by_fold.setdefault(_fold(candidate), candidate)
    folded = _fold(word)[:60]
    if folded in by_fold and by_fold[folded] != word:
        return by_fold[folded]
    alike = [fold for fold in by_fold if fold != folded and abs(len(fold) - len(folded)) <= len(folded)]
    close = get_close_matches(folded, alike, n=1, cutoff=0.66)
    return by_fold[close[0]] if close else None
