"""Boards on the bench are what they are said to be: held against the netlist in ngspice, and against formulas.

The formulas are Ohm's law and the impedances of R, L and C in series and side by side; nothing else is needed.
"""

from __future__ import annotations

from cmath import pi
from collections.abc import Callable
from pathlib import Path
from random import Random
from statistics import pstdev

import pytest

from engines.installed import needs
from faultfinding import decks
from faultfinding.boards import NONE, TURN_HZ, UNSTATED_ESR_OHM, Errors, Plan, drawn_size, spoil
from faultfinding.cases import made
from faultfinding.targets import EXAMPLES, OWN, Target
from shuntwise.api import load_text
from shuntwise.bench.faults import Fault
from shuntwise.engines import ngspice
from shuntwise.model.box import DRIVERS_OFF, DRIVERS_ON, DUMMIES_ON, OPEN, Instruments, Reading
from shuntwise.netlist.spice import emit
from shuntwise.network.lower import lower
from shuntwise.network.network import Network
from shuntwise.network.sweep import Sweep

pytestmark = needs(ngspice.NGSPICE)

USUAL = Instruments()
HELD = ("02-rehearsal-wedge", "12-ferry-deck", "17-cinema-sub", "salt-mine", "swim-school")
FROM_SOURCE = [path for path in (*EXAMPLES, *OWN) if path.stem in HELD]

ROW = """\
driver woofer 8 ohm
driver tweeter 8 ohm
coil L1 1 mH { dcr 0.5 ohm, ferrite core }
coil L2 0.5 mH { dcr 0.3 ohm }
capacitor C1 10 uF { esr 0.2 ohm, non-polar electrolytic }
resistor R1 5 ohm
resistor R2 12 ohm
link K1
link K2
omit K2
leg woofer {
  input+ -- L1 -- woofer+
  woofer- -- return
}
leg tweeter {
  input+ -- C1 -- K1 -- knee -- R1 -- tweeter+
  knee -- K2 -- spare
  spare -- L2 -- return
  tweeter+ -- R2 -- return
  tweeter- -- return
}
"""


@pytest.mark.parametrize("path", FROM_SOURCE, ids=[path.stem for path in FROM_SOURCE])
def test_a_sound_board_is_the_network_that_the_netlist_has(path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """With no resistance in the wires, no voltmeter, and of the amplifier and its cable what the design states."""
    monkeypatch.setattr(decks, "WIRE_OHM", 1e-7)
    monkeypatch.setattr(decks, "VOLTMETER_OHM", 1e12)
    plan = Plan(Target(path).circuit())
    network = lower(plan.circuit)
    assert isinstance(network, Network)
    result = ngspice.run(emit(network, Sweep(30.0, 20_000.0, 2), design_title=""))
    inside = sum(element.value for element in network.elements if element.quantity in ("source", "cable"))
    readings = [
        Reading("volts", f"{name}+", f"{name}-", DRIVERS_ON, float(freq_hz))
        for name in result.driver_voltages
        for freq_hz in result.freq_hz
    ]
    found = decks.true_values(plan, [(plan.board(Random(1)), readings)], Instruments(source_v=1.0, series_ohm=inside))
    wanted = [abs(volt) for name in result.driver_voltages for volt in result.driver_voltages[name]]
    assert found[0] == pytest.approx(wanted, abs=1e-6)


def _plan() -> Plan:
    return Plan(load_text(ROW).circuit)


def _read(fault: Fault | None, *readings: Reading, size: float = 1.0, seed: int = 1) -> list[float]:
    plan = _plan()
    board = plan.board(Random(seed), NONE)
    if fault is not None:
        spoil(board, plan, fault, size, Random(seed))
    return decks.true_values(plan, [(board, readings)], USUAL)[0]


def _ohms(plus: str, minus: str, loads: str = DRIVERS_OFF) -> Reading:
    return Reading("resistance", plus, minus, loads)


def _volts(name: str, freq_hz: float, loads: str = DUMMIES_ON) -> Reading:
    return Reading("volts", f"{name}+", f"{name}-", loads, freq_hz)


W = 0.02
"""Ohm of each wire."""


def _beside(*ohms: complex) -> complex:
    return 1 / sum(1 / ohm for ohm in ohms)


def _box(
    freq_hz: float,
    *,
    l1: Callable[[complex], complex] = lambda s: 0.5 + 1e-3 * s,
    c1: Callable[[complex], complex] = lambda s: 0.2 + 1 / (1e-5 * s),
    r1: float = 5.0,
    r2: complex = 12.0,
    across_knee: complex = 1e12,
    woofer: complex = 8.0,
    tweeter: complex = 8.0,
    series: float = 10.0,
    source: float = 2.0,
) -> dict[str, float]:
    """Volts at input, woofer and tweeter of ROW, by hand; the wires of the input are in the way of both legs."""
    s = 2j * pi * freq_hz
    low = l1(s) + 2 * W + woofer
    end = _beside(r2, 2 * W + tweeter)
    knee = _beside(r1 + end, across_knee)
    high = c1(s) + knee
    box = _beside(low, high)
    post = source * (box + 2 * W) / (box + 2 * W + series)
    inside = post * box / (box + 2 * W)
    at_tweeter = inside * knee / high * end / (r1 + end) * tweeter / (2 * W + tweeter)
    return {"input": abs(post), "woofer": abs(inside * woofer / low), "tweeter": abs(at_tweeter)}


def _agree(fault: Fault | None, size: float = 1.0, **otherwise: object) -> None:
    for freq_hz in (300.0, 3000.0):
        readings = [_volts(name, freq_hz) for name in ("input", "woofer", "tweeter")]
        found = _read(fault, *readings, size=size)
        assert found == pytest.approx(list(_box(freq_hz, **otherwise).values()), rel=2e-4, abs=1e-5)  # type: ignore[arg-type]


def test_a_sound_board_by_hand() -> None:
    _agree(None)
    found = _read(None, _ohms("input+", "woofer+"), _ohms("tweeter+", "tweeter-"), _ohms("input+", "tweeter+"),
                  _ohms("woofer+", "woofer-"), _ohms("woofer+", "woofer-", DRIVERS_ON))  # fmt: skip
    assert found[0] == pytest.approx(0.5 + 2 * W, rel=1e-5)
    assert found[1] == pytest.approx(12 + 2 * W, rel=1e-4)
    assert min(found[2], found[3]) > decks.OPEN_FROM_OHM
    assert found[4] == pytest.approx(8, rel=1e-4)


def test_an_l_pad_by_hand() -> None:
    """Seen from the filter with the driver off: R1 and R2 in a row."""
    assert _read(None, _ohms("knee", "tweeter-")) == pytest.approx([5 + 12 + W], rel=1e-4)


FAULTS = [
    (Fault("open", ("R2",)), 1.0, {"r2": 1e12}),
    (Fault("open", ("woofer",), ("woofer+",)), 1.0, {"l1": lambda s: 1e12}),
    (Fault("open", ("K1",), ("K1.start",)), 1.0, {"c1": lambda s: 1e12}),
    (Fault("short", ("C1",), ("C1.start", "C1.end")), 1.0, {"c1": lambda s: 0.001}),
    (Fault("value", ("L1",)), 4.0, {"l1": lambda s: 1.0 + 4e-3 * s}),
    (Fault("value", ("C1",)), 0.5, {"c1": lambda s: 0.4 + 2 / (1e-5 * s)}),
    (Fault("value", ("R1",)), 2.0, {"r1": 10.0}),
    (Fault("dried", ("C1",)), 0.5, {"c1": lambda s: 4.0 + 2 / (1e-5 * s)}),
    (Fault("core", ("L1",)), 0.5, {"l1": lambda s: 0.5 + 0.5e-3 * s}),
    (Fault("exchanged", ("R1", "R2")), 1.0, {"r1": 12.0, "r2": 5.0}),
    (Fault("doubled", ("L1",)), 1.0, {"l1": lambda s: 0.25 + 0.5e-3 * s}),
    (Fault("moved", ("R2",), ("R2.start",), "input-"), 1.0, {"r2": 1e12}),
    (Fault("joint", ("L1",), ("L1.end",)), 3.0, {"l1": lambda s: 3.5 + 1e-3 * s}),
    (Fault("joint", ("tweeter",), ("tweeter-",)), 3.0, None),
    (Fault("joint", ("K1",), ("K1.end",)), 3.0, {"c1": lambda s: 3.2 + 1 / (1e-5 * s)}),
    (Fault("bridge", (), ("knee", "tweeter+")), 1.0, {"r1": 0.001}),
    (Fault("cut", ("cut 1",), ("knee", "tweeter+")), 1.0, {"r1": 0.001}),
    (Fault("jumper", ("jumper 1",), ("R2.start",)), 1.0, {"r2": 1e12}),
    (Fault("link", ("K1",), ("K1.start", "K1.end")), 1.0, {"c1": lambda s: 1e12}),
    (Fault("reversed", ("woofer",)), 1.0, {}),
    (Fault("driver", ("woofer",)), 2.0, {}),
    (Fault("dummies"), 2.0, {"woofer": 16.0, "tweeter": 16.0}),
    (Fault("series"), 0.1, {"series": 1.0}),
    (Fault("source"), 0.5, {"source": 1.0}),
]


@pytest.mark.parametrize(("fault", "size", "otherwise"), FAULTS, ids=[f"{f.family} {f.owners}" for f, _, _ in FAULTS])
def test_a_fault_by_hand(fault: Fault, size: float, otherwise: dict[str, object] | None) -> None:
    if otherwise is None:  # in a driver's wire: the tags see less than the board
        board = {freq: _box(freq, tweeter=11.0) for freq in (300.0, 3000.0)}
        for freq_hz, by_hand in board.items():
            (found,) = _read(fault, _volts("tweeter", freq_hz), size=size)
            assert found == pytest.approx(by_hand["tweeter"] * 8 / 11, rel=2e-4)
    else:
        _agree(fault, size, **otherwise)


def test_a_link_that_is_to_be_left_out_by_hand() -> None:
    for freq_hz in (300.0, 3000.0):
        s = 2j * pi * freq_hz
        (found,) = _read(Fault("link", ("K2",), ("K2.start", "K2.end")), _volts("tweeter", freq_hz))
        assert found == pytest.approx(_box(freq_hz, across_knee=0.301 + 0.5e-3 * s)["tweeter"], rel=2e-4)


def test_a_shorted_turn_takes_its_share_of_the_inductance() -> None:
    """L (1 - k s/(s + w)), w being within a factor e of 2 pi 200 Hz."""
    plan, freq_hz = _plan(), 3000.0
    board = plan.board(Random(1), NONE)
    spoil(board, plan, Fault("turns", ("L1",)), 0.6, Random(4))
    ((_, share, corner),) = board.turns
    assert share == 0.6
    assert 1 / 2.8 < corner / (2 * pi * TURN_HZ) < 2.8
    (found,) = decks.true_values(plan, [(board, [_volts("woofer", freq_hz)])], USUAL)
    by_hand = _box(freq_hz, l1=lambda s: 0.5 + 1e-3 * s * (1 - 0.6 * s / (s + corner)))
    assert found == pytest.approx([by_hand["woofer"]], rel=2e-4)


def test_wires_and_drivers_otherwise() -> None:
    """A driver reversed shows between its marked minus and the return, exchanged outputs at the far ends."""
    minus = Reading("volts", "woofer-", "input-", DUMMIES_ON, 300.0)
    sound, turned = (_read(fault, minus)[0] for fault in (None, Fault("reversed", ("woofer",))))
    assert sound < 0.01
    assert turned > 0.5
    through = _ohms("input+", "woofer+"), _ohms("input+", "tweeter+")
    coil, blocked = _read(None, *through)
    assert _read(Fault("outputs", ("woofer", "tweeter")), *through) == pytest.approx([blocked, coil], rel=1e-3)
    large = _read(Fault("driver", ("woofer",)), _ohms("woofer+", "woofer-", DRIVERS_ON), size=2.0)
    assert large == pytest.approx([16], rel=1e-3)


def test_one_driver_off_is_off_alone() -> None:
    found = _read(None, _ohms("woofer+", "woofer-", "woofer off"), _ohms("tweeter+", "tweeter-", "woofer off"))
    assert found[0] > decks.OPEN_FROM_OHM
    assert found[1] == pytest.approx(_beside(8, 12 + 2 * W).real, rel=1e-4)


def test_the_meter_sags_with_the_square_of_the_frequency_and_rounds() -> None:
    quiet = Instruments(meter_share=0.0)
    full, half = Reading("volts", "a", "b", DUMMIES_ON, 6000.0), Reading("volts", "a", "b", DUMMIES_ON, 3000.0)
    assert decks.shown(full, 1.0, 0.0, 0.2, quiet, Random(1)) == pytest.approx(0.8)
    assert decks.shown(half, 1.0, 0.0, 0.2, quiet, Random(1)) == pytest.approx(0.95)
    assert decks.shown(_ohms("a", "b"), 6000.0, 0.0, 0.0, quiet, Random(1)) == OPEN
    seen = {round(decks.shown(_ohms("a", "b"), 0.0, 0.2, 0.0, quiet, Random(seed)), 6) for seed in range(40)}
    assert seen == {0.1, 0.2, 0.3}


def test_errors_are_as_wide_as_they_are_said_to_be() -> None:
    """An even distribution of +-a has a standard deviation of a over the root of 3."""
    plan, draw = _plan(), Random(5)
    boards = [plan.board(draw, Errors()) for _ in range(2000)]
    for key, quantity, middle, share in (
        ("L1", "inductance", 1e-3, 0.05),
        ("L1", "dcr", 0.5, 0.1),
        ("C1", "esr", 0.2, 0.5),
    ):
        values = [next(i.value for i in board.rows[key][2] if i.quantity == quantity) for board in boards]
        assert pstdev(values) / middle == pytest.approx(share / 3**0.5, rel=0.06)
    assert pstdev(board.drivers["woofer"][0][0][0].value for board in boards) / 8 == pytest.approx(
        0.1 / 3**0.5, rel=0.06
    )
    assert UNSTATED_ESR_OHM[True] > UNSTATED_ESR_OHM[False]


def test_the_same_seed_gives_the_same_board() -> None:
    plan, fault = _plan(), Fault("value", ("L1",), size=(0.2, 0.5))
    one, again, other = (made(plan, [fault], seed, Errors(), USUAL) for seed in ("a", "a", "b"))
    assert one.board == again.board != other.board
    assert 0.2 <= one.size <= 0.5
    assert all(0.2 <= drawn_size(fault, Random(seed)) <= 0.5 for seed in range(50))
