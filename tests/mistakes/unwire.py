"""A compiled design taken apart into the form in which mistakes are made.

The text of what comes out means the same circuit: a test holds the two against each other by solving.
"""

from __future__ import annotations

import re

from mistakes.wired import Wired, WiredDriver, WiredPart
from shuntwise import units as u
from shuntwise.graph.circuit import Circuit
from shuntwise.model.design import Driver, Part
from shuntwise.model.kinds import KINDS

NODE_WORDS = [
    "alpha",
    "bravo",
    "charlie",
    "delta",
    "echo",
    "foxtrot",
    "golf",
    "hotel",
    "india",
    "juliett",
    "kilo",
    "lima",
    "mike",
    "november",
    "oscar",
    "papa",
    "quebec",
    "romeo",
    "sierra",
    "tango",
    "uniform",
    "victor",
    "whiskey",
    "xray",
    "yankee",
    "zulu",
]
UNITS = {u.HENRY: "H", u.FARAD: "F", u.OHM: "ohm", u.AMPERE: "A"}


def unwire(circuit: Circuit) -> Wired:
    """Take a sound circuit apart. Links are taken as the wires that they are; parts left out are left out."""
    design = circuit.design
    words = _net_words(circuit)
    leg_names = [
        " and ".join(dict.fromkeys(design.drivers[name].coil_of or name for name in leg.drivers)) for leg in design.legs
    ]
    fallback = leg_names[0]

    def legs_of(owner: str) -> tuple[str, ...]:
        holder = owner
        while holder not in circuit.leg_of and "." in holder:
            holder = holder.rpartition(".")[0]
        found = [leg_names[index] for index in sorted(circuit.leg_of.get(holder, ()))]
        return tuple(found) or (fallback,)

    def leg_of_driver(name: str) -> str:
        names = [text for text, leg in zip(leg_names, design.legs, strict=True) if name in leg.drivers]
        return min(names, key=len)

    parts = []
    for part in design.parts.values():
        if not part.fitted or part.kind == "link" or part.value is None:
            continue
        nets = tuple(words[circuit.net_of[f"{part.label}.{end}"]] for end in KINDS[part.kind].terminals)
        unit = UNITS[part.value.dimension]
        label, legs = flat(part.label), legs_of(part.label)
        worked_out = re.fullmatch(r"[\d.]+\s*[^\W\d_]+", part.value.text) is None
        parts.append(WiredPart(label, part.kind, part.value.value, unit, _items(part), nets, legs, worked_out))
    drivers = [
        WiredDriver(
            name,
            _driver(driver),
            driver.role,
            words[circuit.pad(name, "+")],
            words[circuit.pad(name, "-")],
            leg_of_driver(name),
        )
        for name, driver in design.drivers.items()
    ]
    posts = [(f"{pair.name}{sign}", words[circuit.pad(pair.name, sign)]) for pair in design.terminals for sign in "+-"]
    head = [f'design "{design.title or "box"}"']
    if design.amplifier:
        head.append(design.amplifier.span.text)
    head += [f"{'input' if pair.fed else 'posts'} {pair.name}" for pair in design.terminals if pair.span is not None]
    tail = [f"coupling {flat(c.first)} and {flat(c.second)} {c.k.value!r}" for c in design.couplings if c.k is not None]
    tail += [_flattened(waiver.span.text) for waiver in design.waivers]
    tail += [f"limit {name} {setting.quantity.span.text}" for name, setting in design.limits.items()]
    expects = tuple(expectation.span.text for expectation in design.expectations)
    groups = tuple(frozenset(map(flat, group)) for group in circuit.groups)
    return Wired(tuple(head), tuple(parts), tuple(drivers), tuple(posts), groups, tuple(tail), expects)


def flat(label: str) -> str:
    """The label of a part inside a used network, as a part of the design: `Z1.R` becomes `R_Z1`."""
    *holders, last = label.split(".")
    return "_".join([last, *holders])


def _flattened(line: str) -> str:
    line = re.sub(r"\bin [\w. ]+ because", "because", line)  # what holds here holds without saying
    return re.sub(r"\bon ([\w.]+)", lambda match: f"on {flat(match[1])}", line)


def _net_words(circuit: Circuit) -> dict[str, str]:
    words: dict[str, str] = {}
    free = iter(NODE_WORDS)
    for pair in circuit.design.terminals:
        for sign in "-+":
            words.setdefault(circuit.pad(pair.name, sign), f"{pair.name}{sign}")
    for name in circuit.nets:
        if name not in words:
            words[name] = next(free)
    return words


def _items(part: Part) -> tuple[str, ...]:
    """The part's attributes as they are typed."""
    items = []
    kind = KINDS[part.kind]
    for name, quantity in part.quantities.items():
        attribute = kind.attributes[name]
        if name == "tolerance":
            items.append(f"{quantity.value * 100:.12g} %")
            continue
        text = f"{quantity.value!r} {u.SYMBOLS[attribute.dimension]}".strip()
        items.append(text if attribute in kind.bare else f"{name} {text}")
    if part.construction:
        items.append(part.construction)
    return tuple(items)


def _driver(driver: Driver) -> str:
    """The driver's declaration with its values worked out; with data in a file, or two coils, as written."""
    if "measured" in driver.span.text or driver.coil_of is not None:
        return driver.span.text
    items = [
        f"{quantity.value!r} W"
        if name == "power"
        else f"{name} {quantity.value!r} {u.SYMBOLS[quantity.dimension]}".strip()
        for name, quantity in driver.quantities.items()
    ]
    if driver.role:
        items.append(f"role {driver.role}")
    nominal = f" {driver.nominal.value!r} ohm" if driver.nominal else ""
    return f"driver {driver.name}{nominal} {{ {', '.join(items)} }}"
