"""What is otherwise in one design than in another: mostly in a variant than in the design itself.

In: two designs of one text. Out: `Difference`s, in the order of the first design. Of what is left out in both, nothing
is told. Refuses to know how anything is shown, and what only checks look at (expectations, bounds).
"""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from itertools import chain
from typing import Literal

from shuntwise.model.design import Design, Driver, NodeStop, ParallelStop, Part, PartStop, Quantity, Stop

FITTED, LEFT_OUT, ABSENT = "fitted", "left out", "absent"

Told = Quantity | str | None


@dataclass(frozen=True)
class Difference:
    """`what` of `subject` is `here`, and `there` in the other design; None: not stated.

    `what` is an attribute's name, or empty for the value behind the subject's name. A part or driver that is not in
    both is told by its `presence` alone, `fitted`, `left out` or `absent`, posts by whether they are `fed`. Of a driver
    whose leg is wired otherwise only that is told, as `wiring`.
    """

    of: Literal["part", "driver", "choice", "coupling", "posts"]
    subject: str
    what: str
    here: Told
    there: Told


def differences(here: Design, there: Design) -> tuple[Difference, ...]:
    """All that is built or wired otherwise `here` than `there`."""
    return (*_choices(here, there), *_parts(here, there), *_drivers(here, there), *_joints(here, there))


def _choices(here: Design, there: Design) -> Iterator[Difference]:
    before = {choice.name: choice.chosen for choice in there.choices}
    for choice in here.choices:
        if choice.chosen != before.get(choice.name):
            yield Difference("choice", choice.name, "position", choice.chosen, before.get(choice.name))


def _parts(here: Design, there: Design) -> Iterator[Difference]:
    def presence(part: Part | None) -> str:
        return ABSENT if part is None else FITTED if part.fitted else LEFT_OUT

    for label in _all(here.parts, there.parts):
        one, other = here.parts.get(label), there.parts.get(label)
        if FITTED not in (presence(one), presence(other)):
            continue
        if one is None or other is None or one.fitted != other.fitted:
            yield Difference("part", label, "presence", presence(one), presence(other))
            continue
        if one.kind != other.kind:
            yield Difference("part", label, "kind", one.kind, other.kind)
        elif not _same(one.value, other.value):
            yield Difference("part", label, "", one.value, other.value)
        for name, first, second in _attributes(one.quantities, other.quantities):
            yield Difference("part", label, name, first, second)
        if one.construction != other.construction:
            yield Difference("part", label, "construction", one.construction, other.construction)


def _drivers(here: Design, there: Design) -> Iterator[Difference]:
    walked = _walked(here), _walked(there)
    for name in _all(here.drivers, there.drivers):
        one, other = here.drivers.get(name), there.drivers.get(name)
        if one is None or other is None:
            states = [ABSENT if driver is None else FITTED for driver in (one, other)]
            yield Difference("driver", name, "presence", *states)
            continue
        if not _same(one.nominal, other.nominal):
            yield Difference("driver", name, "", one.nominal, other.nominal)
        for attribute, first, second in _attributes(_stated(one), _stated(other)):
            yield Difference("driver", name, attribute, first, second)
        if one.role != other.role:
            yield Difference("driver", name, "role", one.role, other.role)
        if one.measured != other.measured:
            tables = [driver.measured.name if driver.measured else None for driver in (one, other)]
            yield Difference("driver", name, "measured", *tables)
        if walked[0][name] != walked[1][name]:
            yield Difference("driver", name, "wiring", "otherwise", None)


def _stated(driver: Driver) -> Mapping[str, Quantity]:
    """What a voice coil has by itself hangs on how the other is wired, which is no difference of the driver."""
    return driver.stated or driver.quantities


def _joints(here: Design, there: Design) -> Iterator[Difference]:
    """Couplings, and what feeds the posts."""
    factors = [{f"{c.first} and {c.second}": c.k for c in design.couplings} for design in (here, there)]
    for pair, first, second in _attributes(*factors):
        yield Difference("coupling", pair, "", first, second)
    posts = [{pair.name: "fed" if pair.fed else "not fed" for pair in design.terminals} for design in (here, there)]
    for name in _all(*posts):
        fed, before = (side.get(name, ABSENT) for side in posts)
        if fed != before:
            yield Difference("posts", name, "fed", fed, before)


def _walked(design: Design) -> Mapping[str, Counter[object]]:
    """By driver the walks of its legs without their places, which may stand in any order."""
    walked: dict[str, Counter[object]] = defaultdict(Counter)
    for walk in design.walks:
        if walk.leg is not None:
            for name in design.legs[walk.leg].drivers:
                walked[name][tuple(map(_bare, walk.stops))] += 1
    return walked


def _bare(stop: Stop) -> object:
    match stop:
        case NodeStop():
            return stop.node
        case PartStop():
            return stop.owner, stop.into, stop.out_of
        case ParallelStop():
            return tuple(tuple(map(_bare, stops)) for stops in stop.chains)
    return None


def _attributes(
    here: Mapping[str, Quantity | None] | Mapping[str, Quantity],
    there: Mapping[str, Quantity | None] | Mapping[str, Quantity],
) -> Iterator[tuple[str, Quantity | None, Quantity | None]]:
    for name in _all(here, there):
        one, other = here.get(name), there.get(name)
        if not _same(one, other):
            yield name, one, other


def _same(one: Quantity | None, other: Quantity | None) -> bool:
    """Two values, wherever and however they are written."""
    if one is None or other is None:
        return one is other
    return (one.value, one.dimension) == (other.value, other.dimension)


def _all(here: Mapping[str, object], there: Mapping[str, object]) -> tuple[str, ...]:
    return tuple(dict.fromkeys(chain(here, there)))
