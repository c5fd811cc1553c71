"""What is printed of a design's figures, read back from the printed text as `expect` lines."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from itertools import product
from math import floor, log10

SIZES = {"mHz": 1e-3, "Hz": 1.0, "kHz": 1e3, "MHz": 1e6, "mohm": 1e-3, "ohm": 1.0, "kohm": 1e3, "Mohm": 1e6}
FREQUENCY = r"([\d.]+) ([mkM]?Hz)"
LEVEL = r"([+-]?[\d.]+) dB"
DIGITS = 3


@dataclass(frozen=True)
class Line:
    """An `expect` line of a printed number, and the same with the number moved by three units of its last digit."""

    text: str
    moved: str


def unit_of(number: float) -> float:
    """One unit of the last of the digits with which a positive number is printed."""
    return 10.0 ** (floor(log10(number)) - DIGITS + 1)


def at_frequency(what: str, number: str, unit: str) -> Line:
    hertz = float(number) * SIZES[unit]
    step = unit_of(hertz)
    forms = [f"expect {what} at {value!r} Hz within {100 * step / value!r} %" for value in (hertz, hertz + 3 * step)]
    return Line(*forms)


def level(driver: str, number: str, at: str, step: float = 0.1) -> Line:
    value = float(number)
    forms = [f"expect level of {driver} {v:.3f} dB at {at} within {step} dB" for v in (value, value + 3 * step)]
    return Line(*forms)


def slope(driver: str, number: str, span: str, step: float = 0.1) -> Line:
    value = float(number)
    forms = [
        f"expect slope of {driver} {v:.3f} dB/octave {span} within {step} dB/octave" for v in (value, value + 3 * step)
    ]
    return Line(*forms)


def least(feed: str, number: str, unit: str, several: bool, span: str = "") -> Line:
    ohms = float(number) * SIZES[unit]
    step = unit_of(ohms)
    whose = f" of {feed}" if several else ""
    return Line(*(f"expect impedance{whose} above {v!r} ohm{span}" for v in (ohms - step, ohms + step)))


def blocks(summary: str) -> dict[str, list[str]]:
    """The blocks of a summary by the first word of their heading."""
    found = {}
    for block in summary.split("\n\n"):
        head, *rest = block.splitlines()
        found[head.split()[0].rstrip(":")] = rest
    return found


def of_summary(summary: str) -> Iterator[Line]:
    """Every level, corner, slope, crossing and least impedance of a summary."""
    found = blocks(summary)
    for row in found["Drivers"]:
        name, *cells = re.split(r"  +", row.strip())
        for cell in cells[:2]:
            if match := re.fullmatch(rf"{LEVEL} at (.*)", cell):
                yield level(name, match[1], match[2])
        for down, cell in zip(("-3 dB", "-6 dB"), cells[2:], strict=False):
            for number, unit in re.findall(FREQUENCY, cell):
                yield at_frequency(f"corner of {name} {down}", number, unit)
    for row in found.get("Slopes", []):
        match = re.fullmatch(r"  (\S+) +([+-][\d.]+) dB/octave  (from .* to .*)", row)
        assert match, row
        yield slope(match[1], match[2], match[3])
    for row in found["Crossings"]:
        if row.strip() != "none in the band":
            yield from of_crossing(row.strip())
    rows = [row for row in found["Impedance"] if ": least" in row]
    for row in rows:
        match = re.fullmatch(rf"  (\S+): least ([\d.]+) ([mkM]?ohm) at {FREQUENCY}(, from .* to .*)?", row)
        assert match, row
        yield least(match[1], match[2], match[3], several=len(found["Impedance"]) > 1, span=(match[6] or "")[1:])


def of_crossing(text: str) -> Iterator[Line]:
    """A crossing as the summary or a plot tells it: of each driver of one group with each of the other."""
    match = re.fullmatch(rf"(\S+) and (\S+)\D*? at {FREQUENCY}[,:] {LEVEL}(?: and {LEVEL})?", text)
    assert match, text
    first, second = match[1].split("/"), match[2].split("/")
    for a, b in product(first, second):
        yield at_frequency(f"crossing of {a} and {b}", match[3], match[4])
    for names, number in ((first, match[5]), (second, match[6] or match[5])):
        for name in names:
            yield level(name, number, f"{match[3]} {match[4]}")


def of_reading(text: str, drivers: list[str]) -> Iterator[Line]:
    """The polarity of every driver that is wired."""
    turned = set(re.findall(r"(?m)^(?:The )?(\S+) is turned round: its minus is the fed end\.", text))
    for name in drivers:
        real, other = ("reversed", "normal") if {name, name[0].upper() + name[1:]} & turned else ("normal", "reversed")
        yield Line(f"expect polarity of {name} {real}", f"expect polarity of {name} {other}")


def of_spread(name: str, printed: str, several: bool) -> Line | None:
    """A row of the report on many builds: the figure's name, and its number as stated."""
    if match := re.fullmatch(r"level of (\S+) at (.*)", name):
        return level(match[1], printed.removesuffix(" dB"), match[2], 0.01)
    if match := re.fullmatch(r"slope of (\S+) (from .* to .*)", name):
        return slope(match[1], printed.removesuffix(" dB/octave"), match[2], 0.01)
    if match := re.fullmatch(r"crossing of .*", name):
        return at_frequency(name, *printed.split())
    if match := re.fullmatch(r"corner of (\S+), ([\d.]+) dB down", name):
        return at_frequency(f"corner of {match[1]} -{match[2]} dB", *printed.split())
    if match := re.fullmatch(r"least impedance of (\S+)", name):
        return least(match[1], *printed.split(), several=several)
    return None
