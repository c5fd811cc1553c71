"""The mistake harness: from every example make every single mistake, check each, and say what share is caught.

    python tests/mistakes/run.py [--json] [--examples NAME ...] [--escapes N]

A mistake that changes nothing (the drivers' voltages and the impedance stay the same, found by solving) is harmless
and not counted; so is a halved rating of which `check`, which holds every rating against the part's own stress, says
that it is still enough. A mistake is caught if `check` makes any finding that it does not make on the unharmed
example; with its expect lines an unharmed example has none at all.
"""

from __future__ import annotations

import argparse
import json
import sys
from collections import Counter, defaultdict
from concurrent.futures import ProcessPoolExecutor
from dataclasses import dataclass, field
from pathlib import Path

ROOT = Path(__file__).parents[2]
sys.path[:0] = [str(ROOT / "compiler"), str(ROOT / "tests")]

import numpy as np

from mistakes.slips import CLASSES
from mistakes.wired import Wired, unwire
from shuntwise.api import check
from shuntwise.diagnostics.diagnostic import Diagnostic
from shuntwise.loading import loader
from shuntwise.network.network import Network
from shuntwise.pipeline import Compilation, compile_variant, read
from shuntwise.response.pivoted import SingularNetwork
from shuntwise.response.solve import Solver
from shuntwise.source import Source

FREQ_HZ = np.geomspace(20, 20_000, 25)
SAME = 1e-6
"""Two circuits are the same if no voltage (V) and no relative impedance differs by more."""


@dataclass
class Tally:
    """What became of the mistakes of one class."""

    made: int = 0
    harmless: int = 0
    caught: int = 0
    by: Counter[str] = field(default_factory=Counter)
    escapes: list[str] = field(default_factory=list)

    def add(self, other: Tally) -> None:
        self.made += other.made
        self.harmless += other.harmless
        self.caught += other.caught
        self.by += other.by
        self.escapes += other.escapes

    @property
    def counted(self) -> int:
        return self.made - self.harmless


def compiled(text: str, beside: Path) -> Compilation:
    """Compile a text as if it lay beside an example."""
    collected, said = read(Source(beside.name, text), loader(beside.resolve(), str(beside)))
    return compile_variant(collected, said)


def figures(compilation: Compilation) -> dict[str, np.ndarray] | None:
    """Voltages and impedances by name, or None where nothing can be solved."""
    if not isinstance(compilation.lowered, Network):
        return None
    try:
        response = Solver(compilation.lowered).solve(FREQ_HZ)
        result = {driver.name: response.driver_voltage(driver.name) for driver in compilation.lowered.drivers}
        with np.errstate(divide="ignore", invalid="ignore"):
            result |= {f"Z {feed.name}": response.impedance(feed.name) for feed in compilation.lowered.feeds}
    except SingularNetwork:
        return None
    return {name: np.broadcast_to(value, FREQ_HZ.shape) for name, value in result.items()}


def same(first: dict[str, np.ndarray] | None, second: dict[str, np.ndarray] | None) -> bool:
    """Do two circuits do the same to their drivers and their amplifier?"""
    if first is None or second is None or first.keys() != second.keys():
        return False
    for name, value in first.items():
        scale = np.abs(value) if name.startswith("Z ") else 1.0
        if not np.all(np.abs(value - second[name]) <= SAME * scale):
            return False
    return True


def examine(path: Path, expects: bool) -> dict[str, Tally]:
    """All mistakes of one example."""
    original = check(str(path))[0]
    wired = unwire(original.circuit)
    sound = compiled(wired.text(expects=expects), path)
    assert not (sound.findings and expects), [f"{path.stem}: {f.name}: {f.headline}" for f in sound.findings]
    before = figures(sound)
    assert same(before, figures(original)), f"{path.stem}: the rewired text is another circuit"
    known = {identity(finding) for finding in sound.findings}
    return {name: _class(name, wired, before, known, path, expects) for name in CLASSES}


def identity(finding: Diagnostic) -> tuple[str, ...]:
    """What a finding says and of whom, wherever it stands."""
    return (finding.name, *finding.subjects)


def _class(
    name: str,
    wired: Wired,
    before: dict[str, np.ndarray] | None,
    known: set[tuple[str, ...]],
    path: Path,
    expects: bool,
) -> Tally:
    tally = Tally()
    for sentence, mistaken in CLASSES[name](wired):
        text = mistaken.text(expects=expects)
        compilation = compiled(text, path)
        tally.made += 1
        findings = [finding.name for finding in compilation.findings if identity(finding) not in known]
        if not findings and _harmless(name, compilation, before):
            tally.harmless += 1
        elif findings:
            tally.caught += 1
            tally.by.update(set(findings))
        else:
            tally.escapes.append(f"{path.stem}: {sentence}")
    return tally


def _harmless(name: str, compilation: Compilation, before: dict[str, np.ndarray] | None) -> bool:
    """Asked only where nothing was found; a finding on a harmless change counts as caught all the same."""
    if name == "tolerance widened":
        return False
    if name == "rating halved":
        return True  # the ratings checks compare every rating with the part's stress and its margin
    return same(before, figures(compilation))


def run(paths: list[Path], expects: bool) -> dict[str, Tally]:
    """All examples, two at a time."""
    totals: dict[str, Tally] = defaultdict(Tally)
    with ProcessPoolExecutor(2) as pool:
        for result in pool.map(examine, paths, [expects] * len(paths)):
            for name, tally in result.items():
                totals[name].add(tally)
    return dict(totals)


def table(totals: dict[str, Tally]) -> str:
    """One row a class of mistake."""
    lines = [f"{'mistake':18} {'made':>6} {'harmless':>9} {'caught':>7} {'share':>7}  found by"]
    whole = Tally()
    for name, tally in totals.items():
        whole.add(tally)
        lines.append(_row(name, tally))
    lines.append(_row("all", whole))
    return "\n".join(lines)


def _row(name: str, tally: Tally) -> str:
    share = f"{100 * tally.caught / tally.counted:6.1f} %" if tally.counted else "      -"
    by = ", ".join(f"{finding} {count}" for finding, count in tally.by.most_common(4)) if name != "all" else ""
    return f"{name:18} {tally.made:6} {tally.harmless:9} {tally.caught:7} {share}  {by}"


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--json", action="store_true")
    parser.add_argument("--examples", nargs="*", default=[])
    parser.add_argument("--escapes", type=int, default=200, help="how many escapes to list")
    options = parser.parse_args()
    paths = sorted((ROOT / "examples").rglob("*.shunt"))
    if options.examples:
        paths = [path for path in paths if any(name in path.stem for name in options.examples)]
    for expects in (True, False):
        totals = run(paths, expects)
        title = "with the examples' expect lines" if expects else "without any expect line"
        if options.json:
            shown = {name: {**vars(tally), "by": dict(tally.by)} for name, tally in totals.items()}
            print(json.dumps({"title": title, "classes": shown}, indent=1))
            continue
        print(f"\n{title}\n{table(totals)}")
        escapes = [f"  {name}: {escape}" for name, tally in totals.items() for escape in tally.escapes]
        print("\n".join(["escapes:", *escapes[: options.escapes]]) if escapes else "no escapes")


if __name__ == "__main__":
    main()
