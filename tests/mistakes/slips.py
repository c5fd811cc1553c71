"""Every single mistake that a builder can make in a design, as a changed `Wired`.

Each class of mistake is one generator; a mistake is told by a sentence.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from dataclasses import replace
from itertools import combinations

from mistakes.wired import OPEN, Wired, WiredDriver, WiredPart

Mistake = tuple[str, Wired]
"""What was done, and the design after it."""


def lead_off(wired: Wired) -> Iterator[Mistake]:
    """A wire dropped: one end of a part, driver or post is soldered to nothing."""
    for part in wired.parts:
        for index in range(len(part.nets)):
            yield f"end {index + 1} of {part.label} off", wired.with_part(_moved(part, index, OPEN))
    for driver in wired.drivers:
        yield f"{driver.name}+ off", wired.with_driver(replace(driver, plus=OPEN))
        yield f"{driver.name}- off", wired.with_driver(replace(driver, minus=OPEN))
    for pad, net in wired.posts:
        if net != pad:
            others = tuple((p, OPEN if p == pad else n) for p, n in wired.posts)
            yield f"{pad} off", replace(wired, posts=others)


def lead_moved(wired: Wired) -> Iterator[Mistake]:
    """A lead moved to each other node."""
    nets = wired.nets
    for part in wired.parts:
        for index, net in enumerate(part.nets):
            for other in nets:
                if other != net:
                    yield f"end {index + 1} of {part.label} on {other}", wired.with_part(_moved(part, index, other))
    for driver in wired.drivers:
        for other in nets:
            if other != driver.plus:
                yield f"{driver.name}+ on {other}", wired.with_driver(replace(driver, plus=other))
            if other != driver.minus:
                yield f"{driver.name}- on {other}", wired.with_driver(replace(driver, minus=other))


def _moved(part: WiredPart, index: int, net: str) -> WiredPart:
    return replace(part, nets=(*part.nets[:index], net, *part.nets[index + 1 :]))


def parts_exchanged(wired: Wired) -> Iterator[Mistake]:
    """Two like parts exchanged: each sits where the other belongs."""
    for first, second in combinations(wired.parts, 2):
        if first.kind == second.kind and (first.value, first.items) != (second.value, second.items):
            swapped = wired.with_part(replace(first, nets=second.nets, legs=second.legs))
            yield (
                f"{first.label} and {second.label} exchanged",
                swapped.with_part(replace(second, nets=first.nets, legs=first.legs)),
            )


def part_left_out(wired: Wired) -> Iterator[Mistake]:
    """A part left out of the text and the wiring."""
    for part in wired.parts:
        yield f"{part.label} left out", _without(wired, part.label)


def part_bridged(wired: Wired) -> Iterator[Mistake]:
    """A part left out and a wire put in its place."""
    for part in wired.parts:
        keep, drop = sorted(part.nets[:2], key=lambda net: ("+" not in net and "-" not in net, net))

        def joined(net: str, keep: str = keep, drop: str = drop) -> str:
            return keep if net == drop else net

        if "+" in drop or "-" in drop:  # both are pads: the wire lies across the input
            continue
        others = _without(wired, part.label)
        parts = tuple(replace(other, nets=tuple(map(joined, other.nets))) for other in others.parts)
        drivers = tuple(replace(d, plus=joined(d.plus), minus=joined(d.minus)) for d in others.drivers)
        posts = tuple((pad, joined(net)) for pad, net in others.posts)
        yield f"{part.label} bridged", replace(others, parts=parts, drivers=drivers, posts=posts)


def _without(wired: Wired, label: str) -> Wired:
    tail = tuple(line for line in wired.tail if not re.search(rf"\b{label}\b", line))
    return replace(wired, parts=tuple(part for part in wired.parts if part.label != label), tail=tail)


def part_doubled(wired: Wired) -> Iterator[Mistake]:
    """A part fitted twice, side by side."""
    for part in wired.parts:
        twin = replace(part, label=f"{part.label}b")
        yield f"{part.label} doubled", replace(wired, parts=(*wired.parts, twin))


def driver_reversed(wired: Wired) -> Iterator[Mistake]:
    """A driver turned round."""
    for driver in wired.drivers:
        yield f"{driver.name} reversed", wired.with_driver(replace(driver, plus=driver.minus, minus=driver.plus))


def outputs_exchanged(wired: Wired) -> Iterator[Mistake]:
    """Two drivers exchanged, each on the other's leg."""
    for first, second in combinations(wired.drivers, 2):
        swapped = wired.with_driver(_placed(first, second))
        yield f"{first.name} and {second.name} exchanged", swapped.with_driver(_placed(second, first))


def _placed(driver: WiredDriver, place: WiredDriver) -> WiredDriver:
    return replace(driver, plus=place.plus, minus=place.minus)


def value_slipped(wired: Wired) -> Iterator[Mistake]:
    """A value off by 10 or by 1,000."""
    for part in wired.parts:
        for factor in (10.0, 0.1, 1000.0, 0.001):
            yield f"{part.label} times {factor:g}", wired.with_part(replace(part, value=part.value * factor))


def unit_mistaken(wired: Wired) -> Iterator[Mistake]:
    """A value read in a unit of another kind."""
    for part in wired.parts:
        for unit in ("H", "F", "ohm"):
            if unit != part.unit:
                yield f"{part.label} in {unit}", wired.with_part(replace(part, unit=unit))


def rating_halved(wired: Wired) -> Iterator[Mistake]:
    """A rating in volt, watt or ampere halved."""
    for part in wired.parts:
        for index, item in enumerate(part.items):
            match = re.fullmatch(r"(\S+) ([VWA])", item)
            if match:
                items = (*part.items[:index], f"{float(match[1]) / 2!r} {match[2]}", *part.items[index + 1 :])
                yield f"{part.label} {item} halved", wired.with_part(replace(part, items=items))


def tolerance_widened(wired: Wired) -> Iterator[Mistake]:
    """A tolerance four times as wide."""
    for part in wired.parts:
        for index, item in enumerate(part.items):
            if item.endswith("%"):
                wide = f"{min(float(item.split()[0]) * 4, 80):g} %"
                items = (*part.items[:index], wide, *part.items[index + 1 :])
                yield f"{part.label} {item} to {wide}", wired.with_part(replace(part, items=items))


CLASSES: dict[str, Callable[[Wired], Iterator[Mistake]]] = {
    "lead off": lead_off,
    "lead moved": lead_moved,
    "parts exchanged": parts_exchanged,
    "part left out": part_left_out,
    "part bridged": part_bridged,
    "part doubled": part_doubled,
    "driver reversed": driver_reversed,
    "outputs exchanged": outputs_exchanged,
    "value slipped": value_slipped,
    "unit mistaken": unit_mistaken,
    "rating halved": rating_halved,
    "tolerance widened": tolerance_widened,
}
