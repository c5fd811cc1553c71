"""Connectors: what their pins are, and what they carry in each mode."""

from __future__ import annotations

from pathlib import Path

import pytest

from shuntwise.documents.page import Table
from shuntwise.documents.pins import carried, table
from shuntwise.pipeline import Compilation
from shuntwise.workspace import Workspace

EXAMPLE = Path(__file__).parents[2] / "examples" / "18-circus-top.shunt"
BOX = """
driver woofer 8 ohm
driver tweeter 8 ohm
capacitor C1 4.7 uF
input low
input high
leg woofer {
  low+ -- woofer+
  woofer- -- low-
}
leg tweeter {
  high+ -- C1 -- tweeter+
  tweeter- -- high-
}
"""
PINS = ("pin-carries-two", "pin-turned", "input-on-no-pin")


def compiled(text: str) -> Compilation:
    return Workspace.of_text(text).compilation()


def told(text: str) -> list[str]:
    return [finding.name for finding in compiled(text).findings if finding.name in (*PINS, "unknown-name")]


def test_what_a_pin_carries_follows_from_the_mode() -> None:
    work = Workspace(str(EXAMPLE))
    by_mode = {
        v: {one.pin.name: one.whence for one in carried(work.compilation(v).circuit)} for v in (None, *work.variants)
    }
    assert by_mode[None] == {
        "1+": "fed by its amplifier",
        "1-": "fed by its amplifier",
        "2+": "joined to low+",
        "2-": "joined to low-",
    }
    assert set(by_mode["two_amplifiers"].values()) == {"fed by its amplifier"}
    (rows,) = (block.rows for block in table(work.compilation().circuit) if isinstance(block, Table))
    assert rows[-1] == ("onward", "all", "", "linked through to rear")


@pytest.mark.parametrize(
    ("connectors", "found"),
    [
        ("connector rear { 1+ low+, 1- low-, 2+ high+, 2- high- }", []),
        ("connector rear {\n  1+ low+\n  1- low-\n  2+ high+\n  2- high-\n}\nconnector front through rear", []),
        ("connector a { tip low+, sleeve low- }\nconnector b { 1+ high+, 1- high-, 2+ unused }", []),
        ("connector a { 1+ low+, 1- low- }\nconnector b { 1+ high+, 1- high- }", ["pin-carries-two"]),
        ("connector a { 1+ low+, 1+ high+, 1- low-, 2- high- }", ["pin-carries-two"]),
        ("connector a { 1+ low-, 1- low+, 2+ high+, 2- high- }", ["pin-turned"]),
        ("connector a { 1+ low+, 1- low- }", ["input-on-no-pin"]),
        ("connector a { 1+ low+, 1- low+, 2+ high+, 2- high-, 3+ low- }", ["pin-turned"]),
        ("connector a { 1+ low+, 1- low-, 2+ hihg+, 2- high- }", ["unknown-name"]),
        ("connector a { 1+ low+, 1- low-, 2+ high+, 2- high- }\nconnector b through c", ["unknown-name"]),
        ("connector a { 1+ woofer+ }", ["unknown-name"]),
    ],
)
def test_pins(connectors: str, found: list[str]) -> None:
    assert told(f"{BOX}{connectors}\n") == found


def test_pads_that_links_join_are_one_thing() -> None:
    text = BOX.replace("input high", "posts high\nlink K1\nlink K2")
    text += "leg woofer and tweeter {\n low+ -- K1 -- high+\n low- -- K2 -- high-\n}\n"
    text += "connector a { 1+ low+, 1- low- }\nconnector b { 1+ high+, 1- high- }\n"
    assert told(text) == []
    assert told(text + "omit K1\n") == ["pin-carries-two"]


def test_a_node_may_be_called_connector() -> None:
    text = BOX.replace("high+ -- C1 -- tweeter+", "high+ -- C1 -- connector\n connector -- tweeter+")
    assert [f.name for f in compiled(text).findings if f.severity.name == "ERROR"] == []
