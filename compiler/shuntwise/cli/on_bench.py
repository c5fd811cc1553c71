"""What `shuntwise bench` is about: a design, or one box of it, with what its boards read.

In: options. Out: a `Subject`. Refuses to print anything but findings.
"""

from __future__ import annotations

import argparse
from dataclasses import dataclass
from typing import TYPE_CHECKING

from shuntwise.cli.main import Faulty
from shuntwise.cli.reading import name_of_box, open_design, refusing, require_network, show
from shuntwise.documents.page import Printing
from shuntwise.loading import read_box
from shuntwise.model.box import Box, Taken
from shuntwise.model.instruments import Instruments
from shuntwise.pipeline import Compilation

if TYPE_CHECKING:
    from shuntwise.bench.bench import Bench
    from shuntwise.bench.verdict import SheetLine
    from shuntwise.documents.material import Material

SOUND = ("passed", "good so far")
"""Outcomes of a board of which nothing is known to be wrong."""


@dataclass(frozen=True)
class Subject:
    """A design on the bench, or one box of it."""

    compilation: Compilation
    material: Material
    instruments: Instruments
    box: Box | None
    bench: Bench

    @property
    def title(self) -> str:
        from shuntwise.documents.summary import variant_told

        box = [f"box {self.box.name}"] if self.box is not None else []
        return ", ".join((self.material.title, *box, *variant_told(self.compilation.design)))

    @property
    def inputs(self) -> int:
        return len(self.compilation.design.feeds)


def of(options: argparse.Namespace) -> Subject | None:
    """What the options name, None where the design has errors in its text or wiring, which have been shown.

    Raises Refused, and Faulty for a box's file with errors.
    """
    options.box, tried = options.readings, options.settings
    work = open_design(options)
    # What was measured of the box goes to the bench as such: its sheet is that of the design as stated.
    compilation = work.compilation(options.variant, tried)
    if not require_network(compilation):
        return None
    box = box_of(options)
    printing = Printing(options.paper, box=name_of_box(options))
    material = work.material(None, options.variant, tried, printing=printing)
    instruments = box.instruments if box is not None else compilation.design.instruments
    from shuntwise.bench.bench import Bench

    measured = {label: (quantity.value, share) for label, (quantity, share) in box.measured.items()} if box else {}
    sister = box.yardstick.taken if box is not None and box.yardstick is not None else ()
    bench = Bench(compilation.circuit, instruments, measured, beside=sister)
    return Subject(compilation, material, instruments, box, bench)


def box_of(options: argparse.Namespace) -> Box | None:
    """The box whose file the options name, as it stands now. Raises Faulty where it has errors."""
    if options.readings is None:
        return None
    with refusing():
        found = read_box(options.readings, of=options.file)
    if found.failed or found.box is None:
        show(found.findings)
        raise Faulty
    return found.box


def read(box: Box | None) -> tuple[Taken, ...]:
    """The readings of a box; of a sweep as many of its points as the bench takes."""
    from shuntwise.bench.sweeps import thinned

    return thinned(box.taken) if box is not None else ()


def should_be(bench: Bench, taken: tuple[Taken, ...]) -> tuple[SheetLine, ...]:
    """What readings should be."""
    return tuple(bench.line(one.reading) for one in taken)
