"""Texts that are no design, or two at once: told in one finding, and not read any further.

In: a `Source`. Out: a finding, or None. Refuses to read a text that is a design with slips in it.
"""

from __future__ import annotations

import re

from shuntwise.diagnostics.diagnostic import Diagnostic, Label
from shuntwise.source import Source, Span
from shuntwise.syntax.situation import finding

_OURS = re.compile(r"^<{7}(?:[ \t].*)?$", re.MULTILINE)
_THEIRS = re.compile(r"^>{7}(?:[ \t].*)?$", re.MULTILINE)
_BETWEEN = re.compile(r"^={7}[ \t]*$", re.MULTILINE)
_DOT_LINE = re.compile(r"^\.(?:end|ends|ac|dc|op|tran|subckt|control|include|lib|model|param|options?|print)\b.*$",
                       re.MULTILINE | re.IGNORECASE)  # fmt: skip
_ELEMENT = re.compile(r"^[RLCVIKX]\S*[ \t]+\S+[ \t]+\S+[ \t]+\S+", re.MULTILINE | re.IGNORECASE)
_STATEMENT = re.compile(r"^\s*(?:driver|leg|coil|capacitor|resistor)\s+\w+", re.MULTILINE)


def foreign(source: Source) -> Diagnostic | None:
    """What kind of text this is instead of a design, if that is plain. Time is linear in its length."""
    return _conflict(source) or _netlist(source)


def _conflict(source: Source) -> Diagnostic | None:
    """Both sides of a merge that nobody has settled, as version control writes them."""
    text = source.text
    ours, theirs = _OURS.search(text), _THEIRS.search(text)
    between = _BETWEEN.search(text, ours.end()) if ours is not None else None
    if ours is None or theirs is None or between is None or theirs.start() < between.end():
        return None
    return finding(
        Span(source, ours.start(), ours.end()),
        "two versions of this text stand in it, side by side",
        name="conflict-markers",
        label="one begins here",
        places=(Label(Span(source, between.start(), between.end()), "the other begins here"),),
        why="version control could not join them, and neither is checked until one is chosen",
        help="keep one of the two, or what is right of both, and remove the lines of marks",
    )


def _netlist(source: Source) -> Diagnostic | None:
    """A netlist for a simulator: lines that begin with a dot, lines of elements, and no statement of ours."""
    dot = _DOT_LINE.search(source.text)
    if dot is None or _ELEMENT.search(source.text) is None or _STATEMENT.search(source.text) is not None:
        return None
    return finding(
        Span(source, dot.start(), dot.end()),
        "this is a SPICE netlist and no design",
        name="netlist-given",
        label="a simulator's line",
        help="check the design that it was made from; a simulator runs this file as it is",
    )
