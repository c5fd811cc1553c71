"""Small boxes for the tests of intent and values: sound ones, to be changed in one place."""

from __future__ import annotations

from rules.compiling import findings_of
from shuntwise.source import Source

SHAPED = ("language", "wiring", "drivers", "intent", "values")
"""The families that judge the circuit by itself, without amplifier and ratings."""

FIRST_ORDER = """
driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
coil L1 0.47 mH { dcr 0.2 ohm }
capacitor C1 6.8 uF
leg woofer {
  input+ -- L1 -- woofer+
  woofer- -- return
}
leg tweeter {
  input+ -- C1 -- tweeter+
  tweeter- -- return
}
"""

SECOND_ORDER = """
driver woofer 8 ohm { re 5.9 ohm, le 0.4 mH, fs 61 Hz, qms 4.5, qes 0.48 }
driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH, fs 820 Hz, qms 2.2, qes 1.4 }
coil L1 0.82 mH { dcr 0.28 ohm }
capacitor C1 6.8 uF
capacitor C2 6.8 uF
coil L2 0.82 mH { dcr 0.4 ohm }
leg woofer {
  input+ -- L1 -- woofer+
  woofer+ -- C1 -- woofer-
  woofer- -- return
}
leg tweeter {
  input+ -- C2 -- tweeter-
  tweeter- -- L2 -- tweeter+
  tweeter+ -- return
}
"""

THIRD_ORDER = """
driver woofer 8 ohm { re 5.7 ohm, le 0.3 mH }
driver tweeter 8 ohm { re 6 ohm, le 0.04 mH, fs 760 Hz, qms 2.6, qes 1.3 }
coil L1 0.75 mH { dcr 0.24 ohm }
capacitor C1 10 uF
coil L2 0.27 mH { dcr 0.12 ohm }
capacitor C2 5.6 uF
coil L3 0.39 mH { dcr 0.3 ohm }
capacitor C3 15 uF
leg woofer {
  input+ -- L1 -- middle -- L2 -- woofer+
  middle -- C1 -- return
  woofer- -- return
}
leg tweeter {
  input+ -- C2 -- second -- C3 -- tweeter+
  second -- L3 -- return
  tweeter- -- return
}
"""

HORN = """
driver woofer 8 ohm { re 5.8 ohm, le 0.5 mH, fs 55 Hz, qms 4.6, qes 0.45 }
driver tweeter 8 ohm { re 6 ohm, le 0.05 mH, fs 800 Hz, qms 2.1, qes 1.2 }
coil L1 1.0 mH { dcr 0.25 ohm }
capacitor C1 10 uF
capacitor C2 5.6 uF
coil L2 0.56 mH { dcr 0.35 ohm }
resistor R1 3.9 ohm
resistor R2 8.2 ohm
leg woofer {
  input+ -- L1 -- woofer+
  woofer+ -- C1 -- return
  woofer- -- return
}
leg tweeter {
  input+ -- C2 -- hp -- R1 -- tweeter+
  hp -- L2 -- return
  tweeter+ -- R2 -- tweeter-
  tweeter- -- return
}
expect polarity of tweeter normal
allow polarity-even-order on tweeter because "measured: the horn stands back"
"""

ZOBEL = """
driver woofer 8 ohm { re 5.8 ohm, le 0.72 mH, fs 58 Hz, qms 5.2, qes 0.41 }
driver tweeter 8 ohm { re 6.1 ohm, le 0.06 mH, fs 900 Hz, qms 2.6, qes 1.4 }
coil L1 0.56 mH { dcr 0.2 ohm }
resistor R1 6.8 ohm
capacitor C1 22 uF
capacitor C2 5.6 uF
coil L2 0.56 mH { dcr 0.35 ohm }
leg woofer {
  input+ -- L1 -- woofer+
  woofer+ -- R1 -- C1 -- return
  woofer- -- return
}
leg tweeter {
  input+ -- C2 -- tweeter+
  tweeter+ -- L2 -- tweeter-
  tweeter- -- return
}
"""

NOTCH = """
driver woofer 8 ohm { re 5.9 ohm, le 0.42 mH }
driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH, fs 950 Hz, qms 2.5, qes 1.5 }
coil L1 0.68 mH { dcr 0.26 ohm }
coil L2 0.33 mH { dcr 0.18 ohm }
capacitor C1 2.2 uF
resistor R1 15 ohm
capacitor C2 4.7 uF
capacitor C3 4.7 uF
coil L3 0.47 mH { dcr 0.33 ohm }
leg woofer {
  input+ -- L1 -- (L2 | C1 | R1) -- woofer+
  woofer+ -- C2 -- woofer-
  woofer- -- return
}
leg tweeter {
  input+ -- C3 -- tweeter-
  tweeter- -- L3 -- tweeter+
  tweeter+ -- return
}
"""

THREE_WAY = """
driver woofer 8 ohm { re 5.8 ohm, le 0.9 mH, fs 38 Hz, qms 4.8, qes 0.42 }
driver mid 8 ohm { re 6 ohm, le 0.2 mH, fs 180 Hz, qms 3.1, qes 0.55 }
driver tweeter 8 ohm { re 6.2 ohm, le 0.04 mH, fs 1.1 kHz, qms 2.4, qes 1.6 }
coil L1 3.3 mH { dcr 0.38 ohm }
capacitor C1 27 uF
capacitor C2 27 uF
coil L2 3.3 mH { dcr 0.9 ohm }
coil L3 0.47 mH { dcr 0.25 ohm }
capacitor C3 3.3 uF
capacitor C4 3.3 uF
coil L4 0.47 mH { dcr 0.35 ohm }
leg woofer {
  input+ -- L1 -- woofer+
  woofer+ -- C1 -- woofer-
  woofer- -- return
}
leg mid {
  input+ -- C2 -- high -- L3 -- mid-
  high -- L2 -- return
  mid- -- C3 -- mid+
  mid+ -- return
}
leg tweeter {
  input+ -- C4 -- tweeter+
  tweeter+ -- L4 -- tweeter-
  tweeter- -- return
}
"""

SERIES_TYPE = """
driver woofer 8 ohm { re 6.1 ohm, le 0.3 mH }
driver tweeter 8 ohm { re 6.3 ohm, le 0.04 mH, fs 850 Hz, qms 2.3, qes 1.5 }
coil L1 0.47 mH { dcr 0.2 ohm }
capacitor C1 6.8 uF
leg woofer and tweeter {
  input+ -- tweeter+
  tweeter- -- middle
  middle -- woofer+
  woofer- -- return
  input+ -- L1 -- middle
  middle -- C1 -- return
}
"""

BI_WIRED = """
input low
posts high
link K1
link K2
driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
coil L1 0.47 mH
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
"""

TWO_WOOFERS = """
driver woofer1 8 ohm { re 5.9 ohm, le 0.45 mH }
driver woofer2 8 ohm { re 5.9 ohm, le 0.45 mH }
driver tweeter 8 ohm { re 6.1 ohm, le 0.05 mH, fs 870 Hz, qms 2.4, qes 1.4 }
coil L1 0.56 mH { dcr 0.15 ohm }
capacitor C1 15 uF
capacitor C2 5.6 uF
coil L2 0.56 mH { dcr 0.35 ohm }
leg woofer1 and woofer2 {
  input+ -- L1 -- pair
  pair -- woofer1+
  pair -- woofer2+
  pair -- C1 -- return
  woofer1- -- return
  woofer2- -- return
}
leg tweeter {
  input+ -- C2 -- tweeter-
  tweeter- -- L2 -- tweeter+
  tweeter+ -- return
}
variant in_a_row {
  driver woofer1 4 ohm { re 3 ohm, le 0.25 mH }
  driver woofer2 4 ohm { re 3 ohm, le 0.25 mH }
  set L1 = 1.0 mH
  set L1.dcr = 0.25 ohm
  set C1 = 8.2 uF
  leg woofer1 and woofer2 {
    input+ -- L1 -- woofer1+
    woofer1- -- woofer2+
    woofer2- -- return
    woofer1+ -- C1 -- return
  }
}
"""


def changed(text: str, *changes: tuple[str, str]) -> str:
    """The text with each first member replaced by the second; each must be there."""
    for old, new in changes:
        assert old in text, old
        text = text.replace(old, new, 1)
    return text


def found_in(text: str) -> list[tuple[str, str]]:
    """Names of all findings, each with the text that it points at."""
    return [(f.name, f.span.text) for f in findings_of(Source("box.shunt", text), SHAPED)]
