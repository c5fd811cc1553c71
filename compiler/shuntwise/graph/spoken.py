"""How points and nets of a circuit are called in a sentence.

In: a point or a net by name. Out: words of the trade, none with a mark that a listener would not hear. Refuses to know
the sentence.
"""

from __future__ import annotations

from shuntwise.graph.circuit import Circuit, lead_of
from shuntwise.model.design import Design
from shuntwise.model.kinds import ROLES

PADS = {"+": "plus", "-": "minus"}


def spoken_point(design: Design, point: str, prefix: str = "") -> str:
    """A point as spoken: `woofer plus`, `the tap of T1`, `the port out of P1`, `the node hp`.

    `prefix` is the used network inside which it is spoken of, with its dot: its name is left out.
    """
    if point[-1:] in PADS:
        return f"{point[:-1]} {PADS[point[-1]]}"
    owner, _, terminal = point.rpartition(".")
    whose = f" of {owner.removeprefix(prefix)}" if owner and prefix != f"{owner}." else ""
    if point in design.instances.get(owner, ()):
        return f"the port {terminal}{whose}"
    return f"the {terminal}{whose}" if whose else f"the node {terminal}"


def spoken_net(circuit: Circuit, point: str) -> str:
    """The net of a point as spoken: `the return`, `woofer plus`, `the node hp`, `the node between C2 and L2`."""
    net = circuit.net_of[point]
    if net == "return":
        return "the return"
    if net in circuit.net_of:
        return spoken_point(circuit.design, net)
    return net if net.startswith(("one end of ", "the point ")) else f"the node {net}"


def spoken_owner(name: str) -> str:
    """A driver, input or part by name: `the woofer`, `the input`, and `w1`, `C1` as they are."""
    return f"the {name.replace('_', '-')}" if name in (*ROLES, "input") else name


def spoken_lead(point: str) -> str:
    """What goes from an end of something to its net: `the start of C1`, `the plus wire of the woofer`."""
    owner, terminal = lead_of(point)
    return f"the {f'{PADS[terminal]} wire' if terminal in PADS else terminal} of {spoken_owner(owner)}"
