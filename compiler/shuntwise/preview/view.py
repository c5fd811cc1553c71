"""What a preview shows of a design: the findings as text, and pictures; made anew after each change.

In: a workspace. Out: `View`s, one after the other: first the findings and what is drawn of the wiring, then what
must be solved. While the text is broken the last good pictures stay, and are told to be old. Refuses to know who looks.
"""

from __future__ import annotations

import os
import time
from collections.abc import Callable, Iterator, Mapping
from contextlib import suppress
from dataclasses import dataclass, field, replace
from functools import partial
from typing import NoReturn

from shuntwise.diagnostics.text import render_text
from shuntwise.documents.catalogue import DOCUMENTS
from shuntwise.documents.page import USUAL, Printing
from shuntwise.loading import Unreadable
from shuntwise.network.network import Network
from shuntwise.preview.changes import AGAIN_S, EVERY_S, Stamp, stamps
from shuntwise.response.pivoted import SingularNetwork
from shuntwise.workspace import Workspace

WIDTH = 100

QUICK = tuple(document.name for document in DOCUMENTS if document.name.endswith(".svg") and document.needs == "circuit")
SOLVED = tuple(
    document.name for document in DOCUMENTS if document.name.endswith(".svg") and document.needs == "network"
)


@dataclass(frozen=True)
class View:
    """`number` counts what has been shown, `pictures` are SVG files by their name, `old` those of an earlier text."""

    number: int = 0
    title: str = ""
    findings: str = ""
    pictures: Mapping[str, bytes] = field(default_factory=dict)
    old: frozenset[str] = frozenset()


def follow(work: Workspace, variant: str | None, show: Callable[[View], None], printing: Printing = USUAL) -> NoReturn:
    """Show views of a design after each change of its files, until something is raised, such as KeyboardInterrupt."""
    view, seen, looked_s = View(), dict[str, Stamp | None](), 0.0
    while True:
        found = _stamps(work)
        anew = bool(work.said) and time.monotonic() > looked_s + AGAIN_S
        if anew:
            looked_s = time.monotonic()
        if found == seen and not (anew and _reads_otherwise(work)):
            time.sleep(EVERY_S)
            continue
        for shown in views(work, view, variant, partial(_differ, work, found), printing):
            show(view := shown)
        # Files that it includes now were read in the meantime; those that have changed since are seen next time.
        seen = {path: found.get(path, stamp) for path, stamp in _stamps(work).items()}


def _reads_otherwise(work: Workspace) -> bool:
    """Is there more to read, or less, than before?"""
    before = work.said, len(work.files)
    with suppress(Unreadable):  # told by the next view
        work.read_again()
    return (work.said, len(work.files)) != before


def _stamps(work: Workspace) -> dict[str, Stamp | None]:
    return stamps(os.path.realpath(source.file or work.path) for source in work.files)


def _differ(work: Workspace, found: Mapping[str, Stamp | None]) -> bool:
    """Has anything changed that was there?"""
    return any(stamp != found.get(path, stamp) for path, stamp in _stamps(work).items())


def views(
    work: Workspace,
    last: View,
    variant: str | None = None,
    newer: Callable[[], bool] = bool,
    printing: Printing = USUAL,
) -> Iterator[View]:
    """The next one or two views; none is begun once there is a `newer` text. Raises nothing for bad designs."""
    try:
        work.read_again()
    except Unreadable as error:
        said = f"{error}\n  {error.help}\n" if error.help else f"{error}\n"
        yield replace(last, number=last.number + 1, findings=said, old=frozenset(last.pictures))
        return
    if variant is not None and not work.has(variant):
        said = f"the design has no variant called `{variant}` now\n"
        yield replace(last, number=last.number + 1, findings=said, old=frozenset(last.pictures))
        return
    material = work.material(None, variant, printing=printing)
    findings = render_text(material.findings, material.not_checked, width=WIDTH) or "nothing found\n"
    sound = isinstance(material.lowered, Network)
    documents = {document.name: document for document in DOCUMENTS}
    broken = material.design.lost_wiring or material.design.unread
    fresh = {name: documents[name].content(material) for name in QUICK if not (broken and name in last.pictures)}
    pictures = {**last.pictures, **fresh}
    first = View(last.number + 1, material.title, findings, pictures, frozenset(pictures.keys() - fresh.keys()))
    yield first
    if newer() or not sound:
        return
    try:
        solved = {name: documents[name].content(material) for name in SOLVED}
    except SingularNetwork:
        return
    yield View(first.number + 1, first.title, findings, {**pictures, **solved}, first.old - frozenset(SOLVED))
