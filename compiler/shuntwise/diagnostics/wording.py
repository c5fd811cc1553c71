"""How names and numbers stand in a sentence."""

from __future__ import annotations

from collections.abc import Sequence


def listed(words: Sequence[str], joint: str = "and") -> str:
    """`a`, `a and b`, `a, b and c`, or with another word for `and`."""
    return f" {joint} ".join(filter(None, (", ".join(words[:-1]), *words[-1:])))


def quoted(names: Sequence[str]) -> str:
    """The same of names, each marked as one."""
    return listed([f"`{name}`" for name in names])


def rounded(value: float, digits: int) -> str:
    """A number to so many digits, never as a power of ten: `120`, `0.025`."""
    return f"{float(f'{value:.{digits}g}'):.12g}"


def percent(share: float) -> str:
    """A share as parts have it: `5 %`, `7.2 %`, `120 %`."""
    return f"{rounded(100 * share, 2)} %"


def octaves(count: float) -> str:
    """`1 octave`, `1.5 octaves`."""
    text = rounded(count, 2)
    return f"{text} octave{'s' * (text != '1')}"
