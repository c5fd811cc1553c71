"""What faults do, against ngspice on a netlist of the box as the fault leaves it, written by hand as a design."""

from __future__ import annotations

from functools import cache

import numpy as np
import pytest

from documents.designs import one
from engines.installed import needs
from shuntwise.bench.effects import FREQ_HZ, Effects
from shuntwise.bench.faults import Fault
from shuntwise.bench.rig import rig_of
from shuntwise.engines.engine import EngineResult
from shuntwise.engines.ngspice import NGSPICE
from shuntwise.netlist.spice import emit
from shuntwise.network.network import Network
from shuntwise.network.sweep import Sweep
from shuntwise.units import HERTZ, OHM, write

BOX = """
design "Two ways"
amplifier 100 W into 8 ohm { least 4 ohm }
driver woofer 8 ohm { re 5.8 ohm, le 0.5 mH, fs 55 Hz, qms 4.6, qes 0.45 }
driver tweeter 8 ohm { re 6 ohm, le 0.05 mH, fs 800 Hz, qms 2.1, qes 1.2 }
coil L1 1.0 mH { dcr 0.25 ohm, 5 % }
capacitor C1 10 uF { 5 %, esr 0.05 ohm }
capacitor C2 5.6 uF { 5 %, esr 0.05 ohm }
coil L2 0.56 mH { dcr 0.35 ohm, 5 % }
resistor R1 3.9 ohm { 5 % }
resistor R2 8.2 ohm { 5 % }
leg woofer {
  input+ -- L1 -- woofer+
  woofer+ -- C1 -- return
  woofer- -- return
}
leg tweeter {
  input+ -- C2 -- hp -- R1 -- tweeter+
  hp -- L2 -- return
  tweeter+ -- R2 -- return
  tweeter- -- return
}
"""
FAULTS = {
    "R1 open": (Fault("open", ("R1",)), 1.0, ("R1 3.9 ohm", "R1 1 Mohm")),
    "C1 at the input": (Fault("moved", ("C1",), ("C1.start",), "input+"), 1.0, ("woofer+ -- C1", "input+ -- C1")),
    "C2 small": (Fault("value", ("C2",), size=(0.05, 0.8)), 0.25, ("C2 5.6 uF", "C2 1.4 uF")),
    "C2 shorted": (
        Fault("short", ("C2",), ("C2.start", "C2.end")),
        1.0,
        ("capacitor C2 5.6 uF { 5 %, esr 0.05 ohm }", "resistor C2 0.01 ohm { 5 % }"),
    ),
    "L1 joint": (Fault("joint", ("L1",), ("L1.start",), size=(0.5, 20)), 3.0, ("dcr 0.25 ohm", "dcr 3.25 ohm")),
}


@cache
def effects() -> Effects:
    return Effects(rig_of(one(BOX).circuit))


@cache
def by_ngspice(was: str, now: str) -> EngineResult:
    network = one(BOX.replace(was, now)).lowered
    assert isinstance(network, Network)
    found = NGSPICE.run(emit(network, Sweep(20.0, 20e3, 13), design_title="box"))
    assert np.allclose(found.freq_hz, FREQ_HZ)
    return found


@needs(NGSPICE)
@pytest.mark.parametrize("name", FAULTS)
def test_levels_and_load_are_those_of_ngspice(name: str) -> None:
    fault, size, edit = FAULTS[name]
    found, usual = by_ngspice(*edit), by_ngspice("box", "box")
    told = effects().of(fault, size)
    ohm = np.abs(found.impedances["input"])
    at = int(ohm.argmin())
    load = f"the amplifier meets {write(float(ohm[at]), OHM, 2)} at {write(float(FREQ_HZ[at]), HERTZ, 2)}"
    assert (f"{load}: less than the 4 ohm that it may drive" in told) is bool(ohm[at] < 3.8)
    for driver in ("woofer", "tweeter"):
        level, before = (20 * np.log10(np.abs(of.driver_voltages[driver])) for of in (found, usual))
        own = before > before.max() - 6
        change = (level - before)[own]
        words = " / ".join(one for one in told if one.startswith(f"the {driver} is "))
        if (change < -60).all():
            assert words == f"the {driver} is silent"
        elif np.abs(change).max() < 0.9:
            assert "quieter" not in words
        elif change.min() < -1.1 and -change.min() > (level - before)[level > before.max() - 6].max(initial=0.0):
            assert f"{-change.min():.2g} dB quieter" in words


def test_what_is_dangerous_comes_first() -> None:
    told = effects().of(Fault("short", ("C2",), ("C2.start", "C2.end")))
    assert told[0] == "direct current of the amplifier reaches the tweeter: its voice coil may burn"
    assert told[1].startswith("the tweeter is more than 60 dB louder below") and told[1].endswith("be destroyed")
    # By hand: 0.01 ohm of the short, and then L2's 0.35 ohm beside R1 and the tweeter (7.4 ohm).
    assert told[2].startswith("the amplifier meets 0.34 ohm at 20 Hz")


def test_who_is_turned_round() -> None:
    words = "the {} is turned round against the rest: most likely a dip where they cross"
    for driver in ("woofer", "tweeter"):
        fault = Fault("reversed", (driver,), (f"{driver}+", f"{driver}-"))
        assert effects().of(fault) == (words.format(driver),)
    # Its plus on the pad's lower end and its minus on the upper one, too.
    assert words.format("tweeter") in effects().of(Fault("moved", ("tweeter",), ("tweeter-",), "hp"))


def test_instruments_do_nothing_to_the_box() -> None:
    assert effects().of(Fault("meter", size=(0.6, 0.98)), 0.9) == ()
    assert effects().of(Fault("drift", ("C2",), size=(0.9, 0.95)), 0.99) == ("changes no level by 1 dB or more",)
