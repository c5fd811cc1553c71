"""How several names stand in a sentence."""

from __future__ import annotations

from collections.abc import Sequence


def listed(words: Sequence[str]) -> str:
    """`a`, `a and b`, `a, b and c`."""
    return " and ".join(filter(None, (", ".join(words[:-1]), *words[-1:])))


def quoted(names: Sequence[str]) -> str:
    """The same of names, each marked as one."""
    return listed([f"`{name}`" for name in names])
