"""Single slips made in the shipped examples: the wiring checks find each, and say it once."""

from __future__ import annotations

import random
from collections.abc import Iterator
from pathlib import Path

import pytest

from rules.compiling import findings_of
from shuntwise.source import Source

EXAMPLES = Path(__file__).parents[2] / "examples"
FAMILIES = ("language", "wiring")
BOXES = ("05-cafe-series", "07-market-horn", "09-scout-double-ten", "10-museum-loop", "12-ferry-deck")


def slips(text: str) -> Iterator[tuple[str, str]]:
    """Each walk forgotten, cut short at either end, led to a misspelt return, or bare of its parts.

    Of a walk through a tap or port, or one that is a wire alone, only some of these are slips.
    """
    lines = text.split("\n")
    for number, line in enumerate(lines):
        if " -- " not in line or line.lstrip().startswith("jumper"):
            continue
        stations = line.strip().split(" -- ")
        changed = {"forgotten": "", "to a misspelt return": line.replace("return", "retrun")}
        if len(stations) > 2:
            changed["without its last station"] = " -- ".join(stations[:-1])
            changed["without its first station"] = " -- ".join(stations[1:])
            changed["without its parts"] = f"{stations[0]} -- {stations[-1]}"
        for slip, new in changed.items():
            if new != line:
                yield f"{line.strip()} {slip}", "\n".join([*lines[:number], new, *lines[number + 1 :]])


@pytest.mark.parametrize("box", BOXES)
def test_each_slip_has_one_finding(box: str) -> None:
    text = (EXAMPLES / f"{box}.shunt").read_text(encoding="utf-8")
    told = {slip: findings_of(Source("box.shunt", changed), FAMILIES) for slip, changed in slips(text)}
    assert {slip: [f.name for f in found] for slip, found in told.items() if len(found) != 1} == {}


POINTS = ("input+", "return", "woofer+", "woofer-", "tweeter+", "tweeter-", "hp", "lp", "bar", "K1", "T1.tap")
PARTS = ("L1", "L2", "C1", "C2", "R1", "R2", "T1", "Z1", "(L1 | C1)", "(R1 -- R2 | hp -- C2)")


def test_any_wiring_gives_findings_and_no_exception() -> None:
    """Walks through things chosen by chance, with fixed seeds: 200 designs."""
    for seed in range(200):
        chance = random.Random(seed)
        walks = [
            " -- ".join(chance.choice(PARTS if chance.random() < 0.4 else POINTS) for _ in range(chance.randint(2, 5)))
            for _ in range(chance.randint(1, 9))
        ]
        text = "\n".join(
            (
                'include "zobel" from library',
                "driver woofer 8 ohm",
                "driver tweeter 8 ohm",
                *(f"coil L{n} 1 mH\ncapacitor C{n} 10 uF\nresistor R{n} 5 ohm" for n in (1, 2)),
                "tapped coil T1 1 mH { tap 0.3 mH }",
                "use zobel as Z1 { re 6 ohm, le 0.5 mH, rated 20 W, voltage 100 V }",
                "link K1",
                "leg woofer and tweeter {",
                *walks,
                "}",
            )
        )
        found = findings_of(Source(f"seed {seed}", text), FAMILIES)
        assert found, text
