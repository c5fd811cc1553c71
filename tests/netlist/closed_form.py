"""The closed-form networks of `reference/10_networks.toml` as `Network`s, with their node voltages.

Source of the values: solved symbolically in exact rationals with lcapy 1.26, without a simulator.
"""

import csv
import tomllib
from pathlib import Path

from shuntwise.network.network import GROUND, Coupling, DriverPort, Element, Feed, Network

REFERENCE = Path(__file__).parents[1] / "reference"

DRIVERS = {
    "N1": [("woofer", "w", GROUND), ("tweeter", "t", GROUND)],
    "N2": [("woofer", "w", GROUND), ("tweeter", "3", GROUND)],
    "N3": [("tweeter", "5", GROUND)],
    "N4": [("bridged", "a", "b"), ("reversed", "b", "a")],
    "N5": [("upper", "1", "m"), ("lower", "m", GROUND)],
    "N6": [("whole", "b", GROUND), ("coil", "b", "d"), ("reversed", GROUND, "d")],
}
"""Where a driver's voltage is read in each network, floating and reversed ones among them."""

SERIES_RESISTOR = {"N1": ("in", "1", 0.1), "N3": ("1", "2", 0.5), "N4": ("1", "in", 0.05)}
"""The resistor that carries the whole input current, if any: it gives the impedance from two voltages."""


def networks() -> dict[str, Network]:
    table = tomllib.loads((REFERENCE / "10_networks.toml").read_text(encoding="utf-8"))
    return {name: _network(name, entry) for name, entry in table.items() if name in DRIVERS}


def _network(name: str, entry: dict) -> Network:
    elements, couplings, feeds = [], [], []
    for line in entry["netlist"]:
        label, first, second, *value = line.split()
        if label[0] == "V":
            feeds.append(Feed("input", first))
        elif label[0] == "K":
            couplings.append(Coupling(label, first, second, float(value[0])))
        else:
            elements.append(Element(label, label[0], first, second, float(value[0]), label))
    drivers = tuple(DriverPort(*driver) for driver in DRIVERS[name])
    return Network(tuple(elements), tuple(couplings), tuple(feeds), drivers, (), entry["title"])


def node_voltages() -> dict[str, dict[float, dict[str, complex]]]:
    """By network, frequency in hertz and node: the voltage for a source of 1 V."""
    found: dict[str, dict[float, dict[str, complex]]] = {}
    with (REFERENCE / "10_node_voltages.csv").open(encoding="utf-8", newline="") as file:
        rows = csv.reader(file)
        next(rows)
        for network, freq_hz, node, real, imaginary in rows:
            at = found.setdefault(network, {}).setdefault(float(freq_hz), {GROUND: 0j})
            at[node] = complex(float(real), float(imaginary))
    return found
