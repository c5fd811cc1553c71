"""Boards whose faults are told in the tests: one, not laid out, with a part of each kind that has its own faults."""

from __future__ import annotations

from functools import cache
from pathlib import Path

from documents.designs import one
from shuntwise.bench.naming import Telling
from shuntwise.bench.rig import rig_of

EXAMPLES = Path(__file__).parents[2] / "examples"

EVERY_KIND = """
design "All kinds"
amplifier 100 W into 8 ohm { least 4 ohm }
driver woofer 8 ohm { re 5.8 ohm, le 0.5 mH, fs 55 Hz, qms 4.6, qes 0.45 }
driver tweeter 8 ohm { re 6 ohm, le 0.05 mH, fs 800 Hz, qms 2.1, qes 1.2 }
coil L1 3.3 mH { dcr 0.4 ohm, 5 %, ferrite core }
capacitor C1 47 uF { 10 %, non-polar electrolytic, esr 0.2 ohm }
fuse F1 4 A { cold 0.03 ohm }
capacitor C2 6.8 uF { 5 %, film, esr 0.05 ohm }
tapped coil T1 0.6 mH { tap -3 dB, dcr 0.3 ohm }
resistor R1 3.9 ohm { 5 % }
resistor R2 8.2 ohm { 5 % }
link K1
link K2
leg woofer {
  input+ -- L1 -- woofer+
  woofer+ -- C1 -- return
  woofer- -- return
}
leg tweeter {
  input+ -- F1 -- C2 -- hp -- T1.end
  T1.start -- return
  T1.tap -- R1 -- level
  level -- R2 -- return
  level -- K1 -- tweeter+
  hp -- K2 -- tweeter+
  tweeter- -- return
}
omit K2
"""


@cache
def telling() -> Telling:
    return Telling(rig_of(one(EVERY_KIND).circuit))
