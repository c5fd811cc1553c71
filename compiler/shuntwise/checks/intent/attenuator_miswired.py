"""An attenuator that cannot do what it is for.

What it finds: an attenuator in the path to a driver of which the common is wired to nothing, which is turned round (an
error each), or which is made for another load than the drivers behind it have, by more than a third (a warning;
`limit attenuator-miswired 50 %` allows more).

Why it matters: without its common it is a resistor in series. Turned round it shorts the filter at its shut end. With
another load its knob moves the crossover as well as the level.

Bad:
    driver tweeter 8 ohm
    capacitor C1 4.7 uF
    attenuator A1 8 ohm { loss 3 dB }
    leg tweeter {
      input+ -- C1 -- A1.out
                      ^^^^^^
      A1.in -- tweeter+
      A1.common -- return
      tweeter- -- return
    }

Good:
    driver tweeter 8 ohm
    capacitor C1 4.7 uF
    attenuator A1 8 ohm { loss 3 dB }
    leg tweeter {
      input+ -- C1 -- A1 -- tweeter+
      A1.common -- return
      tweeter- -- return
    }

When to ignore it: with a load of another size, where a resistor across the driver is still to come.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Bound, Diagnostic, Rule, Severity
from shuntwise.graph.circuit import point_of
from shuntwise.model.design import Part
from shuntwise.model.kinds import ATTENUATOR
from shuntwise.structure.attenuators import load_ohm
from shuntwise.structure.ladders import Ladder, Step
from shuntwise.units import OHM, PLAIN, write

OFF = 1 / 3


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    told: set[str] = set()
    for ladder in evidence.structure.ladders.values():
        for step in ladder.steps:
            for _, label in step.block.ones:
                part = evidence.design.parts.get(label)
                if part is not None and part.kind == ATTENUATOR.word and label not in told:
                    told.add(label)
                    yield from _judged(evidence, ladder, step, part)


def _judged(evidence: Evidence, ladder: Ladder, step: Step, part: Part) -> Iterator[Diagnostic]:
    circuit, label = evidence.circuit, part.label
    common = circuit.nets[circuit.net_of[point_of(label, "common")]]
    load = load_ohm(evidence.design, ladder)
    if circuit.net_of[point_of(label, "in")] == step.far:
        yield RULE.finding(
            evidence.place(point_of(label, "out")),
            f"`{label}` is turned round",
            label="the output stands toward the amplifier",
            why="at its shut end it shorts what is ahead of it",
            help=f"walk through it along the signal: `-- {label} --`, or exchange `{label}.in` and `{label}.out`",
            subjects=(label,),
        )
    elif len(common.attachments) < 2:
        yield RULE.finding(
            evidence.place(label),
            f"nothing is wired to the common of `{label}`",
            label="a resistor in series, and no more",
            why="the load of the filter changes with the knob, and the level hardly goes down",
            help=f"wire it: `{label}.common -- return`",
            subjects=(label,),
        )
    elif part.value is not None and load is not None and abs(load / part.value.value - 1) > RULE.limit(evidence):
        yield RULE.finding(
            part.value.span,
            f"`{label}` is made for {write(part.value.value, OHM)}, and {write(load, OHM, 2)} are behind it",
            severity=Severity.WARNING,
            label="another load",
            why="its knob moves the crossover as well as the level",
            help="fit one for this load, or bring the load to it by a resistor",
            subjects=(label,),
        )


RULE = Rule("attenuator-miswired", Severity.ERROR, "structure", check, Bound(OFF, PLAIN))
