"""Whether what the author says of a driver makes one sound model: complete, and told once.

In: the typed attributes of a driver, the keys that were written, the place of its measured table. Out:
findings, and whether a model was described that cannot be used. Refuses to know how a model is solved.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping
from math import pi, sqrt

from shuntwise import units as u
from shuntwise.diagnostics.diagnostic import Diagnostic, Label
from shuntwise.model import findings
from shuntwise.model.design import Quantity
from shuntwise.source import Span

COILS: dict[str, tuple[str, ...]] = {
    "the inductance le": ("le",),
    "a semi-inductance": ("semi_k", "semi_n"),
    "the power laws of the coil": ("r_factor", "r_exponent", "x_factor", "x_exponent"),
}
"""Ways to tell the voice coil beyond its resistance: one of them, with all of its keys."""

MOTION = ("fs", "qms", "qes", "qts")
MOTIONAL = ("res", "les", "ces")
"""Instead of these four the motional impedance may be told: a resistance, a coil and a capacitor in parallel."""

BOX = ("alpha", "fb", "ql")
MODEL = (*(key for keys in COILS.values() for key in keys), *MOTION, *MOTIONAL, *BOX)

MOTIONS = {"the resonance by fs and Q": MOTION, "the motional impedance": MOTIONAL}
"""Ways to tell the resonance: one of them."""

_BESIDE_TABLE = ("fs",)
"""What checks want to know and a table does not say outright; everything else of a model it says itself."""


def check_driver(
    name: str, quantities: Mapping[str, Quantity], written: Collection[str], measured: Span | None
) -> tuple[tuple[Diagnostic, ...], bool]:
    """Findings on the model of `name`, and whether there is a model that cannot be used.

    `written` are all keys that the author wrote: of a value that was refused nothing is said again.
    """
    told = [key for key in MODEL if key in quantities]
    for finding in (
        _told_twice(name, quantities, told, measured),
        _incomplete(name, quantities, told, written, measured),
    ):
        if finding is not None:
            return (finding,), True
    if any(key in (*MODEL, "re") and key not in quantities for key in written):
        return (), measured is None
    return _contradicting_qs(name, quantities) if measured is None and "qts" in quantities else ((), False)


def resonance_of(quantities: Mapping[str, Quantity]) -> dict[str, Quantity]:
    """The quantities with fs, qms and qes instead of a motional impedance, where all of that is stated.

    fs = 1/(2 pi sqrt(Les Ces)), Qms = Res sqrt(Ces/Les), Qes = Re sqrt(Ces/Les): R. H. Small, Direct-radiator
    loudspeaker system analysis, J. Audio Eng. Soc. 20(5), 1972, put the other way round.
    """
    if not {"re", *MOTIONAL} <= quantities.keys():
        return dict(quantities)
    res, les, ces = (quantities[key] for key in MOTIONAL)
    admittance = sqrt(ces.value / les.value)
    found = {
        "fs": (1 / (2 * pi * sqrt(les.value * ces.value)), u.HERTZ),
        "qms": (res.value * admittance, u.PLAIN),
        "qes": (quantities["re"].value * admittance, u.PLAIN),
    }
    kept = {key: quantity for key, quantity in quantities.items() if key not in MOTIONAL}
    derived = {key: Quantity(value, unit, les.span, u.write(value, unit, 4)) for key, (value, unit) in found.items()}
    return kept | derived


def _told_twice(
    name: str, quantities: Mapping[str, Quantity], told: list[str], measured: Span | None
) -> Diagnostic | None:
    """Two descriptions of one thing: which of them is right cannot be known."""
    if measured is not None:
        second = next((key for key in told if key not in _BESIDE_TABLE), None)
        first, what, help_text = measured, "the measured table", "keep the table or the parameters, not both"
    else:
        ways = next((ways for ways in (COILS, MOTIONS) if len(_told(ways, told)) > 1), None)
        if ways is None:
            return None
        kinds = _told(ways, told)
        keys = [next(key for key in told if key in ways[what]) for what in kinds]
        first, second = quantities[keys[0]].span, keys[1]
        what, help_text = kinds[0], "keep the one that fits the measurement better"
    if second is None:
        return None
    return findings.error(
        "driver-model-twice",
        quantities[second].span,
        f"the impedance of `{name}` is told twice: `{second}` beside {what}",
        label="told again",
        places=(Label(first, "told here"),),
        why="only one of the two can be solved, and the other would be passed over in silence",
        help=help_text,
        subjects=(name,),
    )


def _told(ways: Mapping[str, tuple[str, ...]], told: Collection[str]) -> list[str]:
    """The ways in which a thing is told."""
    return [what for what, keys in ways.items() if not set(keys).isdisjoint(told)]


def _incomplete(
    name: str, quantities: Mapping[str, Quantity], told: list[str], written: Collection[str], measured: Span | None
) -> Diagnostic | None:
    if measured is not None or not told:
        return None
    known = {*quantities, *written}
    lacking = [(key, why) for key, why in _needed(known) if key not in known]
    if not lacking:
        return None
    missing = list(dict.fromkeys(key for key, _ in lacking))
    return findings.error(
        "driver-model-incomplete",
        quantities[told[0]].span,
        f"the model of `{name}` lacks {' and '.join(missing)}",
        label="given here",
        why=lacking[0][1],
        help=f"add what is missing, or take {' and '.join(f'`{key}`' for key in told)} out to solve it as a resistance",
        subjects=(name,),
    )


def _needed(known: set[str]) -> Iterator[tuple[str, str]]:
    """Keys that what is known asks for, each with the reason."""
    for what, keys in COILS.items():
        if not known.isdisjoint(keys):
            for key in ("re", *keys):
                yield key, f"{what} is told by {', '.join(('re', *keys))}"
    if not known.isdisjoint(MOTIONAL):
        for key in ("re", *MOTIONAL):
            yield key, f"a motional impedance is told by {', '.join(('re', *MOTIONAL))}"
    elif not known.isdisjoint((*MOTION, *BOX)):
        why = "a resonance is told by re, fs and two of qms, qes, qts"
        yield "re", why
        yield "fs", why
        lacking = 2 - len(known & {"qms", "qes", "qts"})
        for key in [key for key in ("qms", "qes") if key not in known][: max(0, lacking)]:
            yield key, why
    if not known.isdisjoint(BOX):
        yield "alpha", "a sealed box is told by alpha, a vented one by alpha and fb"
    if "ql" in known:
        yield "fb", "a leakage Q belongs to a vented box, told by alpha and fb"


def _contradicting_qs(name: str, quantities: Mapping[str, Quantity]) -> tuple[tuple[Diagnostic, ...], bool]:
    """1/qts = 1/qms + 1/qes: impossible values make no model; values 5 % apart are a finding."""
    qts = quantities["qts"]
    others = [quantities[q] for q in ("qms", "qes") if q in quantities]
    if any(other.value <= qts.value for other in others):
        headline, label = f"the total Q of `{name}` is not below its parts", ""
        help_text, unusable = "check the three values", True
    else:
        expected = 1 / sum(1 / other.value for other in others)
        if len(others) < 2 or abs(expected / qts.value - 1) <= 0.05:
            return (), False
        headline, label = f"the three Q's of `{name}` contradict each other", f"qms and qes give {expected:.3g}"
        help_text, unusable = "remove the one that is least certain", False
    finding = findings.error(
        "driver-model-incomplete",
        qts.span,
        headline,
        label=label,
        why="1/qts = 1/qms + 1/qes",
        help=help_text,
        subjects=(name,),
    )
    return (finding,), unusable
