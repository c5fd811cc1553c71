"""What each part bears when the stated amplifier drives the design.

In: a design and its solver. Out: a `Stress`, which answers by part, driver or input and remembers what it
has worked out, or what is lacking for it. It refuses to know what a part is rated for and what is too much.

Copper is taken both cold (20 C, the network's values) and hot (100 C, 31 % more resistance: the temperature
coefficient of IEC 60028), and the worse of the two counts: a cold box draws more current, a hot one shifts its
load to what is not copper. All cases of one kind are solved in one run.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass, field
from functools import cached_property
from typing import Any

import numpy as np

from shuntwise.model.design import Design, Driver, Part
from shuntwise.model.kinds import INDUCTIVE
from shuntwise.network.network import Branch
from shuntwise.response.cases import BAND_HZ, Case, greatest, opened, shorted, solve_cases, sweep
from shuntwise.response.failures import CaseCurves
from shuntwise.response.measures import Extreme, bare_resonances, lattice, least_impedance
from shuntwise.response.peaks import gathered_sweep, narrow_peaks
from shuntwise.response.signal import Signal, amplifier_signal
from shuntwise.response.solve import Response, Solver
from shuntwise.stress.shares import taken

HOT_COPPER = 1.31

CREST = 2.0
"""Peak over r.m.s. value of the programme where the amplifier does not say otherwise; see `amplifier_signal`."""

FAULT_STEPS_PER_OCTAVE = 24
"""A coarser sweep is enough where only collapses of the load are looked for: peaks are found between points."""

MOST_PEAKS = 2
"""Of one part that fails; only the lowest load counts."""

BARE_OHM = 1e-5
"""No part has so little resistance: where a resonance leaves less, none is stated."""


@dataclass(frozen=True)
class Lacking:
    """What keeps a value from being worked out, in words that complete "not checked: ...", and about what."""

    lacks: str
    subjects: tuple[str, ...] = ()


@dataclass(frozen=True)
class Bearing:
    """What one part or driver bears, the worst of some cases.

    `peak_v` and `peak_a` with the rated sine at the worst frequency, `worst_hz` being that of `peak_v`;
    `programme_v`, `programme_a` (r.m.s.) and `heat_w` with the programme, whose greatest voltage is
    `programme_peak_v`.
    """

    peak_v: float
    worst_hz: float
    peak_a: float
    programme_v: float
    programme_peak_v: float
    programme_a: float
    heat_w: float


@dataclass(frozen=True)
class Excursion:
    """How far a cone moves to one side (m) at the peaks of the programme, and the frequency that halves it by power."""

    peak_m: float
    middle_hz: float


@dataclass(frozen=True)
class Bare:
    """A series resonance without resistance at the input `feed`, and the coils without resistance that ring in it."""

    feed: str
    freq_hz: float
    coils: tuple[str, ...]


@dataclass(frozen=True)
class Failure:
    """One part open or shorted, and the least impedance (ohm) at the input called `feed` then.

    `bare` are the coils of which no resistance is stated, if nothing else bounds that impedance.
    """

    label: str
    shorted: bool
    feed: str
    least_ohm: float
    driver_v: dict[str, float]
    """The programme's r.m.s. voltage at each driver."""
    bare: tuple[str, ...] = ()


def work_out(design: Design, solver: Solver) -> Stress | Lacking:
    """The stress of a design with a network. Raises SingularNetwork."""
    amplifier = design.amplifier
    if amplifier is None:
        return Lacking("an `amplifier` with its power and load")
    if amplifier.power is None or amplifier.load is None:
        return Lacking("a sound power and load of the amplifier")
    if not solver.network.elements:
        return Lacking("a circuit that carries current")
    crest = amplifier.quantities.get("crest")
    signal = amplifier_signal(
        amplifier.power.value,
        amplifier.load.value,
        amplifier.programme,
        crest.value if crest is not None else CREST,
        sweep(),
    )
    return Stress(design, solver, signal)


@dataclass(eq=False)
class Stress:
    """See the module; every method raises SingularNetwork where a case has no single solution."""

    design: Design
    solver: Solver
    signal: Signal
    _bearings: dict[str, Bearing] = field(default_factory=dict)

    def parts(self, *kinds: str) -> Iterator[Part]:
        """The fitted parts of some kinds that carry current, in the order of the text."""
        for part in self.design.parts.values():
            if part.kind in kinds and part.label in self.branches:
                yield part

    @cached_property
    def branches(self) -> dict[str, tuple[Branch, ...]]:
        """Branches by part or driver; a tapped coil has two."""
        network = self.solver.network
        found: dict[str, tuple[Branch, ...]] = {}
        for branch in network.branches:
            owner = network.element[branch.through].part
            found[owner] = (*found.get(owner, ()), branch)
        return found

    # --- all drivers on

    @property
    def working(self) -> Response:
        """The network as it is: cold, then hot; arrays (2, F)."""
        return self._working[0]

    @cached_property
    def _working(self) -> tuple[Response, Signal]:
        copper = [element for element in self.solver.network.elements if element.copper]
        return self._solved([{}, {element.name: element.value * HOT_COPPER for element in copper}])

    def _solved(self, cases: Sequence[Case]) -> tuple[Response, Signal]:
        """Some cases, with points about every narrow resonance, and the amplifier's signal at these points."""
        response = solve_cases(self.solver, cases, gathered_sweep(self.solver, cases))
        return response, self.signal.at(response.freq_hz)

    def bears(self, owner: str) -> Bearing:
        """What a part or driver bears with everything fitted."""
        if owner not in self._bearings:
            self._bearings[owner] = self._bearing(self._working, owner, slice(None))
        return self._bearings[owner]

    def nominal_w(self, driver: Driver) -> float:
        """What the programme gives a driver, in its nominal impedance (W), which its rating is compared with."""
        return self.bears(driver.name).programme_v ** 2 / driver.nominal.value if driver.nominal is not None else 0.0

    def sine_heat_w(self, owner: str) -> float:
        """The heat (W) of a part or driver with the rated sine at the frequency that is worst for it."""
        response, signal = self._working
        return float(np.max(self._heat(response, owner))) * signal.sine_v**2

    def _heat(self, response: Response, owner: str) -> Any:
        """What a part or driver takes up (W for 1 V), (cases, F)."""
        return sum(taken(response, branch.label) for branch in self.branches[owner])

    def excursion(self, driver: Driver) -> Excursion | None:
        """How far a driver's cone moves; None where its data do not tell, or another coil's do.

        The motion induces E = Bl u, and x = u / (2 pi f); Bl^2 = 2 pi fs Mms Re / Qes where Mms is stated instead
        (R. H. Small, Direct-radiator loudspeaker system analysis, J. Audio Eng. Soc. 20(5), 1972).
        """
        q, motion = driver.quantities, f"{driver.name}.lces"
        newton_per_ampere = q["bl"].value if "bl" in q else None
        if newton_per_ampere is None and {"mms", "re", "fs", "qes"} <= q.keys():
            kilogram = q["mms"].value / 1000
            newton_per_ampere = float(np.sqrt(2 * np.pi * q["fs"].value * kilogram * q["re"].value / q["qes"].value))
        if newton_per_ampere is None or driver.other is not None or motion not in self.solver.network.element:
            return None
        response, signal = self._working
        omega = 2 * np.pi * response.freq_hz
        metre = np.abs(response.element_voltage(motion)) / (newton_per_ampere * omega)
        moved = signal.programme(metre)
        case = int(moved.argmax())
        if signal.shares is None:
            middle = response.freq_hz[metre[case].argmax()]
        else:
            gathered = np.cumsum(metre[case] ** 2 * signal.shares)
            middle = response.freq_hz[np.searchsorted(gathered, gathered[-1] / 2)]
        return Excursion(signal.crest * float(moved[case]), float(middle))

    def least_load(self, feed: str, from_hz: float = BAND_HZ[0]) -> Extreme:
        """The least impedance at an input up to 20 kHz, copper cold."""
        return least_impedance(self.solver, feed, from_hz, BAND_HZ[1])

    @property
    def rated_from_hz(self) -> float:
        """Where the rated frequency range begins: at the lowest resonance of a driver in its box, as far as 20 Hz.

        Below it a box gives hardly any sound (our reading, no source). In a sealed box the resonance lies at
        fs sqrt(1 + alpha), in a vented one its tuning counts (R. H. Small, J. Audio Eng. Soc. 20(10), 1972, and 21(5),
        1973, citations from memory). Where the resonance of one driver is not known it is 20 Hz.
        """
        lowest = []
        for driver in self.design.drivers.values():
            fs, alpha, tuning = (driver.quantities.get(name) for name in ("fs", "alpha", "fb"))
            if fs is None:
                return BAND_HZ[0]
            sealed = fs.value * (1 + (alpha.value if alpha is not None else 0)) ** 0.5
            lowest.append(tuning.value if tuning is not None else sealed)
        return min(max(min(lowest, default=0.0), BAND_HZ[0]), BAND_HZ[1] / 2)

    def loss_heat(self, label: str, tan_delta: float) -> float:
        """The programme's heat (W) in a capacitor of a loss factor; by definition ESR = tan(delta) / (2 pi f C)."""
        part = self.design.parts[label]
        assert part.value is not None
        response, signal = self._working
        esr_ohm = tan_delta / (2 * np.pi * response.freq_hz * part.value.value)
        amperes = np.abs(response.current(self.branches[label][0].label))
        return float(signal.heat(amperes**2 * esr_ohm).max())

    def programme_current(self, ends: Iterable[tuple[str, str]]) -> float:
        """The programme's r.m.s. current (A) into some terminals, (part or driver, terminal), all together."""
        response, signal = self._working
        total: Any = np.zeros_like(response.freq_hz)
        for owner, terminal in ends:
            for branch in self.branches.get(owner, ()):
                into_plus, into_minus = branch.terminals
                sign = (terminal == into_plus) - (terminal == into_minus)
                total = total + sign * response.current(branch.label)
        return float(np.max(signal.programme(np.abs(np.atleast_2d(total)))))

    def bear_with(self, label: str, ohm: float, *owners: str) -> list[Bearing]:
        """What parts or drivers bear if a resistor, lamp or protector has this resistance instead of its own."""
        branch = self.branches[label][0]
        solved = self._solved([{branch.through: ohm}])
        return [self._bearing(solved, owner, slice(None)) for owner in owners]

    def least_capacitive_load_above(self, feed: str, end_hz: float, angle_deg: float) -> tuple[Extreme, float]:
        """As `least_load_at_angle`, from the end of the audible band to `end_hz`, of capacitive loads only."""
        freq_hz = lattice(BAND_HZ[1], max(end_hz, 1.01 * BAND_HZ[1]))
        admittance = self.solver.solve(freq_hz).admittance(feed)
        return _least_where(admittance, freq_hz, lambda phase_deg: phase_deg < -angle_deg)

    def least_load_at_angle(self, feed: str, angle_deg: float, among: Any = True) -> tuple[Extreme, float]:
        """The least impedance where its phase is beyond an angle, copper cold, and the phase there (degrees).

        `among` are the points of `working.freq_hz` that count (bool), such as those of `dips`.
        """
        admittance = self.working.admittance(feed)[0]
        return _least_where(admittance, self.working.freq_hz, lambda phase_deg: among & (np.abs(phase_deg) > angle_deg))

    def dips(self, feed: str, below_ohm: float, least_ohm: float) -> Any:
        """The points of `working.freq_hz` (bool) that lie in dips below one impedance, but not below another."""
        ohm = _ohms(np.abs(self.working.admittance(feed)[0]))
        runs = np.split(np.arange(ohm.size), np.flatnonzero(np.diff(ohm < below_ohm)) + 1)
        return np.concatenate([np.full(run.size, least_ohm <= ohm[run].min() < below_ohm) for run in runs])

    # --- one driver unplugged

    @cached_property
    def unplugged_drivers(self) -> tuple[str, ...]:
        return tuple(driver.name for driver in self.solver.network.drivers if driver.name in self.branches)

    @cached_property
    def _unplugged(self) -> tuple[Response, Signal]:
        """The network with one driver off: arrays (drivers, F) in the order of `unplugged_drivers`."""
        network = self.solver.network
        return self._solved([opened(network, self.branches[driver][0]) for driver in self.unplugged_drivers])

    @cached_property
    def bare(self) -> dict[str, Bare]:
        """By the driver that is off: a resonance at an input that no resistance bounds. Without one there is no entry.

        The figures of such a case have no bound either, and mean nothing.
        """
        network, found = self.solver.network, dict[str, Bare]()
        for driver in self.unplugged_drivers if self._lossless else ():
            case = opened(network, self.branches[driver][0])
            for feed in network.feeds:
                for freq_hz in bare_resonances(self.solver, feed.name, sweep(), case):
                    found.setdefault(driver, Bare(feed.name, freq_hz, self._ringing(case, freq_hz)))
        return found

    @cached_property
    def _lossless(self) -> tuple[str, ...]:
        """The coils without any resistance."""
        return tuple(part.label for part in self.parts(*INDUCTIVE) if not self._resists(part.label))

    def _resists(self, label: str) -> bool:
        """Has a part any resistance?"""
        element = self.solver.network.element
        return any(element[name].kind == "R" for branch in self.branches[label] for name in branch.elements)

    def _ringing(self, case: Case, freq_hz: float) -> tuple[str, ...]:
        """The coils without resistance over which a resonance that nothing bounds builds up."""
        response = solve_cases(self.solver, [case], np.array([freq_hz * (1 + 1e-6)]))
        volts = {
            label: max(float(np.abs(response.branch_voltage(branch.label)).max()) for branch in self.branches[label])
            for label in self._lossless
        }
        greatest_v = max(volts.values())
        return tuple(label for label, volt in volts.items() if volt > 1e-3 * greatest_v)

    def bears_unplugged(self, owner: str) -> dict[str, Bearing]:
        """What a part or driver bears, by the driver that is off."""
        if not self.unplugged_drivers:
            return {}
        return {
            driver: self._bearing(self._unplugged, owner, slice(case, case + 1))
            for case, driver in enumerate(self.unplugged_drivers)
        }

    def unplugged_loads(self, feed: str) -> dict[str, tuple[Extreme, float]]:
        """By the driver that is off: the least impedance, and the programme's r.m.s. current (A) at an input."""
        if not self.unplugged_drivers:
            return {}
        response, signal = self._unplugged
        admittance = np.abs(response.admittance(feed))
        least, amperes = _ohms(greatest(admittance, response.freq_hz)), signal.programme(admittance)
        freq_hz = response.freq_hz[admittance.argmax(-1)]
        return {
            driver: (Extreme(float(least[case]), float(freq_hz[case])), float(amperes[case]))
            for case, driver in enumerate(self.unplugged_drivers)
        }

    # --- one part open or shorted

    @cached_property
    def failures(self) -> tuple[Failure, ...]:
        """Every fitted part open, then every capacitor shorted: each input's least load, each driver's voltage."""
        network = self.solver.network
        labels = [label for label in self.branches if label in self.design.parts]
        if not labels:
            return ()
        cases = [(label, False) for label in labels]
        cases += [(label, True) for label in labels if self.design.parts[label].kind == "capacitor"]
        values = []
        for label, short in cases:
            make = shorted if short else opened
            values.append({name: v for branch in self.branches[label] for name, v in make(network, branch).items()})
        freq_hz = sweep(steps_per_octave=FAULT_STEPS_PER_OCTAVE)
        curves = CaseCurves(self.solver, values, freq_hz)
        signal = self.signal.at(freq_hz)
        volts = {d.name: signal.programme(curves.driver_voltage(d.name)) for d in network.drivers}
        found = []
        for feed in network.feeds:
            ohm, bare = self._least_of(curves, values, feed.name)
            for case, (label, short) in enumerate(cases):
                driver_v = {name: float(v[case]) for name, v in volts.items()}
                found.append(Failure(label, short, feed.name, float(ohm[case]), driver_v, bare.get(case, ())))
        return tuple(found)

    def _least_of(self, curves: CaseCurves, cases: Sequence[Case], feed: str) -> tuple[Any, dict[int, tuple[str, ...]]]:
        """The least impedance (ohm) at an input in each case, and by case the coils that nothing keeps from ringing."""
        admittance = curves.admittance(feed)
        siemens, bare = greatest(admittance, curves.freq_hz), dict[int, tuple[str, ...]]()
        exact: dict[int, float] = {}
        for peak in narrow_peaks(self.solver, cases, feed, admittance, curves.freq_hz, MOST_PEAKS):
            exact[peak.case] = max(exact.get(peak.case, admittance[peak.case].max()), peak.siemens)
            if self._lossless and peak.siemens * BARE_OHM > 1:
                bare[peak.case] = self._ringing(cases[peak.case], peak.freq_hz)
        for case, value in exact.items():
            siemens[case] = value
        return _ohms(siemens), bare

    # --- reading

    def _bearing(self, solved: tuple[Response, Signal], owner: str, cases: slice) -> Bearing:
        response, signal = solved
        branches = self.branches[owner]
        volts = self._curve([response.branch_voltage(branch.label)[cases] for branch in branches])
        amperes = self._curve([response.current(branch.label)[cases] for branch in branches])
        heat = self._heat(response, owner)[cases]
        root = float(np.sqrt(2))
        peak_v = signal.sine(volts)
        case = int(peak_v.argmax())
        programme_v = float(signal.programme(volts).max())
        return Bearing(
            peak_v=root * float(peak_v[case]),
            worst_hz=float(response.freq_hz[volts[case].argmax()]),
            peak_a=root * float(signal.sine(amperes).max()),
            programme_v=programme_v,
            programme_peak_v=signal.crest * programme_v,
            programme_a=float(signal.programme(amperes).max()),
            heat_w=float(signal.heat(np.asarray(heat)).max()),
        )

    @staticmethod
    def _curve(phasors: list[Any]) -> Any:
        """The greatest magnitude of a part's branches, (cases, F)."""
        return np.max(np.abs(phasors), axis=0)


def _least_where(admittance: Any, freq_hz: Any, counts: Callable[[Any], Any]) -> tuple[Extreme, float]:
    """The least impedance of those points whose phase (degrees) counts, infinite without any, and its phase."""
    phase_deg = -np.degrees(np.angle(admittance))
    ohm = np.where(counts(phase_deg), _ohms(np.abs(admittance)), np.inf)
    at = int(ohm.argmin())
    return Extreme(float(ohm[at]), float(freq_hz[at])), float(phase_deg[at])


def _ohms(siemens: Any) -> Any:
    """Impedances of admittances; infinite where no current flows at all."""
    with np.errstate(divide="ignore"):
        return 1 / siemens
