"""The usual figures of designs against what ngspice itself measures (`meas` of its manual) on our netlist."""

from __future__ import annotations

import re
import subprocess
from collections.abc import Iterator
from pathlib import Path

import pytest

from engines.installed import needs
from shuntwise.api import load, network
from shuntwise.engines.ngspice import NGSPICE
from shuntwise.figures.figure import Corner, Crossing, Level, Slope
from shuntwise.figures.nominal import Nominal
from shuntwise.figures.usual import Said, Usual, usual
from shuntwise.netlist.spice import emit
from shuntwise.network.sweep import Sweep
from shuntwise.response.solve import Solver

TESTS = Path(__file__).parents[1]
DESIGNS = sorted([*(TESTS.parent / "examples").glob("*.shunt"), *(TESTS / "strangers").glob("*.shunt")])
PER_DECADE = 2000


def of_drivers(figures: Usual) -> Iterator[Said]:
    for driver in figures.drivers:
        yield from (said for said in (driver.level, driver.greatest, *driver.slopes) if said is not None)
        for corners in driver.corners:
            yield from (said for said in (corners.begins, corners.ends) if said is not None)
    yield from (one.crossing for one in figures.crossings)


def measuring(number: int, said: Said, circuit: Nominal, node: dict[str, str]) -> tuple[list[str], float, float]:
    """Commands that measure a figure as `m<number>`, the value to be found, and how near it must come."""
    figure, name = said.figure, f"m{number}"
    first = node[figure.subjects[0]]
    match figure:
        case Level(at_hz=at):
            return [f"meas ac {name} find vdb({first}) at={at!r}"], said.value, 2e-3
        case Slope(from_hz=low, to_hz=high):
            lines = [f"meas ac {name}{end} find vdb({first}) at={at!r}" for end, at in (("a", low), ("b", high))]
            return lines, said.value, 4e-3
        case Corner(subjects=(driver,), below_db=below):
            nth = circuit.corners(driver, below).index(said.value) + 1
            target = circuit.band(driver).reference_db - below
            return [f"meas ac {name} when vdb({first})={target!r} cross={nth}"], said.value, 2e-4 * said.value
        case Crossing(subjects=(one, other), louder_db=louder):
            nth = circuit.crossings(one, other, louder).index(said.value) + 1
            copy = f"let {name}x = db({first})+({louder!r})-db({node[other]})"
            return (
                [copy, f"meas ac {name} when {name}x=0 cross={nth}"],
                said.value,
                2e-4 * said.value,
            )
    raise AssertionError(figure)


@needs(NGSPICE)
@pytest.mark.parametrize("path", DESIGNS, ids=lambda path: path.stem)
def test_figures_are_what_ngspice_measures(path: Path, tmp_path: Path) -> None:
    made = load(str(path))
    circuit = Nominal(Solver(network(made)))
    figures = usual(circuit, made.design.drivers)
    text = emit(network(made), Sweep(20.0, 20e3, PER_DECADE), design_title="figures").text
    node = dict(re.findall(r'note: driver "(\S+)": voltage at (\S+)', text))
    feeds = dict(re.findall(r'note: input "(\S+)": impedance in ohm as voltage at (\S+)', text))
    lines, wanted = [], {}
    for number, said in enumerate(of_drivers(figures)):
        own, value, near = measuring(number, said, circuit, node)
        lines += own
        wanted[f"m{number}"] = said, value, near
    for number, least in enumerate(figures.least):
        lines.append(f"meas ac z{number} min vm({feeds[least.input]}) from=20 to=20000")
        wanted[f"z{number}"] = least.impedance, least.impedance.value, 1e-4 * least.impedance.value
    text = re.sub(r"(?m)^\.print.*$", "", text)
    assert text.count("\n.end") == 1
    file = tmp_path / "figures.cir"
    script = ["", ".control", "run", *lines, "quit", ".endc", ".end"]
    file.write_text(text.replace("\n.end", "\n".join(script)), encoding="utf-8")
    run = subprocess.run(["ngspice", "-b", str(file)], capture_output=True, text=True, check=False, cwd=tmp_path)
    found = {name: float(number) for name, number in re.findall(r"(?m)^([mz]\d+[ab]?)\s+=\s+(\S+)", run.stdout)}
    for name, (said, value, near) in wanted.items():
        if isinstance(said.figure, Slope):
            measured = (found[f"{name}b"] - found[f"{name}a"]) / said.figure.octaves
        else:
            measured = found[name]
        assert measured == pytest.approx(value, abs=near), said.figure.name
    assert len(wanted) > 3 * len(made.design.drivers)
