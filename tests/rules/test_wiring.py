"""One mistake, one finding: awkward cases of the wiring checks, and what must not be found.

Each case is a text and what is found in it, as pairs of a finding's name and the text that it points at.
"""

from __future__ import annotations

from dataclasses import dataclass, field

import pytest

from rules.compiling import findings_of
from shuntwise.source import Source

Found = list[tuple[str, str]]


def found_in(text: str) -> Found:
    return [(f.name, f.span.text) for f in findings_of(Source("box.shunt", text), ("language", "wiring"))]


TWO_WAY = """
driver woofer 8 ohm
driver tweeter 8 ohm
coil L1 0.82 mH
capacitor C1 12 uF
capacitor C2 6.8 uF
coil L2 0.56 mH
resistor R1 3.3 ohm
{declared}
leg woofer {{
  {woofer}
}}
leg tweeter {{
  {tweeter}
}}
{more}
"""

WOOFER = ("input+ -- L1 -- woofer+", "woofer+ -- C1 -- return", "woofer- -- return")
TWEETER = ("input+ -- C2 -- hp -- R1 -- tweeter+", "hp -- L2 -- return", "tweeter- -- return")


def two_way(
    woofer: tuple[str, ...] = WOOFER, tweeter: tuple[str, ...] = TWEETER, declared: str = "", more: str = ""
) -> str:
    """A sound two-way box, with some of its walks replaced."""
    return TWO_WAY.format(woofer="\n  ".join(woofer), tweeter="\n  ".join(tweeter), declared=declared, more=more)


@dataclass(frozen=True)
class Case:
    situation: str
    text: str
    expected: Found = field(default_factory=list)


HEALTHY = [
    Case("the box that the other cases are made from", two_way()),
    Case(
        "a node between two capacitors has no DC path",
        """
        driver tweeter 8 ohm
        capacitor C1 10 uF
        capacitor C2 10 uF
        leg tweeter {
          input+ -- C1 -- middle -- C2 -- tweeter+
          tweeter- -- return
        }
        """,
    ),
    Case(
        "a series-type network returns through the other driver",
        """
        driver woofer 8 ohm
        driver tweeter 8 ohm
        coil L1 0.47 mH
        capacitor C1 6.8 uF
        leg woofer and tweeter {
          input+ -- tweeter+
          tweeter- -- middle
          middle -- woofer+
          woofer- -- return
          input+ -- L1 -- middle
          middle -- C1 -- return
        }
        """,
    ),
    Case(
        "parts declared as a parallel group, nested too",
        """
        driver woofer 8 ohm
        coil L1 0.33 mH
        resistor R1 15 ohm
        resistor R2 15 ohm
        capacitor C1 2.2 uF
        capacitor C2 2.2 uF
        leg woofer {
          input+ -- (L1 | (R1 | R2) | (C1 | C2)) -- woofer+
          woofer- -- return
        }
        """,
    ),
    Case("parts marked as left out, alone and in pairs", two_way(
        declared="resistor R9 6.8 ohm\ncapacitor C9 22 uF\nomit R9 and C9",
        woofer=(*WOOFER, "woofer+ -- R9 -- zobel -- C9 -- return"),
    )),
    Case("parts left out that stand in no walk", two_way(declared="resistor R9 6.8 ohm\nomit R9")),
    Case("a test point on a node", two_way(more="testpoint hp")),
    Case("a test point at which a single end arrives", two_way(
        declared="resistor R9 1 kohm", woofer=(*WOOFER, "woofer+ -- R9 -- probe"), more="testpoint probe")),
    Case(
        "posts for two amplifiers, with the links in, and out with an amplifier on each pair",
        """
        input low
        posts high
        link K1
        link K2
        driver woofer 8 ohm
        driver tweeter 8 ohm
        coil L1 0.82 mH
        capacitor C1 6.8 uF
        leg woofer {
          low+ -- L1 -- woofer+
          woofer- -- low-
        }
        leg tweeter {
          high+ -- C1 -- tweeter+
          tweeter- -- high-
        }
        leg woofer and tweeter {
          low+ -- K1 -- high+
          low- -- K2 -- high-
        }
        variant two_amplifiers {
          input high
          omit K1 and K2
        }
        """,
    ),
    Case(
        "two inputs are two islands, each with its own feed",
        """
        input low
        input high
        driver woofer 8 ohm
        driver tweeter 8 ohm
        coil L1 0.82 mH
        capacitor C1 6.8 uF
        leg woofer {
          low+ -- L1 -- woofer+
          woofer- -- low-
        }
        leg tweeter {
          high+ -- C1 -- tweeter+
          tweeter- -- high-
        }
        """,
    ),
    Case("a socket that loops the signal through", two_way(
        declared="posts through", woofer=(*WOOFER, "input+ -- through+", "return -- through-"))),
    Case("two names for one node", two_way(woofer=("input+ -- L1 -- out", "out -- woofer+", *WOOFER[1:]))),
    Case("nodes whose short or numbered names differ by a letter", """
        driver mid1 8 ohm
        driver mid2 8 ohm
        capacitor C1 33 uF
        coil L1 0.5 mH
        coil L2 0.5 mH
        capacitor C2 33 uF
        resistor R1 1 ohm
        resistor R2 1 ohm
        leg mid1 {
          input+ -- C1 -- hp -- L1 -- tap1 -- R1 -- mid1+
          mid1- -- return
        }
        leg mid2 {
          input+ -- L2 -- lp -- C2 -- tap2 -- R2 -- mid2+
          mid2- -- return
        }
        """),
    Case("an optional port that a design does not use", """
        network pad (into, out, sense) {
          resistor R1 3.3 ohm
          resistor R2 3.3 ohm
          into -- R1 -- sense
          sense -- R2 -- out
        }
        driver tweeter 8 ohm
        capacitor C1 6.8 uF
        use pad as P1
        leg tweeter {
          input+ -- C1 -- P1 -- tweeter+
          tweeter- -- return
        }
        """),
    Case("two unlike parts side by side", two_way(
        declared="resistor R9 8.2 ohm", tweeter=(*TWEETER, "tweeter+ -- R9 -- tweeter-", "input+ -- hp2 -- R2 -- hp"),
        more="resistor R2 1 kohm")),
    Case("a network that nothing uses", two_way(
         declared="network pad (into, out) {\n resistor R9 3.3 ohm\n into -- R9 -- out\n}")),
]  # fmt: skip


SLIPS = [
    # --- open ends
    Case("a shunt part goes nowhere", two_way(woofer=(WOOFER[0], "woofer+ -- C1", WOOFER[2])), [("half-fitted", "C1")]),
    Case("a misspelt return", two_way(woofer=(WOOFER[0], "woofer+ -- C1 -- retrun", WOOFER[2])),
         [("loose-node", "retrun")]),
    Case("a misspelt node in the middle of a leg", two_way(tweeter=(TWEETER[0], "ph -- L2 -- return", TWEETER[2])),
         [("loose-node", "ph")]),
    Case("one node under two names, so that a leg is parted",
         two_way(tweeter=("input+ -- C2 -- middle", "midle -- R1 -- tweeter+", "tweeter+ -- L2 -- return", TWEETER[2])),
         [("loose-node", "midle")]),
    Case("a leg whose first station was forgotten", two_way(woofer=("L1 -- woofer+", *WOOFER[1:])),
         [("half-fitted", "L1")]),
    Case("a walk that stops before the driver", two_way(woofer=("input+ -- L1", *WOOFER[2:]), declared="omit C1"),
         [("half-fitted", "L1")]),
    Case("a driver's return wire forgotten", two_way(woofer=WOOFER[:2]), [("driver-one-lead", "woofer+")]),
    Case("the only driver's return wire forgotten",
         "driver woofer 8 ohm\ncoil L1 1 mH\nleg woofer {\n input+ -- L1 -- woofer+\n}\n",
         [("driver-one-lead", "woofer+")]),
    Case("all return wires forgotten", two_way(woofer=WOOFER[:1], tweeter=("input+ -- C2 -- hp -- R1 -- tweeter+",
         "hp -- L2 -- tweeter+"), declared="omit C1"),
         [("driver-one-lead", "woofer+"), ("driver-one-lead", "tweeter+")]),
    Case("the joint between two drivers in a row forgotten", """
        driver woofer1 4 ohm
        driver woofer2 4 ohm
        coil L1 1 mH
        leg woofer1 and woofer2 {
          input+ -- L1 -- woofer1+
          woofer2- -- return
        }
        """, [("driver-one-lead", "woofer2-")]),
    Case("a series part left out", two_way(more="omit L1", woofer=(WOOFER[0], WOOFER[2]), declared="omit C1"),
         [("driver-one-lead", "woofer-")]),
    Case("half a shunt pair left out",
         two_way(declared="resistor R9 6.8 ohm\ncapacitor C9 22 uF\nomit R9",
                 woofer=(*WOOFER, "woofer+ -- R9 -- C9 -- return")),
         [("half-fitted", "C9")]),
    Case("a part that stands in no walk", two_way(tweeter=(TWEETER[0], TWEETER[2])), [("part-not-wired", "L2")]),
    Case("a driver that stands in no walk", two_way(tweeter=(), declared="omit C2 and L2 and R1"),
         [("part-not-wired", "tweeter")]),
    Case("nothing is wired", two_way(woofer=(), tweeter=()), [("part-not-wired", "L1")]),
    Case("a link that stands in no walk", two_way(declared="link K1"), [("part-not-wired", "K1")]),
    Case("a link with one end", two_way(declared="link K1", woofer=(*WOOFER, "return -- K1")), [("half-fitted", "K1")]),
    Case("a link to a node where nothing arrives",
         two_way(declared="link K1", woofer=(*WOOFER, "return -- K1 -- spare")),
         [("half-fitted", "K1")]),
    Case("a node that is named and never reached",
         two_way(woofer=(*WOOFER, "north -- south")), [("loose-node", "north")]),
    Case("a port of a used network forgotten", """
        include "lpad" from library
        driver tweeter 8 ohm
        capacitor C1 6.8 uF
        use lpad as P1 { loss 6 dB, rated 20 W }
        leg tweeter {
          input+ -- C1 -- P1 -- tweeter+
          tweeter- -- return
        }
        """, [("loose-node", "P1")]),
    Case("a used network that stands in no walk", """
        include "zobel" from library
        driver woofer 8 ohm
        coil L1 1 mH
        use zobel as Z1 { re 6 ohm, le 0.5 mH, rated 20 W, voltage 100 V }
        leg woofer {
          input+ -- L1 -- woofer+
          woofer- -- return
        }
        """, [("part-not-wired", "Z1")]),
    Case("a slip inside a network that is used twice", """
        network zobel (plus, minus) {
          resistor R1 6.8 ohm
          capacitor C1 22 uF
          plus -- R1 -- C1
          plus -- minus
        }
        driver woofer1 8 ohm
        driver woofer2 8 ohm
        use zobel as Z1
        use zobel as Z2
        leg woofer1 { input+ -- Z1 -- woofer1+, woofer1- -- return }
        leg woofer2 { input+ -- Z2 -- woofer2+, woofer2- -- return }
        """, [("half-fitted", "C1")]),
    # --- a whole walk forgotten, or a part of one
    Case("a walk through one part, with another part across the driver", two_way(woofer=WOOFER[1:]),
         [("part-not-wired", "L1")]),
    Case("a walk through two parts, with a shunt between them", two_way(tweeter=TWEETER[1:]),
         [("part-not-wired", "C2")]),
    Case("a walk that stops before the driver, with another part across it",
         two_way(woofer=("input+ -- L1", *WOOFER[1:])), [("half-fitted", "L1")]),
    Case("a walk that stops behind a group", two_way(declared="resistor R9 15 ohm",
         woofer=("input+ -- (L1 | R9)", *WOOFER[1:])), [("half-fitted", "L1")]),
    Case("a part left out of a walk that shorts the driver then",
         two_way(woofer=(WOOFER[0], "woofer+ -- woofer-", WOOFER[2])), [("driver-shorted", "woofer+ -- woofer-")]),
    Case("a part left out of a walk that bridges another then",
         two_way(tweeter=(TWEETER[0], "hp -- return", TWEETER[2])),
         [("part-not-wired", "L2")]),
    Case("a walk through a used network forgotten", """
        include "notch" from library
        driver woofer 8 ohm
        coil L1 0.5 mH
        capacitor C1 10 uF
        use notch as N1 { centre 2 kHz, inductance 0.2 mH, damping 15 ohm, dcr 0.1 ohm, rated 25 W, voltage 250 V }
        leg woofer {
          far -- L1 -- woofer+
          woofer+ -- C1 -- woofer-
          woofer- -- return
        }
        """, [("part-not-wired", "N1")]),
    Case("a walk that stops behind a used network", """
        include "notch" from library
        driver woofer 8 ohm
        capacitor C1 10 uF
        use notch as N1 { centre 2 kHz, inductance 0.2 mH, damping 15 ohm, dcr 0.1 ohm, rated 25 W, voltage 250 V }
        leg woofer {
          input+ -- N1
          woofer+ -- C1 -- woofer-
          woofer- -- return
        }
        """, [("loose-node", "N1")]),
    Case("a used network from a node to itself", """
        include "notch" from library
        driver woofer 8 ohm
        coil L1 0.5 mH
        use notch as N1 { centre 2 kHz, inductance 0.2 mH, damping 15 ohm, dcr 0.1 ohm, rated 25 W, voltage 250 V }
        leg woofer {
          input+ -- L1 -- woofer+
          woofer+ -- N1 -- woofer+
          woofer- -- return
        }
        """, [("does-nothing", "N1")]),
    Case("a wire past a used network", """
        include "notch" from library
        driver woofer 8 ohm
        coil L1 0.5 mH
        use notch as N1 { centre 2 kHz, inductance 0.2 mH, damping 15 ohm, dcr 0.1 ohm, rated 25 W, voltage 250 V }
        leg woofer {
          input+ -- L1 -- mid -- N1 -- woofer+
          mid -- woofer+
          woofer- -- return
        }
        """, [("wired-across", "mid -- woofer+")]),
    Case("a part and a used network in a group from a node to itself", """
        include "zobel" from library
        driver woofer 8 ohm
        coil L1 0.5 mH
        capacitor C1 10 uF
        use zobel as Z1 { re 6 ohm, le 0.5 mH, rated 20 W, voltage 100 V }
        leg woofer {
          input+ -- L1 -- woofer+
          woofer+ -- (C1 | Z1) -- woofer+
          woofer- -- return
        }
        """, [("does-nothing", "C1")]),
    Case("a series-type driver with both wires on one pad", """
        driver woofer 8 ohm
        driver tweeter 8 ohm
        coil L1 0.47 mH
        capacitor C1 6.8 uF
        leg woofer and tweeter {
          input+ -- tweeter-
          tweeter- -- middle
          middle -- woofer+
          woofer- -- return
          input+ -- L1 -- middle
          middle -- C1 -- return
        }
        """, [("driver-one-lead", "tweeter-")]),
    # --- terminals
    Case("the input's minus is wired to nothing", two_way(woofer=("input+ -- L1 -- woofer+", "woofer+ -- C1 -- bar",
         "woofer- -- bar"), tweeter=(TWEETER[0], "hp -- L2 -- bar", "tweeter- -- bar")),
         [("no-way-back", "bar")]),
    Case("the input is wired to nothing", two_way(woofer=("top -- L1 -- woofer+", "woofer+ -- C1 -- bar",
         "woofer- -- bar"), tweeter=("top -- C2 -- hp -- R1 -- tweeter+", "hp -- L2 -- bar", "tweeter- -- bar")),
         [("terminal-unused", "top")]),
    Case("posts of which one is wired", two_way(declared="posts through", woofer=(*WOOFER, "input+ -- through+")),
         [("terminal-unused", "through+")]),
    Case("posts that are not wired", two_way(declared="posts through"), [("terminal-unused", "posts through")]),
    Case("a second input with one pad", """
        input low
        input high
        driver woofer 8 ohm
        driver tweeter 8 ohm
        coil L1 0.82 mH
        capacitor C1 6.8 uF
        leg woofer {
          low+ -- L1 -- woofer+
          woofer- -- low-
        }
        leg tweeter {
          high+ -- C1 -- tweeter+
          tweeter- -- low-
        }
        """, [("terminal-unused", "high+")]),
    Case("a tapped coil without its tap", """
        driver tweeter 8 ohm
        capacitor C1 6.8 uF
        tapped coil T1 1.2 mH { tap 0.3 mH }
        leg tweeter {
          input+ -- C1 -- tweeter+
          tweeter+ -- T1 -- return
          tweeter- -- return
        }
        """, [("terminal-unused", "T1")]),
    # --- shorts
    Case("a part from a node to itself", two_way(woofer=(*WOOFER[:1], "woofer+ -- C1 -- woofer+", WOOFER[2])),
         [("does-nothing", "C1")]),
    Case("a part between two ends of the return", two_way(woofer=(WOOFER[0], "woofer- -- C1 -- return", WOOFER[2])),
         [("does-nothing", "C1")]),
    Case("a group from a node to itself", two_way(declared="capacitor C8 1 uF\ncapacitor C9 1 uF",
         woofer=(*WOOFER, "woofer+ -- (C8 | C9) -- woofer+")), [("does-nothing", "C8")]),
    Case("a wire past a coil", two_way(woofer=(*WOOFER, "input+ -- woofer+")), [("wired-across", "input+ -- woofer+")]),
    Case("a wire past two parts in a row", two_way(tweeter=("input+ -- C2 -- R1 -- tweeter+", "input+ -- tweeter+",
         "tweeter+ -- L2 -- return", TWEETER[2])), [("wired-across", "input+ -- tweeter+")]),
    Case("a wire past two parts at once", two_way(tweeter=(*TWEETER, "hp -- R9 -- tweeter+", "hp -- tweeter+"),
         declared="coil R9 1 mH") .replace("R9", "L9"), [("wired-across", "hp -- tweeter+")]),
    Case("a wire past a part by way of a further node", two_way(woofer=("input+ -- L1 -- woofer+", "input+ -- side",
         "side -- woofer+", *WOOFER[1:])), [("wired-across", "side -- woofer+")]),
    Case("a link past a part", two_way(declared="link K1", woofer=(*WOOFER, "input+ -- K1 -- woofer+")),
         [("wired-across", "K1")]),
    Case("a link past a part in one variant only", two_way(declared="link K1\nomit K1",
         woofer=(*WOOFER, "input+ -- K1 -- woofer+"), more="variant direct {\n fit K1\n}"), [("wired-across", "K1")]),
    Case("a link between what is joined anyway",
         two_way(declared="link K1", woofer=(*WOOFER, "woofer- -- K1 -- return")),
         [("does-nothing", "K1")]),
    Case("a driver's pads joined, with parts across it", two_way(woofer=(*WOOFER, "woofer+ -- woofer-")),
         [("driver-shorted", "woofer+ -- woofer-")]),
    Case("both pads of a driver on the return", two_way(woofer=(*WOOFER, "woofer+ -- return")),
         [("driver-shorted", "woofer+ -- return")]),
    Case("a driver's pads joined that has a Zobel", two_way(declared="resistor R9 6.8 ohm\ncapacitor C9 22 uF",
         woofer=(*WOOFER, "woofer+ -- R9 -- C9 -- return", "woofer+ -- woofer-")),
         [("driver-shorted", "woofer+ -- woofer-")]),
    Case("the plus pad returned in place of the minus pad", two_way(woofer=(*WOOFER[:2], "woofer+ -- return")),
         [("driver-one-lead", "woofer+ -- return")]),
    Case("the input's pads joined",
         two_way(woofer=(*WOOFER, "input+ -- return")), [("input-shorted", "input+ -- return")]),
    Case("the input shorted by way of a node",
         two_way(tweeter=(*TWEETER, "input+ -- hp"), woofer=(*WOOFER, "hp -- return")),
         [("input-shorted", "input+ -- hp")]),
    Case("the input shorted by a link", two_way(declared="link K1", woofer=(*WOOFER, "input+ -- K1 -- return")),
         [("input-shorted", "K1")]),
    Case("the input shorted by a resistor of next to nothing", two_way(declared="resistor R9 0.02 ohm",
         woofer=(*WOOFER, "input+ -- R9 -- return")), [("input-shorted", "R9")]),
    Case("posts crossed with the input", """
        input low
        posts high
        link K1
        link K2
        driver woofer 8 ohm
        driver tweeter 8 ohm
        coil L1 0.82 mH
        capacitor C1 6.8 uF
        leg woofer {
          low+ -- L1 -- woofer+
          woofer- -- low-
        }
        leg tweeter {
          high+ -- C1 -- tweeter+
          tweeter- -- high-
        }
        leg woofer and tweeter {
          low+ -- K1 -- high+
          low+ -- K2 -- high-
        }
        """, [("input-shorted", "K2")]),
    Case("one amplifier's plus on the other's minus", """
        input low
        input high
        driver woofer 8 ohm
        driver tweeter 8 ohm
        coil L1 0.82 mH
        capacitor C1 6.8 uF
        leg woofer {
          low+ -- L1 -- woofer+
          woofer- -- low-
        }
        leg tweeter {
          high+ -- C1 -- tweeter+
          tweeter- -- high-
          high- -- low+
        }
        """, [("input-shorted", "high- -- low+")]),
    Case("a section of a tapped coil shorted", """
        driver tweeter 8 ohm
        capacitor C1 6.8 uF
        tapped coil T1 1.2 mH { tap 0.3 mH }
        leg tweeter {
          input+ -- C1 -- T1 -- tweeter-
          T1.tap -- tweeter+
          T1.tap -- tweeter-
          tweeter- -- return
        }
        """, [("driver-shorted", "T1.tap -- tweeter-")]),
    # --- no current
    Case("a leg with a return of its own that leads nowhere",
         two_way(woofer=(WOOFER[0], "woofer+ -- C1 -- bar", "woofer- -- bar")), [("no-way-back", "bar")]),
    Case("a loop that hangs on one node", two_way(declared="resistor R9 6.8 ohm\ncapacitor C9 22 uF",
         woofer=(*WOOFER, "woofer+ -- R9 -- C9 -- woofer+")), [("dead-twig", "R9")]),
    Case("a driver in a loop with its own coil", two_way(woofer=("input+ -- L1 -- woofer+", "woofer+ -- C1 -- far",
         "woofer- -- far")), [("no-way-back", "far")]),
    Case("a leg that no input reaches", two_way(tweeter=("high -- C2 -- tweeter+", "high -- R1 -- tweeter+",
         "high -- L2 -- low", "tweeter- -- low")), [("two-islands", "tweeter+")]),
    # --- names and labels
    Case("nodes that differ by a capital", two_way(tweeter=("input+ -- C2 -- hpf -- R1 -- tweeter+",
         "HPF -- L2 -- return", "HPF -- R9 -- tweeter+", TWEETER[2]), declared="resistor R9 22 ohm"),
         [("look-alike-names", "hpf")]),
    Case("a return of which letters are exchanged, named twice",
         two_way(woofer=(WOOFER[0], "woofer+ -- C1 -- retrun", "woofer- -- retrun")), [("look-alike-names", "retrun")]),
    Case("a part entered twice", two_way(declared="capacitor C9 12 uF", woofer=(*WOOFER, "woofer+ -- C9 -- woofer-")),
         [("double-entry", "C9")]),
    Case("a third part beside a declared pair", two_way(declared="capacitor C8 1 uF\ncapacitor C9 1 uF",
         woofer=(WOOFER[0], "woofer+ -- (C1 | C8) -- return", "woofer+ -- C9 -- return", WOOFER[2])),
         [("double-entry", "C9")]),
    Case("a label of another kind", two_way(declared="resistor L9 1 ohm", woofer=("input+ -- L1 -- L9 -- woofer+",
         *WOOFER[1:])), [("label-kind-clash", "L9")]),
    Case("a driver of which nothing is said", "driver horn\nleg horn {\n input+ -- horn+\n horn- -- return\n}\n",
         [("role-missing", "horn")]),
    Case("outputs exchanged", two_way(woofer=("input+ -- L1 -- tweeter+", "tweeter+ -- C1 -- return", WOOFER[2]),
         tweeter=("input+ -- C2 -- hp -- R1 -- woofer+", *TWEETER[1:])), [("legs-crossed", "tweeter+")]),
]  # fmt: skip


PAIRS = [
    Case("a driver with one lead, and a wire past the other leg's part",
         two_way(woofer=WOOFER[:2], tweeter=(*TWEETER, "hp -- tweeter+")),
         [("driver-one-lead", "woofer+"), ("wired-across", "hp -- tweeter+")]),
    Case("two shunt parts that go nowhere", two_way(woofer=(WOOFER[0], "woofer+ -- C1", WOOFER[2]),
         tweeter=(TWEETER[0], "hp -- L2", TWEETER[2])), [("half-fitted", "C1"), ("half-fitted", "L2")]),
    Case("two drivers without a return wire", two_way(woofer=WOOFER[:2], tweeter=TWEETER[:2]),
         [("driver-one-lead", "woofer+"), ("driver-one-lead", "tweeter+")]),
    Case("a shorted input, and a part from a node to itself",
         two_way(woofer=(WOOFER[0], "woofer+ -- C1 -- woofer+", "woofer- -- return", "input+ -- return")),
         [("does-nothing", "C1"), ("input-shorted", "input+ -- return")]),
    Case("a part and a driver in no walk", two_way(woofer=(*WOOFER, "hp -- L2 -- return"), tweeter=(
         "input+ -- C2 -- hp -- R1 -- return",), declared="coil L9 1 mH"),
         [("part-not-wired", "L9"), ("part-not-wired", "tweeter")]),
    Case("a shorted driver, and a loop elsewhere", two_way(declared="resistor R9 6.8 ohm\ncapacitor C9 22 uF",
         woofer=(*WOOFER, "woofer+ -- woofer-"), tweeter=(*TWEETER, "hp -- R9 -- C9 -- hp")),
         [("driver-shorted", "woofer+ -- woofer-"), ("dead-twig", "R9")]),
    Case("a misspelt node in each leg",
         two_way(woofer=(WOOFER[0], "woofer+ -- C1 -- retrun", WOOFER[2]), tweeter=(TWEETER[0], "ph -- L2 -- return",
         TWEETER[2])), [("loose-node", "retrun"), ("loose-node", "ph")]),
    Case("a leg parted in the middle, and a shunt part that goes nowhere in the other",
         two_way(woofer=(WOOFER[0], "woofer+ -- C1", WOOFER[2]),
                 tweeter=("input+ -- C2 -- middle", "midle -- R1 -- tweeter+", "tweeter+ -- L2 -- return", TWEETER[2])),
         [("half-fitted", "C1"), ("loose-node", "midle")]),
    Case("two wires past two coils",
         two_way(woofer=(*WOOFER, "input+ -- woofer+"), tweeter=(*TWEETER, "hp -- tweeter+")),
         [("wired-across", "input+ -- woofer+"), ("wired-across", "hp -- tweeter+")]),
    Case("a double entry, and a clash of letter and kind",
         two_way(declared="capacitor L9 12 uF", woofer=(*WOOFER, "woofer+ -- L9 -- woofer-")),
         [("label-kind-clash", "L9"), ("double-entry", "L9")]),
    Case("an island, and a driver without a return wire",
         two_way(woofer=WOOFER[:2], tweeter=("high -- C2 -- tweeter+", "high -- R1 -- tweeter+", "high -- L2 -- low",
         "tweeter- -- low")), [("driver-one-lead", "woofer+"), ("two-islands", "tweeter+")]),
]  # fmt: skip


DOUBT = [
    Case("a node beside an unknown name, and nowhere else", two_way(woofer=(*WOOFER, "spur -- L7")),
         [("unknown-name", "L7")]),
    Case("a label typed for another part's", two_way(woofer=(WOOFER[0], "woofer+ -- C2 -- return", WOOFER[2])),
         [("walked-twice", "C2")]),
    Case("a driver's name misspelt", two_way(woofer=(*WOOFER[:2], "wofer- -- return")), [("unknown-name", "wofer")]),
    Case("a part declared inside a leg", two_way(woofer=("coil L9 1 mH", "input+ -- L9 -- L1 -- woofer+", *WOOFER[1:])),
         [("misplaced-statement", "coil L9 1 mH")]),
    Case("a used network that is nowhere declared", two_way(declared="use zobel as Z1 { re 6 ohm }",
         woofer=(*WOOFER, "woofer+ -- Z1 -- woofer-")), [("unknown-name", "zobel")]),
    Case("a driver in a file that is not there", 'include "drivers.shunt"\ncoil L1 1 mH\n'
         "leg woofer {\n input+ -- L1 -- woofer+\n woofer- -- return\n}\n", [("include-not-read", '"drivers.shunt"')]),
    Case("a walk with a name that is nowhere declared", two_way(woofer=("input+ -- L7 -- woofer+", *WOOFER[1:])),
         [("unknown-name", "L7")]),
    Case("a walk that cannot be read", two_way(woofer=("input+ -- L1 -- woofer+", WOOFER[1], "woofer- -- -- return")),
         [("syntax-error", "--")]),
    Case("a walk outside a leg", two_way(tweeter=TWEETER[:2], more="tweeter- -- return"),
         [("walk-outside-leg", "tweeter- -- return")]),
    Case("a part whose line cannot be read", two_way(woofer=(*WOOFER, "woofer+ -- R9 -- return"),
         declared="resistor R9 ((5 ohm"), [("syntax-error", "(")]),
    Case("a file that is not there", 'include "wiring.shunt"\ndriver woofer 8 ohm\ncoil L1 1 mH\n',
         [("include-not-read", '"wiring.shunt"')]),
    Case("too much in one leg is still found while another is in doubt",
         two_way(woofer=("input+ -- L7 -- woofer+", *WOOFER[1:], "input+ -- return"), declared="omit L1"),
         [("unknown-name", "L7"), ("input-shorted", "input+ -- return")]),
]  # fmt: skip


@pytest.mark.parametrize("case", HEALTHY, ids=lambda case: case.situation)
def test_nothing_is_found_in_a_healthy_design(case: Case) -> None:
    assert found_in(case.text) == []


@pytest.mark.parametrize("case", SLIPS, ids=lambda case: case.situation)
def test_one_mistake_gives_one_finding(case: Case) -> None:
    assert found_in(case.text) == case.expected


@pytest.mark.parametrize("case", PAIRS, ids=lambda case: case.situation)
def test_two_mistakes_give_two_findings(case: Case) -> None:
    assert sorted(found_in(case.text)) == sorted(case.expected)


@pytest.mark.parametrize("case", DOUBT, ids=lambda case: case.situation)
def test_what_was_lost_has_no_consequences(case: Case) -> None:
    assert sorted(found_in(case.text)) == sorted(case.expected)
