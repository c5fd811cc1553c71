"""An end at which nothing else arrives: what `ends` finds, `pairing` sorts out, and the rules word."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from shuntwise.graph.circuit import Attachment

EndKind = Literal["loose-node", "half-fitted", "driver-one-lead", "terminal-unused"]


@dataclass(frozen=True)
class OpenEnd:
    """A net at which a single end arrives (or a node at which none does), and the rule that tells of it.

    `name` is the author's name for the net: a node or a port, else "". `omitted` are parts left out that
    would arrive here. `partner` is the end to which the missing wire may have led.
    """

    kind: EndKind
    net: str
    attachment: Attachment | None
    name: str = ""
    omitted: tuple[str, ...] = ()
    partner: OpenEnd | None = None

    @property
    def point(self) -> str:
        return self.name or (self.attachment.point if self.attachment else self.net)
