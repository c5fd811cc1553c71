"""Designs for boxes to be built from, and a box's text read against one."""

from __future__ import annotations

from pathlib import Path

from shuntwise.boxes import BoxRead, DesignRead, Near, read_text
from shuntwise.loading import loader
from shuntwise.model.include import Loaded, NotLoaded
from shuntwise.pipeline import read as read_design
from shuntwise.source import Source

WEDGE = """design "Wedge with everything"
include "lpad" from library
driver woofer 8 ohm
driver sub 4 ohm { coils 2, role woofer, re 3.2 ohm, le 0.8 mH, fs 38 Hz, qms 5.2, qes 0.44 }
driver tweeter 8 ohm
coil L1 0.82 mH { 5 % }
capacitor C1 6.8 uF { 5 % }
lamp B1 5 ohm
fuse F1 2.5 A
link K1
use lpad as P1 { loss 4 dB, rated 20 W }
bench { source 1 V, meter 3 % }
leg woofer {
  input+ -- F1 -- L1 -- mitte -- K1 -- woofer+
  woofer- -- return
}
leg sub {
  input+ -- sub.a+
  sub.a- -- sub.b+
  sub.b- -- return
}
leg tweeter {
  input+ -- C1 -- B1 -- hp -- P1 -- tweeter+
  P1.back -- tweeter-
  tweeter- -- return
}
variant soft {
  set C1 = 5.6 uF
}
"""

TWO_INPUTS = """input low
input high
posts posts3
driver woofer 8 ohm
driver tweeter 8 ohm
capacitor C1 6.8 uF
leg woofer {
  low+ -- woofer+
  woofer- -- low-
}
leg tweeter {
  high+ -- C1 -- tweeter+
  tweeter- -- high-
  posts3+ -- tweeter+
  posts3- -- tweeter-
}
"""


def read(text: str, design: str = WEDGE, **beside: str) -> BoxRead:
    """A box's text, its design being `a.shunt`; `beside` are further texts by their names without `.txt` or `.box`."""
    files = {
        "a.shunt": design,
        **{f"{name}{ending}": text for name, text in beside.items() for ending in (".txt", ".box")},
    }

    def near(path: str) -> Loaded | NotLoaded:
        return Loaded(Source(path, files[path]), path) if path in files else NotLoaded("is not there", "")

    def of(path: str) -> DesignRead | NotLoaded:
        found = near(path)
        if isinstance(found, NotLoaded):
            return found
        return DesignRead(*read_design(found.source, loader(Path("a.shunt"), "a.shunt")), path, path)

    def sister(path: str) -> BoxRead | NotLoaded:
        found = near(path)
        return found if isinstance(found, NotLoaded) else read_text(found.source, there, with_sister=False)

    there = Near(of, near, sister)
    return read_text(Source("left.box", text), there)
