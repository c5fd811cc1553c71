"""Every example checks clean, in all variants, and both simulators run its netlist and agree with the solver."""

from __future__ import annotations

from pathlib import Path

import pytest

from engines.installed import needs
from shuntwise.api import check, network
from shuntwise.engines.crosscheck import crosscheck
from shuntwise.engines.gnucap import GNUCAP
from shuntwise.engines.ngspice import NGSPICE
from shuntwise.network.sweep import Sweep

ROOT = Path(__file__).parents[2]
EXAMPLES = sorted((ROOT / "examples").rglob("*.shunt"))
IDS = [path.stem for path in EXAMPLES]


@pytest.mark.parametrize("path", EXAMPLES, ids=IDS)
def test_example_checks_clean(path: Path) -> None:
    for compilation in check(str(path)):
        assert [f"{f.name}: {f.headline}" for f in compilation.findings] == []
        # A Zobel is judged by re and le, which a measured impedance does not state.
        measured = {name for name, driver in compilation.design.drivers.items() if driver.measured is not None}
        lacking = [e for e in compilation.not_checked if e.name != "zobel-off" or not measured.issuperset(e.subjects)]
        assert lacking == []


@needs(NGSPICE)
@pytest.mark.parametrize("path", EXAMPLES, ids=IDS)
def test_ngspice_agrees_on_every_variant(path: Path) -> None:
    """Every node, driver voltage and impedance within 1e-9 of the source voltage."""
    for compilation in check(str(path)):
        result = crosscheck(network(compilation), Sweep(20, 20000, 40), NGSPICE)
        assert result.bound == 1e-9
        assert result.passed, result.worst


@needs(GNUCAP)
@pytest.mark.parametrize("path", EXAMPLES, ids=IDS)
def test_gnucap_agrees_on_every_variant(path: Path) -> None:
    for compilation in check(str(path)):
        result = crosscheck(network(compilation), Sweep(20, 20000, 10), GNUCAP)
        assert result.passed, result.worst
