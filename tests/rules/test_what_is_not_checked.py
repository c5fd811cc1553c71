"""A check that lacks something says what: a fact left out of a sound design, and the entry that tells of it."""

from __future__ import annotations

from pathlib import Path

import pytest

from shuntwise.api import load_text
from shuntwise.board import copper
from shuntwise.checks.registry import FAMILIES
from shuntwise.workspace import Workspace

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


HORN = (Path(__file__).parents[2] / "examples" / "07-market-horn.shunt").read_text(encoding="utf-8")
ON_BOARDS = {module.RULE.name for module in FAMILIES["board"]}


def lacking(text: str, folder: Path) -> dict[str, str]:
    file = folder / "horn.shunt"
    file.write_text(text, encoding="utf-8")
    (compilation,) = Workspace(str(file)).compilations
    return {entry.name: entry.lacks for entry in compilation.not_checked if entry.name in ON_BOARDS}


def test_a_layout_that_is_read_whole_is_checked(tmp_path: Path) -> None:
    assert lacking(HORN, tmp_path) == {}


def test_of_a_layout_with_an_unread_line_nothing_on_boards_passes_in_silence(tmp_path: Path) -> None:
    old = "lead out h4 to tweeter+"
    assert HORN.count(old) == 1
    told = lacking(HORN.replace(old, "lead out h9 to tweeter+"), tmp_path)
    assert told == dict.fromkeys(ON_BOARDS, "a layout `gusset` that could be read whole")


def test_nor_of_copper_that_is_too_fine(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """The bound is brought down: a true example has 2,000 cuts."""
    monkeypatch.setattr(copper, "MOST_PIECES", 5)
    told = lacking(HORN, tmp_path)
    assert told == dict.fromkeys(ON_BOARDS, "copper of `gusset` in fewer pieces than its cuts leave")
