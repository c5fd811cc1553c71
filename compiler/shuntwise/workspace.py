"""A design as one works on it: text in, everything that is made of it out, each thing worked out once.

In: a design file, perhaps with texts that are not saved yet, or a text alone. Out: compilations by variant and tried
values, and what documents are made from. The command line, the scripts' interface, a preview and an editor stand on it.
It refuses to know options, screens and exit statuses.
"""

from __future__ import annotations

import os
from collections.abc import Mapping, Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from shuntwise.diagnostics.diagnostic import Diagnostic
from shuntwise.documents.mark import design_mark
from shuntwise.documents.material import Material
from shuntwise.documents.page import USUAL, Printing
from shuntwise.loading import read_design
from shuntwise.model.design import Design
from shuntwise.model.include import Collected
from shuntwise.model.resolve import resolve
from shuntwise.model.variants import all_names, is_known
from shuntwise.network.sweep import Sweep
from shuntwise.pipeline import Compilation, compile_all, compile_include, compile_variant, read
from shuntwise.settings import read_settings
from shuntwise.source import Source

if TYPE_CHECKING:
    from shuntwise.documents.plots import Below

Settings = tuple[str, ...]
"""Tried values as they are typed, such as "L1=0.75mH"."""


class Workspace:
    """One design. What has been worked out is kept as long as no text changes that it was made from.

    Raises Unreadable where the file gives no text, SettingUnclear for tried values that cannot be read, and KeyError
    for a variant that the design does not have. Mistakes in the design are findings, no exceptions.
    """

    def __init__(
        self, path: str, texts: Mapping[str, str] | None = None, *, causes: bool = True, on_boards: bool = True
    ) -> None:
        """`texts` are taken instead of what the files hold that they are named after.

        Without `causes` no slip is looked for that would explain what is found, which may take a second. Without
        `on_boards` layouts are passed over where the design is solved.
        """
        self.path, self._causes, self._on_boards = path, causes, on_boards
        self._texts = {os.path.realpath(name): text for name, text in (texts or {}).items()}
        self._take(*read_design(path, self._texts))

    @classmethod
    def of_text(cls, text: str, name: str = "design") -> Workspace:
        """A design given as a text, which includes no files."""
        made = cls.__new__(cls)
        made.path, made._texts, made._causes, made._on_boards = name, {}, True, True
        made._take(*read(Source(name, text)))
        return made

    def edit(self, path: str, text: str | None) -> None:
        """Take another text for a file of the design; None takes again what the file holds."""
        real = os.path.realpath(path)
        if text is None:
            self._texts.pop(real, None)
        else:
            self._texts[real] = text
        self.read_again()

    def read_again(self) -> None:
        """Read the files anew; everything is kept if none of them has changed, nor why one is not read."""
        collected, said = read_design(self.path, self._texts)
        now, before = (_texts_of(collected), _told(said)), (_texts_of(self.collected), _told(self.said))
        if now != before:
            self._take(collected, said)

    def _take(self, collected: Collected, said: Sequence[Diagnostic]) -> None:
        self.collected, self.said = collected, tuple(said)
        self._compiled: dict[tuple[str | None, Settings], Compilation] = {}
        self._all: tuple[Compilation, ...] | None = None
        self._itself: Design | None = None
        self._materials: dict[tuple[str | None, Settings, Sweep, tuple[Below, ...], Printing], Material] = {}

    @property
    def files(self) -> tuple[Source, ...]:
        """The texts that were read: the design's, those that it includes, its tables."""
        return (*self.collected.sources, *dict.fromkeys(self.collected.attached.values()))

    @property
    def variants(self) -> tuple[str, ...]:
        """The names of all that can be had of the design: variants, positions of choices, ends of attenuators."""
        return all_names(self._design)

    def has(self, variant: str) -> bool:
        """Can this be had: a variant, a position, an end of an attenuator, or several joined by `+`?"""
        return is_known(self._design, variant)

    @property
    def _design(self) -> Design:
        """The design itself, as far as its text tells."""
        if self._itself is None:
            self._itself, _ = resolve(self.collected)
        return self._itself

    def compilation(self, variant: str | None = None, settings: Sequence[str] = ()) -> Compilation:
        """The design, or one variant of it, through all passes and checks."""
        key = (variant, tuple(settings))
        if key not in self._compiled:
            tried = read_settings(settings)
            if variant is not None and not self.has(variant):
                raise KeyError(variant)
            self._compiled[key] = compile_variant(
                self.collected,
                self.said,
                variant=variant,
                settings=tried,
                causes=self._causes,
                on_boards=self._on_boards,
            )
        return self._compiled[key]

    @property
    def compilations(self) -> tuple[Compilation, ...]:
        """The design and each of its variants; what the design itself has is not said again of a variant."""
        if self._all is None:
            self._all = compile_all(self.collected, self.said, causes=self._causes)
        return self._all

    @property
    def as_include(self) -> Compilation:
        """The file as one that designs include, checked by itself."""
        return compile_include(self.collected, self.said)

    @property
    def _passed_over(self) -> tuple[str, ...]:
        """What marks documents of a design whose layouts are passed over."""
        return () if self._on_boards or not self._design.layouts else ("without layout",)

    def material(
        self,
        sweep: Sweep | None = None,
        variant: str | None = None,
        settings: Sequence[str] = (),
        below: Sequence[Below] = (),
        printing: Printing = USUAL,
    ) -> Material:
        """What documents are made from, solved where a document asks for it; `below` is what the plot of levels has
        below them, `printing` how the binder is wanted.
        """
        key = (variant, tuple(settings), sweep or Sweep(), tuple(below), printing)
        if key not in self._materials:
            made = self.compilation(variant, settings)
            self._materials[key] = Material(
                design=made.design,
                circuit=made.circuit,
                lowered=made.lowered,
                sweep=sweep or Sweep(),
                stem=Path(self.path).stem,
                mark=design_mark([*made.texts, variant or "", *settings, *self._passed_over, *of_box(printing.box)]),
                findings=made.findings,
                not_checked=made.not_checked,
                waived=made.waived,
                below=tuple(below),
                printing=printing,
                itself=self._design if variant or settings else None,
            )
        return self._materials[key]


def of_box(name: str) -> tuple[str, ...]:
    """What marks documents of one box."""
    return (f"box {name}",) if name else ()


def _texts_of(collected: Collected) -> list[tuple[str, str]]:
    """The names and texts of everything that a design was read from, its tables by the names that it gives them."""
    texts = [(source.name, source.text) for source in collected.sources]
    return texts + [(name, source.text) for (_, name), source in collected.attached.items()]


def _told(said: Sequence[Diagnostic]) -> list[tuple[str, int, str, str]]:
    """What was said of the texts, and where."""
    return [(finding.span.source.name, finding.span.start, finding.headline, finding.help) for finding in said]
