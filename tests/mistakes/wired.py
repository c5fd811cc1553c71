"""A design in a form in which single mistakes are easy to make: every part's ends named, one walk a part.

`Wired.text` writes it in the language; `unwire.py` takes a compiled design apart into it.
"""

from __future__ import annotations

from dataclasses import dataclass, field, replace

from shuntwise.model.kinds import KINDS

OPEN = "-"
"""The net of an end that is soldered to nothing."""


@dataclass(frozen=True)
class WiredPart:
    """A part and the nets of its terminals, in the order of its kind's table."""

    label: str
    kind: str
    value: float
    unit: str
    items: tuple[str, ...]
    nets: tuple[str, ...]
    legs: tuple[str, ...]
    worked_out: bool

    def declaration(self) -> str:
        items = f" {{ {', '.join(self.items)} }}" if self.items else ""
        formula = "1 * " * self.worked_out  # no part is printed with it, and the checks know that
        return f"{self.kind} {self.label} {formula}{self.value!r} {self.unit}{items}"


@dataclass(frozen=True)
class WiredDriver:
    """A driver's declaration as it was written, and the nets of its pads."""

    name: str
    declaration: str
    role: str | None
    plus: str
    minus: str
    leg: str


@dataclass(frozen=True)
class Wired:
    """A whole design. `posts` wires every pad of inputs and posts to a net; nets are node words or input pads."""

    head: tuple[str, ...]
    parts: tuple[WiredPart, ...]
    drivers: tuple[WiredDriver, ...]
    posts: tuple[tuple[str, str], ...]
    groups: tuple[frozenset[str], ...]
    tail: tuple[str, ...]
    expects: tuple[str, ...] = field(default=())

    def with_part(self, part: WiredPart) -> Wired:
        return replace(self, parts=tuple(part if old.label == part.label else old for old in self.parts))

    def with_driver(self, driver: WiredDriver) -> Wired:
        return replace(self, drivers=tuple(driver if old.name == driver.name else old for old in self.drivers))

    @property
    def nets(self) -> tuple[str, ...]:
        """Every net that something is soldered to."""
        nets = [net for part in self.parts for net in part.nets]
        nets += [net for driver in self.drivers for net in (driver.plus, driver.minus)]
        nets += [net for _, net in self.posts]
        return tuple(dict.fromkeys(net for net in nets if net != OPEN))

    def text(self, *, expects: bool = True) -> str:
        """The design in the language."""
        lines = [*self.head, *dict.fromkeys(driver.declaration for driver in self.drivers)]  # of two coils one
        lines += [part.declaration() for part in self.parts]
        legs: dict[str, list[str]] = {}
        grouped: set[str] = set()
        for part in self.parts:
            if part.label not in grouped:
                walk, taken = self._walk(part)
                grouped |= taken
                legs.setdefault(part.legs[0], []).extend(walk)
        for driver in self.drivers:
            for sign, net in (("+", driver.plus), ("-", driver.minus)):
                if net != OPEN:
                    legs.setdefault(driver.leg, []).append(f"{net} -- {driver.name}{sign}")
        first = next(iter(legs), "")
        for pad, net in self.posts:
            if net not in (OPEN, pad):
                legs[first].append(f"{net} -- {pad}")
        for leg, walks in legs.items():
            lines += [f"leg {leg} {{", *(f"  {walk}" for walk in walks), "}"]
        return "\n".join([*lines, *self.tail, *(self.expects if expects else ())]) + "\n"

    def _walk(self, part: WiredPart) -> tuple[list[str], set[str]]:
        """The walks of a part, or of the group of parallel parts that it begins."""
        for group in self.groups:
            members = [
                other
                for other in self.parts
                if other.label in group and other.nets == part.nets and other.legs == part.legs
            ]
            if part.label in group and len(members) > 1 and OPEN not in part.nets:
                labels = " | ".join(member.label for member in members)
                return [f"{part.nets[0]} -- ({labels}) -- {part.nets[1]}"], {member.label for member in members}
        ends = [net for net in part.nets[:2] if net != OPEN]
        walks = []
        if len(ends) == 2:
            walks.append(f"{part.nets[0]} -- {part.label} -- {part.nets[1]}")
        elif ends:
            before = part.nets[0] != OPEN
            walks.append(f"{ends[0]} -- {part.label}" if before else f"{part.label} -- {ends[0]}")
        if len(part.nets) > 2 and part.nets[2] != OPEN:
            walks.append(f"{part.label}.{KINDS[part.kind].terminals[2]} -- {part.nets[2]}")
        return walks, {part.label}
