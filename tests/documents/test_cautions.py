"""Cautions: what in this design can hurt somebody stands first and by name; the general ones once."""

from __future__ import annotations

import pytest

from documents.designs import EXAMPLES, checked, one
from shuntwise.documents.cautions import GENERAL, cautions
from shuntwise.network.network import Network
from shuntwise.response.solve import Solver
from shuntwise.stress.stress import work_out

BOX = """
amplifier 100 W into 8 ohm {{ least 4 ohm, programme sine{more} }}
driver woofer 8 ohm {{ re 6 ohm }}
resistor R1 {ohm} ohm {{ 500 W }}
resistor R2 2 ohm {{ 500 W }}
leg woofer {{
  input+ -- R1 -- woofer+
  woofer- -- return
  input+ -- {side}
}}
"""


def said(text: str) -> list[str]:
    made = one(text)
    assert isinstance(made.lowered, Network)
    found = cautions(made.design, work_out(made.design, Solver(made.lowered)))
    assert tuple(found[-len(GENERAL) :]) == GENERAL and len(set(found)) == len(found)
    return found[: -len(GENERAL)]


def test_the_load_with_a_driver_off_is_told_where_the_amplifier_may_not_drive_it() -> None:
    """With the woofer off two ohms are left, and the amplifier may drive four."""
    assert said(BOX.format(more="", ohm=2, side="R2 -- return"))[0] == (
        "With woofer unplugged the load falls to 2 ohm at 20 Hz: never run the box so."
    )
    assert not any("unplugged" in line for line in said(BOX.format(more="", ohm=2, side="R2 -- woofer+")))


def test_hot_parts_are_named() -> None:
    """28.3 V on 2 + 6 ohm are 25 W in R1; through 1000 ohm hardly anything flows."""
    assert "Hot at the amplifier's limit: R1." in said(BOX.format(more="", ohm=2, side="R2 -- input+"))[0]
    assert said(BOX.format(more="", ohm=1000, side="R2 -- input+")) == []


def test_a_bridged_amplifier_and_fuses_are_told_of() -> None:
    text = BOX.format(more=", bridged", ohm=1000, side="R2 -- input+")
    assert said(text)[0].startswith("The amplifier is bridged: its minus is live. Never clip it to an earthed lead")
    fused = text.replace("input+ -- R1", "input+ -- F1 -- R1") + "fuse F1 4 A { cold 0.02 ohm }\n"
    assert "Replace F1 by the same rating and kind only, never by wire." in said(fused)


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.stem)
def test_every_example_gets_them(path) -> None:  # type: ignore[no-untyped-def]
    compilation = checked(path)[0]
    assert isinstance(compilation.lowered, Network)
    stress = work_out(compilation.design, Solver(compilation.lowered))
    found = cautions(compilation.design, stress)
    assert len(found) >= len(GENERAL) and all("nan" not in line and "inf" not in line for line in found)
