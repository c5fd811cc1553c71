"""Texts with boards, resolved: what the tests of boards and layouts share."""

from __future__ import annotations

from shuntwise.diagnostics.diagnostic import Diagnostic
from shuntwise.model.design import Design
from shuntwise.model.include import include, nothing_to_include
from shuntwise.model.resolve import resolve
from shuntwise.source import Source
from shuntwise.syntax.parser import parse

STRIP = """\
board strip "Strip" {
  outline 100:40 mm
  thickness 1.6 mm
  area north from 10:25 mm to 90:35 mm
  holes north 3 of 1.3 mm from 20:30 mm to 80:30 mm
  holes south 4 of 1.3 mm from 20:8 mm to 80:8 mm { ring 4 mm }
  hole lug of 2 mm at 90:12 mm
  tags upper 3 from 10:38 mm to 30:38 mm
}
"""
BOX = """\
driver woofer 8 ohm
coil L1 0.82 mH
resistor R1 3.3 ohm
tapped coil T1 1.2 mH { tap 0.3 mH }
"""


def resolved(text: str, variant: str | None = None) -> tuple[Design, tuple[Diagnostic, ...]]:
    tree, form = parse(Source("box.shunt", text))
    collected, found = include(tree, nothing_to_include)
    design, said = resolve(collected, variant=variant)
    return design, (*form, *found, *said)


def layout(lines: str) -> str:
    return f"{BOX}{STRIP}layout on strip {{\n{lines}\n}}\n"
