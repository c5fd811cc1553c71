"""Values with units: what can be typed, what it means in SI, and how to write it back.

A dimension is a tuple of exponents over volt, ampere, second, metre, gram, decibel, octave, degree of
angle; everything that a value needs is a product of these. Refuses to know where a value stands.
"""

from __future__ import annotations

import re
from dataclasses import dataclass

Dimension = tuple[float, ...]

# Exponents over (V, A, s, m, g, dB, octave, degree).
PLAIN: Dimension = (0, 0, 0, 0, 0, 0, 0, 0)
VOLT: Dimension = (1, 0, 0, 0, 0, 0, 0, 0)
AMPERE: Dimension = (0, 1, 0, 0, 0, 0, 0, 0)
SECOND: Dimension = (0, 0, 1, 0, 0, 0, 0, 0)
METRE: Dimension = (0, 0, 0, 1, 0, 0, 0, 0)
GRAM: Dimension = (0, 0, 0, 0, 1, 0, 0, 0)
DECIBEL: Dimension = (0, 0, 0, 0, 0, 1, 0, 0)
OCTAVE: Dimension = (0, 0, 0, 0, 0, 0, 1, 0)
DECIBEL_PER_OCTAVE: Dimension = (0, 0, 0, 0, 0, 1, -1, 0)
OHM: Dimension = (1, -1, 0, 0, 0, 0, 0, 0)
HENRY: Dimension = (1, -1, 1, 0, 0, 0, 0, 0)
FARAD: Dimension = (-1, 1, 1, 0, 0, 0, 0, 0)
WATT: Dimension = (1, 1, 0, 0, 0, 0, 0, 0)
HERTZ: Dimension = (0, 0, -1, 0, 0, 0, 0, 0)
METRE2: Dimension = (0, 0, 0, 2, 0, 0, 0, 0)
DEGREE: Dimension = (0, 0, 0, 0, 0, 0, 0, 1)
AMPERE2_SECOND: Dimension = (0, 2, 1, 0, 0, 0, 0, 0)
TESLA_METRE: Dimension = (1, 0, 1, -1, 0, 0, 0, 0)

NAMES: dict[Dimension, str] = {
    PLAIN: "a plain number",
    VOLT: "a voltage",
    AMPERE: "a current",
    SECOND: "a time",
    METRE: "a length",
    GRAM: "a mass",
    DECIBEL: "a level in dB",
    OCTAVE: "an octave",
    DECIBEL_PER_OCTAVE: "a slope in dB/octave",
    OHM: "a resistance",
    HENRY: "an inductance",
    FARAD: "a capacitance",
    WATT: "a power",
    HERTZ: "a frequency",
    METRE2: "a section",
    DEGREE: "an angle",
    AMPERE2_SECOND: "an I2t value",
    TESLA_METRE: "a force factor",
}

SYMBOLS: dict[Dimension, str] = {
    PLAIN: "",
    VOLT: "V",
    AMPERE: "A",
    SECOND: "s",
    METRE: "m",
    GRAM: "g",
    DECIBEL: "dB",
    OCTAVE: "octave",
    DECIBEL_PER_OCTAVE: "dB/octave",
    OHM: "ohm",
    HENRY: "H",
    FARAD: "F",
    WATT: "W",
    HERTZ: "Hz",
    METRE2: "m2",
    DEGREE: "deg",
    AMPERE2_SECOND: "A2s",
    TESLA_METRE: "Tm",
}

_PREFIXES = {"p": 1e-12, "n": 1e-9, "u": 1e-6, "µ": 1e-6, "μ": 1e-6, "m": 1e-3, "": 1.0, "k": 1e3, "M": 1e6}
_PREFIXED: tuple[tuple[str, Dimension, str], ...] = (
    ("ohm", OHM, "mkM"),
    ("ohms", OHM, "mkM"),
    ("Ω", OHM, "mkM"),
    ("\u2126", OHM, "mkM"),  # the ohm sign, which looks the same
    ("H", HENRY, "nuµμm"),
    ("F", FARAD, "pnuµμm"),
    ("V", VOLT, "mk"),
    ("A", AMPERE, "m"),
    ("W", WATT, "mk"),
    ("Hz", HERTZ, "kM"),
    ("s", SECOND, "uµμm"),
    ("g", GRAM, "k"),
    ("m", METRE, "m"),
)


def _units() -> dict[str, tuple[float, Dimension]]:
    units = {
        prefix + name: (_PREFIXES[prefix], dimension)
        for name, dimension, prefixes in _PREFIXED
        for prefix in ("", *prefixes)
    }
    units["cm"] = (1e-2, METRE)
    units["%"] = (1e-2, PLAIN)
    units["mm2"] = units["mm²"] = (1e-6, METRE2)
    units["A2s"] = units["A²s"] = (1.0, AMPERE2_SECOND)
    units["Tm"] = (1.0, TESLA_METRE)
    units["deg"] = (1.0, DEGREE)
    units["dB"] = (1.0, DECIBEL)
    units["octave"] = units["octaves"] = (1.0, OCTAVE)
    return units


UNITS: dict[str, tuple[float, Dimension]] = _units()
"""Unit word -> (factor to SI, dimension). Mass counts in gram."""

SPOKEN = {
    "mfd": "uF",
    "mcf": "uF",
    "mf": "uF",
    "uh": "uH",
    "mh": "mH",
    "volt": "V",
    "volts": "V",
    "watt": "W",
    "watts": "W",
    "amp": "A",
    "amps": "A",
    "percent": "%",
    "hertz": "Hz",
    "henry": "H",
    "farad": "F",
    "millihenry": "mH",
    "microfarad": "uF",
    "microhenry": "uH",
    "r": "ohm",
    "mms": "mm",
    "degree": "deg",
    "degrees": "deg",
}
"""Words that people write for a unit, in small letters. Old lists have MF and MFD for microfarad (common practice, no
source)."""

_TYPED = tuple(unit for unit in UNITS if "µ" not in unit and "μ" not in unit and unit not in ("octaves", "\u2126"))


def meant_unit(word: str, wanted: Dimension | None = None) -> str | None:
    """The unit that a word surely stands for: itself, `MFD`, `Ohm`, `khz`; None where that is not plain.

    Of units that differ in capitals only, the one of the dimension that is wanted.
    """
    if word in UNITS:
        return word
    alike = [unit for unit in _TYPED if unit.casefold() == word.casefold()]
    if wanted is not None:
        alike = [unit for unit in alike if UNITS[unit][1] == wanted]
    return SPOKEN.get(word.casefold()) or (alike[0] if len(alike) == 1 else None)


def whole_units(prefix: str, *dimensions: Dimension) -> list[str]:
    """The units of these dimensions that a lone prefix may have been meant for: `k` gives `kohm`, `kHz`."""
    if prefix not in _PREFIXES:
        return []
    return [prefix + SYMBOLS[d] for d in dimensions if SYMBOLS.get(d) and prefix + SYMBOLS[d] in UNITS]


_CODE = re.compile(r"([0-9]*)([RKMGLkmunpµμ])([0-9]*)([BCDFGJKM]?)")
_CODE_LETTERS: dict[str, tuple[float, Dimension | None]] = {
    "L": (1e-3, OHM),
    "R": (1.0, OHM),
    "K": (1e3, OHM),
    "k": (1e3, OHM),
    "M": (1e6, OHM),
    "G": (1e9, OHM),
    "p": (1e-12, None),
    "n": (1e-9, None),
    "u": (1e-6, None),
    "µ": (1e-6, None),
    "μ": (1e-6, None),
    "m": (1e-3, None),
}
TOLERANCE_LETTERS = {"B": 0.001, "C": 0.0025, "D": 0.005, "F": 0.01, "G": 0.02, "J": 0.05, "K": 0.10, "M": 0.20}
"""IEC 60062:2016, symmetric tolerance letters that open texts agree on."""


@dataclass(frozen=True)
class CodeValue:
    """What a letter-and-digit code says. `dimension` is None where only the part kind tells (`6u8`)."""

    value: float
    dimension: Dimension | None
    tolerance: float | None


def read_code(text: str) -> CodeValue | None:
    """Decode a value in the letter-and-digit code of IEC 60062 (clause on resistance and capacitance values).

    The letter stands for the decimal point: R ohm, K kilohm, M megohm, G gigohm, L milliohm; p n u m for
    parts of a farad (and, by the trade's habit, of a henry). None if it is no such code.
    """
    match = _CODE.fullmatch(text)
    if match is None or not (match[1] or match[3]) or (match[4] and not match[3]):
        return None
    factor, dimension = _CODE_LETTERS[match[2]]
    # Decimal text first, so that 4R7 is the same number as 4.7.
    value = float(f"{match[1] or '0'}.{match[3] or '0'}e{round(_exponent(factor))}")
    return CodeValue(value, dimension, TOLERANCE_LETTERS.get(match[4]))


def _exponent(factor: float) -> int:
    return int(f"{factor:e}".split("e")[1])


def scale(number: str, factor: float) -> float:
    """`number` times a power of ten, rounded once: 0.82 with 1e-3 is exactly the float 0.00082."""
    if factor in (1e-2, 1.0) or f"{factor:e}".startswith("1.000000e"):
        return float(f"{number}e{_exponent(factor)}") if "e" not in number.lower() else float(number) * factor
    return float(number) * factor


def describe(dimension: Dimension) -> str:
    """The dimension in words: `a resistance`; unusual ones by their base units."""
    if dimension in NAMES:
        return NAMES[dimension]
    bases = ("V", "A", "s", "m", "g", "dB", "octave", "deg")
    return "a value in " + " ".join(f"{b}^{e:g}" for b, e in zip(bases, dimension, strict=True) if e)


COMPOUND: dict[Dimension, tuple[float, str]] = {
    (0, 1, 0, -2, 0, 0, 0, 0): (1e6, "A / (1 mm)^2"),
    (1, 1, 0, 0, -1, 0, 0, 0): (1e-2, "W / 100 g"),
}
"""Values that are typed as a quotient: the factor to SI, and what stands behind the number."""

_STEPS = ((1e9, "G"), (1e6, "M"), (1e3, "k"), (1.0, ""), (1e-3, "m"), (1e-6, "u"), (1e-9, "n"), (1e-12, "p"))


def write(value: float, dimension: Dimension, digits: int = 4) -> str:
    """A value as a person types it: `0.82 mH`, `6.8 uF`, `2.4 kHz`; at most `digits` significant digits."""
    if dimension in COMPOUND:
        factor, formula = COMPOUND[dimension]
        return f"{_plain(value / factor, digits)} {formula}"
    symbol = SYMBOLS.get(dimension, "")
    if dimension in (PLAIN, DECIBEL, DECIBEL_PER_OCTAVE, OCTAVE, DEGREE) or value == 0:
        return f"{value:.{digits}g} {symbol}".rstrip()
    if dimension == HENRY and 1e-5 <= abs(value) < 1:
        return f"{_plain(value * 1e3, digits)} mH"  # the trade counts coils in millihenry
    if dimension == FARAD and 1e-8 <= abs(value) < 1e-2:
        return f"{_plain(value * 1e6, digits)} uF"
    if dimension == METRE:
        return f"{_plain(value * 1e3, digits)} mm"
    rounded = float(f"{value:.{digits}g}")
    known = [(factor, prefix) for factor, prefix in _STEPS if prefix + symbol in UNITS] or [(1.0, "")]
    factor, prefix = next((step for step in known if abs(rounded) >= step[0] * 0.9999999), known[-1])
    if dimension == OHM and factor == 1e-3 and abs(rounded) >= 0.01:
        factor, prefix = 1.0, ""  # a builder says 0.28 ohm
    return f"{_plain(value / factor, digits)} {prefix}{symbol}"


def _plain(number: float, digits: int) -> str:
    """Without an exponent where a person would not write one."""
    text = f"{number:.{digits}g}"
    return f"{float(text):.0f}" if "e+" in text and abs(number) < 1e7 else text


def product(left: Dimension, right: Dimension) -> Dimension:
    return tuple(a + b for a, b in zip(left, right, strict=True))


def quotient(left: Dimension, right: Dimension) -> Dimension:
    return tuple(a - b for a, b in zip(left, right, strict=True))


def raised(base: Dimension, exponent: float) -> Dimension:
    return tuple(a * exponent for a in base)
