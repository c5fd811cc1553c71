"""Boards of example 7 on the bench, by ngspice: what a builder's meter shows, from decks typed by hand from its text.

Parts are off by a few per cent within their tolerances, the ohmmeter's leads add 0.1 ohm, the voltmeter is 1 % high.
"""

from __future__ import annotations

import re
import subprocess
from pathlib import Path

PARTS = {
    "L1": ["L1 in l1m 0.98m", "R_L1 l1m w 0.25"],
    "C1": ["C1 w c1m 10.2u", "R_C1 c1m 0 0.03"],
    "C2": ["C2 in c2m 5.5u", "R_C2 c2m hp 0.03"],
    "L2": ["L2 hp l2m 0.57m", "R_L2 l2m 0 0.36"],
    "R1": ["R1 hp t 3.95"],
    "R2": ["R2 t 0 8.1"],
}
NODES = {"input+": "in", "input-": "0", "woofer+": "w", "woofer-": "0", "tweeter+": "t", "tweeter-": "0"}
LOADS = {"drivers off": [], "dummies on": ["RW w 0 8.05", "RT t 0 7.96"], "drivers on": ["RW w 0 5.8", "RT t 0 6"]}
LEADS_OHM, METER, RANGE_OHM = 0.1, 1.01, 2000.0

_QUESTION = re.compile(r"(resistance|volts) (?:at (\S+)|(\S+) to (\S+)), ([^,]+)(?:, ([\d.]+) (k?)Hz)?")


class Board:
    """One board; `lacks` are parts with an end off."""

    def __init__(self, folder: Path, lacks: tuple[str, ...] = ()) -> None:
        self.folder, self.lacks = folder, lacks

    def answer(self, question: str) -> str:
        """What the meter shows, typed as it is asked for."""
        match = _QUESTION.fullmatch(question)
        assert match, question
        quantity, name, plus, minus, loads, freq, kilo = match.groups()
        ends = (f"{name}+", f"{name}-") if name else (plus, minus)
        nodes = NODES[ends[0]], NODES[ends[1].rstrip(",")]
        if quantity == "volts":
            freq_hz = float(freq) * (1000 if kilo else 1)
            volts = self.run(nodes, loads, freq_hz) * METER if nodes[0] != nodes[1] else 0.0
            return f"{volts:.3g} V" if volts >= 1 else f"{1000 * volts:.3g} mV"
        ohm = self.run(nodes, loads, 0.0) + LEADS_OHM if nodes[0] != nodes[1] else LEADS_OHM
        return "open" if ohm > RANGE_OHM else f"{ohm:.1f} ohm"

    def run(self, nodes: tuple[str, str], loads: str, freq_hz: float) -> float:
        """Volts between two nodes, or ohm at 0 Hz, where 1 mA flows through the two."""
        fed = (
            ["VG gen 0 AC 2", "RG gen in 10", ".control", f"ac lin 1 {freq_hz} {freq_hz}"]
            if freq_hz
            else [f"IX {nodes[1]} {nodes[0]} 1m", ".control", "op"]
        )
        difference = "-".join(f"v({node})" for node in nodes if node != "0")
        deck = [
            "* a board of the market-square horn box",
            *(line for label, lines in PARTS.items() if label not in self.lacks for line in lines),
            *LOADS[loads],
            *(f"RX{number} {node} 0 1g" for number, node in enumerate(("in", "w", "t", "hp"))),
            *fed,
            f"print mag({difference})",
            "quit",
            ".endc",
            ".end",
        ]
        path = self.folder / "board.cir"
        path.write_text("\n".join(deck) + "\n")
        done = subprocess.run(
            ["ngspice", "-b", "-n", str(path)], capture_output=True, text=True, timeout=30, cwd=self.folder, check=False
        )
        shown = re.search(r"mag\(.*\) = (\S+)", done.stdout)
        assert shown, done.stdout + done.stderr
        return float(shown[1]) if freq_hz else 1000 * float(shown[1])
