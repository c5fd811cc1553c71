"""What `check` makes of a design with a single mistake in it.

A mistake that changes nothing (the drivers' voltages and the impedance stay the same, found by solving) is harmless; so
is a halved rating of which `check`, which holds every rating against the part's own stress, says that it is still
enough. What counts is every finding that `check` does not make on the unharmed design. The search for a slip that
explains them is left out: it hides no finding, and would take most of the time.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

import numpy as np

from mistakes.slips import CLASSES, Mistake
from mistakes.unwire import unwire
from mistakes.wired import Wired
from shuntwise.diagnostics.diagnostic import Diagnostic, Severity
from shuntwise.loading import loader
from shuntwise.network.network import Network
from shuntwise.pipeline import Compilation, compile_variant, read
from shuntwise.response.pivoted import SingularNetwork
from shuntwise.response.solve import Solver
from shuntwise.source import Source
from shuntwise.workspace import Workspace

FREQ_HZ = np.geomspace(20, 20_000, 25)
SAME = 1e-6
"""Two circuits are the same if no voltage (V) and no relative impedance differs by more."""

Figures = dict[str, np.ndarray]


@dataclass(frozen=True)
class Verdict:
    """The new findings on one mistake. `harmless` is asked only where there are none."""

    design: str
    kind: str
    sentence: str
    findings: tuple[Diagnostic, ...]
    harmless: bool = False

    @property
    def told(self) -> bool:
        """By an error or a warning."""
        return any(finding.severity is not Severity.ADVICE for finding in self.findings)

    @property
    def advised(self) -> bool:
        """By advice and nothing more."""
        return bool(self.findings) and not self.told

    @property
    def messages(self) -> int:
        """All findings, advice too: what would be folded under a cause counts as if it stood by itself."""
        return len(self.findings)


def compiled(text: str, beside: Path) -> Compilation:
    """Compile a text as if it lay beside a design."""
    collected, said = read(Source(beside.name, text), loader(beside.resolve(), str(beside)))
    return compile_variant(collected, said, causes=False)


def unharmed(path: Path) -> Compilation:
    """A design as it is, its layouts passed over: they would say the circuit twice, and a rewired text has none."""
    return Workspace(str(path), on_boards=False).compilation()


def figures(compilation: Compilation) -> Figures | None:
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


def same(first: Figures | None, second: Figures | None) -> bool:
    """Do two circuits do the same to their drivers and their amplifier?"""
    if first is None or second is None or first.keys() != second.keys():
        return False
    for name, value in first.items():
        scale = np.abs(value) if name.startswith("Z ") else 1.0
        if not np.all(np.abs(value - second[name]) <= SAME * scale):
            return False
    return True


def identity(finding: Diagnostic) -> tuple[str, ...]:
    """What a finding says and of whom, wherever it stands."""
    return (finding.name, *finding.subjects)


class Judge:
    """One design, with its `expect` lines or without; AssertionError if taking it apart has changed it."""

    def __init__(self, path: Path, expects: bool) -> None:
        self.path, self.expects = path, expects
        original = unharmed(path)
        self.wired: Wired = unwire(original.circuit)
        sound = self.compiled(self.wired)
        self.figures = figures(sound)
        self.known = {identity(finding) for finding in sound.findings}
        assert same(self.figures, figures(original)), f"{path.stem}: the rewired text is another circuit"

    def compiled(self, wired: Wired) -> Compilation:
        return compiled(wired.text(expects=self.expects), self.path)

    def mistakes(self, kind: str) -> Iterator[Mistake]:
        return CLASSES[kind](self.wired)

    def judge(self, kind: str, mistake: Mistake) -> Verdict:
        sentence, mistaken = mistake
        compilation = self.compiled(mistaken)
        findings = tuple(finding for finding in compilation.findings if identity(finding) not in self.known)
        harmless = not findings and self._harmless(kind, compilation)
        return Verdict(self.path.stem, kind, sentence, findings, harmless)

    def _harmless(self, kind: str, compilation: Compilation) -> bool:
        if kind == "tolerance widened":
            return False
        if kind == "rating halved":
            return True  # the ratings checks compare every rating with the part's stress and its margin
        return same(self.figures, figures(compilation))
