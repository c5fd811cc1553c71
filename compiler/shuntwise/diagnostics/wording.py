"""How names and numbers stand in a sentence."""

from __future__ import annotations

from collections.abc import Sequence


def listed(words: Sequence[str]) -> str:
    """`a`, `a and b`, `a, b and c`."""
    return " and ".join(filter(None, (", ".join(words[:-1]), *words[-1:])))


def quoted(names: Sequence[str]) -> str:
    """The same of names, each marked as one."""
    return listed([f"`{name}`" for name in names])


def percent(share: float, digits: int = 2) -> str:
    """A share as parts have it: `5 %`."""
    return f"{100 * share:.{digits}g} %"


def octaves(count: float) -> str:
    """`1 octave`, `1.5 octaves`."""
    text = f"{count:.2g}"
    return f"{text} octave{'s' * (text != '1')}"
