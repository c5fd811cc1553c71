"""A check that lacks something says what: a fact left out of a sound design, and the entry that tells of it."""

from __future__ import annotations

import pytest

from shuntwise.api import load_text

BOX = """
amplifier 60 W into 8 ohm { least 4 ohm }
driver woofer 8 ohm { re 6.1 ohm, le 0.35 mH, fs 72 Hz, qms 3.8, qes 0.62, 80 W }
driver tweeter 8 ohm { re 6.3 ohm, le 0.05 mH, fs 900 Hz, qms 2.4, qes 1.5, 40 W }
coil L1 0.47 mH { dcr 0.22 ohm, 5 %, air core }
capacitor C1 6.8 uF { 5 %, 250 V, film }
leg woofer {
  input+ -- L1 -- woofer+
  woofer- -- return
}
leg tweeter {
  input+ -- C1 -- tweeter+
  tweeter- -- return
}
"""
ASSUMED = BOX.replace("re 6.3 ohm, le 0.05 mH, fs 900 Hz, qms 2.4, qes 1.5, ", "")


def lacks(text: str) -> set[tuple[str, tuple[str, ...]]]:
    return {(entry.name, entry.subjects) for entry in load_text(text).not_checked}


def test_a_design_that_states_all_lacks_nothing() -> None:
    assert lacks(BOX) == set()


@pytest.mark.parametrize(
    ("text", "name", "subjects"),
    [
        (BOX.replace("fs 900 Hz, qms 2.4, qes 1.5, ", ""), "tweeter-too-low", ("tweeter",)),
        (BOX.replace(", air core", ""), "coil-saturates", ("L1",)),
        (BOX.replace(", film", ""), "cap-current", ("C1",)),
        (ASSUMED.replace("amplifier 60 W into 8 ohm { least 4 ohm }", ""), "driver-assumed", ("tweeter",)),
    ],
)
def test_what_is_left_out_is_told(text: str, name: str, subjects: tuple[str, ...]) -> None:
    assert (name, subjects) in lacks(text)


def test_a_capacitor_of_a_stated_current_needs_no_construction() -> None:
    assert "cap-current" not in {name for name, _ in lacks(BOX.replace(", film", ", 4 A"))}
