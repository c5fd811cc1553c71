"""Values: numbers with units, codes as printed on parts, arithmetic (LANGUAGE.md, "Values")."""

from __future__ import annotations

import math
import re
from collections.abc import Callable
from dataclasses import dataclass

from lowering.reading import Expr

# What a value measures: the powers of volt, ampere, second, metre, gram, decibel, octave.
Kind = tuple[float, ...]
PLAIN: Kind = (0, 0, 0, 0, 0, 0, 0)
VOLT: Kind = (1, 0, 0, 0, 0, 0, 0)
AMPERE: Kind = (0, 1, 0, 0, 0, 0, 0)
SECOND: Kind = (0, 0, 1, 0, 0, 0, 0)
OHM: Kind = (1, -1, 0, 0, 0, 0, 0)
HENRY: Kind = (1, -1, 1, 0, 0, 0, 0)
FARAD: Kind = (-1, 1, 1, 0, 0, 0, 0)
WATT: Kind = (1, 1, 0, 0, 0, 0, 0)
HERTZ: Kind = (0, 0, -1, 0, 0, 0, 0)
DECIBEL: Kind = (0, 0, 0, 0, 0, 1, 0)
OCTAVE: Kind = (0, 0, 0, 0, 0, 0, 1)

PREFIXES = {"p": 1e-12, "n": 1e-9, "u": 1e-6, "µ": 1e-6, "μ": 1e-6, "m": 1e-3, "k": 1e3, "M": 1e6}
PREFIXED = {
    "ohm": (OHM, "mkM"),
    "Ω": (OHM, "mkM"),
    "\u2126": (OHM, "mkM"),
    "H": (HENRY, "muµμn"),
    "F": (FARAD, "muµμnp"),
    "V": (VOLT, "mk"),
    "A": (AMPERE, "m"),
    "W": (WATT, "mk"),
    "Hz": (HERTZ, "kM"),
    "s": (SECOND, "muµμ"),
}
UNITS: dict[str, tuple[float, Kind]] = {unit: (1.0, kind) for unit, (kind, _) in PREFIXED.items()}
UNITS |= {p + unit: (PREFIXES[p], kind) for unit, (kind, prefixes) in PREFIXED.items() for p in prefixes}
UNITS |= {
    "ohms": (1.0, OHM),
    "m": (1.0, (0, 0, 0, 1, 0, 0, 0)),
    "cm": (1e-2, (0, 0, 0, 1, 0, 0, 0)),
    "mm2": (1e-6, (0, 0, 0, 2, 0, 0, 0)),
    "mm": (1e-3, (0, 0, 0, 1, 0, 0, 0)),
    "g": (1.0, (0, 0, 0, 0, 1, 0, 0)),
    "kg": (1e3, (0, 0, 0, 0, 1, 0, 0)),
    "dB": (1.0, (0, 0, 0, 0, 0, 1, 0)),
    "%": (1e-2, PLAIN),
}

# The letter in the place of the point, for what it may stand on.
LETTERS: dict[Kind, dict[str, float]] = {
    OHM: {"L": 1e-3, "R": 1.0, "K": 1e3, "k": 1e3, "M": 1e6, "G": 1e9},
    FARAD: {"p": 1e-12, "n": 1e-9, "u": 1e-6, "µ": 1e-6, "μ": 1e-6, "m": 1e-3},
    HENRY: {"u": 1e-6, "µ": 1e-6, "μ": 1e-6, "m": 1e-3},
}
CODE = re.compile(r"(\d*)([RKMGLkmunpµμ])(\d*)([BCDFGJKM]?)")


class Senseless(Exception):
    """A value that the reference gives no meaning."""


@dataclass(frozen=True)
class Quantity:
    number: float
    kind: Kind = PLAIN


Names = Callable[[str], Quantity | None]


def no_names(_: str) -> Quantity | None:
    return None


def evaluate(expr: Expr, names: Names = no_names, wanted: Kind | None = None) -> Quantity:
    """What an expression comes to. `wanted` is what a code by itself, such as 6u8 for a capacitor, is read for."""
    head = expr[0]
    if head == "number":
        factor, kind = (1.0, PLAIN) if expr[2] is None else _unit(expr[2])
        return Quantity(expr[1] * factor, kind)
    if head == "code":
        return _code(expr[1], wanted)
    if head == "name":
        return _named(expr[1], names, wanted)
    parts = [evaluate(inner, names) for inner in expr[1:]]
    if len(parts) == 1:
        return Quantity(-parts[0].number, parts[0].kind)
    left, right = parts
    if head in "+-":
        if left.kind != right.kind:
            raise Senseless(f"{left} {head} {right}")
        return Quantity(left.number + right.number if head == "+" else left.number - right.number, left.kind)
    if head == "*":
        return Quantity(left.number * right.number, _kind(a + b for a, b in zip(left.kind, right.kind, strict=True)))
    if head == "/":
        return Quantity(left.number / right.number, _kind(a - b for a, b in zip(left.kind, right.kind, strict=True)))
    if right.kind != PLAIN:
        raise Senseless(f"{left} to the power of {right}")
    return Quantity(left.number**right.number, _kind(a * right.number for a in left.kind))


def number(expr: Expr, wanted: Kind, names: Names = no_names) -> float:
    """What an expression comes to, as a number of the wanted kind in SI units."""
    quantity = evaluate(expr, names, wanted)
    if quantity.kind != wanted:
        raise Senseless(f"{quantity} is not of the kind {wanted}")
    return quantity.number


def _kind(powers: object) -> Kind:
    return tuple(round(power, 9) for power in powers)  # type: ignore[attr-defined]


def _unit(word: str) -> tuple[float, Kind]:
    if word not in UNITS:
        raise Senseless(f"no unit {word}")
    return UNITS[word]


def _named(name: str, names: Names, wanted: Kind | None) -> Quantity:
    known = names(name)
    if known is not None:
        return known
    if name == "pi":
        return Quantity(math.pi)
    if name == "octave":
        return Quantity(1.0, OCTAVE)
    if wanted in LETTERS and CODE.fullmatch(name):
        return _code(name, wanted)
    raise Senseless(f"no value is called {name}")


def _code(code: str, wanted: Kind | None) -> Quantity:
    found = CODE.fullmatch(code)
    assert found is not None
    before, letter, behind, tolerance = found.groups()
    if tolerance and not behind:  # a tolerance stands behind a digit only
        raise Senseless(f"no code: {code}")
    kinds = [wanted] if wanted in LETTERS else [OHM]  # elsewhere only what its letter says by itself
    for kind in kinds:
        if letter in LETTERS[kind]:
            return Quantity(float(f"{before or 0}.{behind or 0}") * LETTERS[kind][letter], kind)
    raise Senseless(f"{code} could be of several kinds")
