"""A box's own file, read against the circuit of the design that it names.

In: its source, and the only way to what it may name. Out: a `BoxRead`, with all that is wrong in the file. Refuses to
know files, and what a box should read.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from shuntwise.checks.registry import CATALOGUE
from shuntwise.diagnostics.diagnostic import Diagnostic, Severity
from shuntwise.graph.circuit import Circuit, is_group_end
from shuntwise.graph.connect import connect
from shuntwise.model import box_findings as told
from shuntwise.model.box import Box
from shuntwise.model.box_text import Built, read_box_text, read_heads, sweeps_of
from shuntwise.model.design import Design, ImpedanceTable
from shuntwise.model.include import Collected, Loaded, NotLoaded
from shuntwise.model.measured import read_table
from shuntwise.model.resolve import resolve
from shuntwise.model.variants import all_names, in_force, is_known
from shuntwise.pipeline import in_order
from shuntwise.source import Source, Span
from shuntwise.syntax.box_parser import parse_box
from shuntwise.syntax.tree import Text


@dataclass(frozen=True)
class DesignRead:
    """A design that a box names. `key` is one for one file by whatever path; `shown` is how the user knows it."""

    collected: Collected
    said: tuple[Diagnostic, ...]
    key: str
    shown: str


@dataclass(frozen=True)
class BoxRead:
    """A box's own file, as far as it tells. `box` is None where it does not say which box it is, or of no design.

    `design` and `circuit` are those of its variant, as the design states them.
    """

    source: Source
    box: Box | None
    findings: tuple[Diagnostic, ...]
    of: DesignRead | None = None
    design: Design | None = None
    circuit: Circuit | None = None

    @property
    def failed(self) -> bool:
        return any(finding.severity is Severity.ERROR for finding in self.findings)


@dataclass(frozen=True)
class Near:
    """What a box's file may name, by the path as written: its design, tables of sweeps, another box, which is read
    without a third.
    """

    design: Callable[[str], DesignRead | NotLoaded]
    table: Callable[[str], Loaded | NotLoaded]
    sister: Callable[[str], BoxRead | NotLoaded]


def read_text(source: Source, near: Near, *, of: str | None = None, with_sister: bool = True) -> BoxRead:
    """Read a box's own file. With `of`, the key of a design, a box of any other one is a finding.

    Of what is wrong with the design only the number of errors is said, by the passes that the box needs.
    """
    tree, form = parse_box(source)
    heads = read_heads(tree)
    said = [*form, *heads.findings]
    if heads.box is None:
        return BoxRead(source, None, in_order(said))
    path, at = heads.box.design.value, heads.box.design.span
    found = near.design(path)
    if isinstance(found, NotLoaded):
        return BoxRead(source, None, in_order([*said, told.design_missing(at, path, found.reason, found.help)]))
    if of is not None and found.key != of:
        return BoxRead(source, None, in_order([*said, told.design_other(at, path)]), found)
    itself, _ = resolve(found.collected, catalogue=CATALOGUE)
    variant = heads.variant.name if heads.variant is not None else None
    if variant is not None and not is_known(itself, variant.text):
        said.append(told.variant_unknown(variant.span, variant.text, all_names(itself)))
        return BoxRead(source, None, in_order(said), found)
    design, resolved = resolve(found.collected, variant=variant.text if variant else None, catalogue=CATALOGUE)
    circuit, connected = connect(design)
    errors = [one for one in (*found.said, *resolved, *connected) if one.severity is Severity.ERROR]
    if errors:
        said.append(told.design_unsound(at, found.shown, len(errors)))
    tables: dict[Span, ImpedanceTable] = {}
    for line in sweeps_of(tree):
        swept = near.table(line.path.value)
        if isinstance(swept, NotLoaded):
            said.append(told.sweep_not_read(line.path.span, line.path.value, swept.reason, swept.help))
            continue
        table, wrong = read_table(swept.source)
        said += wrong
        if table is not None:
            tables[line.path.span] = table
    sister = None
    if heads.beside is not None and with_sister:
        sister, unfit = _sister(heads.beside.path, near, found, design)
        said += unfit
    box, read = read_box_text(tree, heads, _built(circuit), tables, sister)
    return BoxRead(source, box, in_order([*said, *read]), found, design, circuit)


def _sister(path: Text, near: Near, of: DesignRead, design: Design) -> tuple[Box | None, tuple[Diagnostic, ...]]:
    """The box whose readings are the yardstick: one of the same design and variant, whose file is sound.

    Variants are one if the same is built, in whatever order their names are joined, and whether or not a position that
    holds anyway is named.
    """
    found, name = near.sister(path.value), f"`{path.value}`"
    if isinstance(found, NotLoaded):
        return None, (told.sister_unfit(path.span, f"the box {name} is not read: {found.reason}", found.help),)
    if found.failed or found.box is None or found.of is None:
        count = sum(1 for one in found.findings if one.severity is Severity.ERROR)
        help_text = f"run `shuntwise check {found.source.name}`"
        return None, (told.sister_unfit(path.span, f"the box {name} has {count} error{'s' * (count != 1)}", help_text),)
    if found.of.key != of.key:
        return None, (told.sister_unfit(path.span, f"the box {name} is of another design", "name one of this design"),)
    if found.design is None or in_force(found.design) != in_force(design):
        words = f"`{found.box.variant}`" if found.box.variant else "no variant"
        return None, (told.sister_unfit(path.span, f"the box {name} is of another variant ({words})",
                                        "name one of the same variant"),)  # fmt: skip
    return found.box, ()


def _built(circuit: Circuit) -> Built:
    """What a box's text may name."""
    design = circuit.design
    inputs = tuple(pair.name for pair in design.feeds)
    drivers = tuple(dict.fromkeys(driver.coil_of or driver.name for driver in design.drivers.values()))
    return Built(
        points=frozenset(point for point in circuit.net_of if not is_group_end(point)),
        pairs=(*design.drivers, *(pair.name for pair in design.terminals)),
        drivers=drivers,
        inputs=inputs,
        parts=design.parts,
        instruments=design.instruments,
        doubtful=design.doubtful,
    )
