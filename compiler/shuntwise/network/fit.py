"""An impedance over frequency -> positive resistors, inductors and capacitors that have it.

In: frequencies and impedances, from a formula or a table. Out: `Sections`, a chain of a series R, a series
L, parallel R-L sections and parallel R-L-C resonances: the first form of R. M. Foster, A reactance theorem,
Bell Syst. Tech. J. 3(2), 259-267, 1924, with losses. It is passive whatever the data, because its parameters
are logarithms. It refuses to know whose impedance it is, and to judge how near is near enough.

Method: resonances are read off the peaks of the real part, corners of R-L sections are spread evenly over
the decades, their sizes come from linear least squares with no negative part (C. L. Lawson, R. J. Hanson,
Solving Least Squares Problems, 1974, chapter 23), and then everything is moved together by Levenberg and
Marquardt's method. Sections are added while that helps.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray

Real = NDArray[np.float64]
Complex = NDArray[np.complexfloating[Any, Any]]

MOST_SECTIONS = 8
MOST_RESONANCES = 6

GOOD_MAGNITUDE = 0.005
GOOD_PHASE_DEG = 0.5
"""Errors at which no further section is added: half of what is promised on clean data."""

_POINTS = 300
"""A longer table is thinned to this many points for the search; the fit is judged at every point of it."""


@dataclass(frozen=True)
class Sections:
    """A Foster chain. `parallel` are (ohm, corner in rad/s), `resonances` are (ohm, rad/s, Q); all above zero.

    `series_ohm` and `series_henry` may be zero.
    """

    series_ohm: float
    series_henry: float
    parallel: tuple[tuple[float, float], ...]
    resonances: tuple[tuple[float, float, float], ...]

    def impedance(self, freq_hz: Real) -> Complex:
        """Ohm at each of `freq_hz` (F,)."""
        s = 2j * np.pi * np.asarray(freq_hz, np.float64)
        total = self.series_ohm + s * self.series_henry
        for ohm, corner in self.parallel:
            total = total + _parallel(ohm, corner, s)
        for ohm, centre, q in self.resonances:
            total = total + _resonance(ohm, centre, q, s)
        return np.asarray(total, np.complex128)


def errors(fitted: Complex, wanted: Complex) -> tuple[Real, Real]:
    """Magnitude error (fraction) and phase error (degree) of one impedance against another, signed."""
    ratio = fitted / wanted
    return np.abs(ratio) - 1, np.degrees(np.angle(ratio))


def fit(
    freq_hz: Real,
    wanted: Complex,
    *,
    beside: Complex | None = None,
    series_ohm: float | None = 0.0,
    resonances: bool = False,
) -> Sections:
    """The chain whose impedance is nearest to `wanted` (F,) in ohm at `freq_hz` (F,), rising, in relative terms.

    `beside` (F,) is the impedance in series with it, so that errors count as parts of the whole.
    `series_ohm` is the chain's series resistance, or None to find it too. `resonances`: look for peaks.
    """
    whole = wanted if beside is None else wanted + beside
    points = _thinned(freq_hz, wanted, whole)
    search = _Search(*points, series_ohm, scatter(wanted) if resonances else 0.0)
    centres = search.peaks() if resonances else []
    best = search.grow(centres)
    while resonances and not search.good(best) and len(best.resonances) < MOST_RESONANCES:
        centres = [*((centre, q) for _, centre, q in best.resonances), search.worst_place(best)]
        more = search.grow(centres)
        if search.rms(more) > 0.85 * search.rms(best):
            break
        best = more
    return best


def scatter(ohm: Complex) -> float:
    """The noise of a table (F,), as a fraction of the magnitude: standard deviation of either part.

    From third differences of the logarithm, which a smooth curve hardly has; their median, so that a sharp
    peak does not count. For normal noise |third difference| is distributed after Rayleigh.
    """
    if len(ohm) < 8:
        return 0.0
    log_ohm = np.log(np.abs(ohm)) + 1j * np.unwrap(np.angle(ohm))
    return float(np.median(np.abs(np.diff(log_ohm, 3))) / np.sqrt(20 * 2 * np.log(2)))


def _thinned(freq_hz: Real, wanted: Complex, whole: Complex) -> tuple[Real, Complex, Complex]:
    """The points nearest to `_POINTS` equal steps of the logarithm of frequency, or all if they are fewer."""
    if len(freq_hz) > _POINTS:
        steps = np.geomspace(freq_hz[0], freq_hz[-1], _POINTS)
        chosen = np.unique(np.clip(np.searchsorted(freq_hz, steps), 0, len(freq_hz) - 1))
        return freq_hz[chosen], wanted[chosen], whole[chosen]
    return freq_hz, wanted, whole


def _parallel(ohm: float, corner: float, s: Complex) -> Complex:
    return np.asarray(ohm * s / (s + corner), np.complex128)


def _resonance(ohm: float, centre: float, q: float, s: Complex) -> Complex:
    return np.asarray(ohm / (1 + q * (s / centre + centre / s)), np.complex128)


class _Search:
    """One set of points, and the chains tried on it. Parameters are the logarithms of a chain's numbers."""

    def __init__(self, freq_hz: Real, wanted: Complex, whole: Complex, series_ohm: float | None, noise: float) -> None:
        self.s = 2j * np.pi * freq_hz
        self.omega = 2 * np.pi * freq_hz
        self.freq_hz, self.wanted, self.whole = freq_hz, wanted, whole
        self.series_ohm = series_ohm
        self.low, self.high = float(self.omega[0]), float(self.omega[-1])
        # A free series resistor and a section with a corner far below the band are the same in the band; only
        # one of them may be there, or the DC resistance would be a matter of chance.
        self.lowest_corner = self.low / 100 if series_ohm is not None else self.low
        self.noise = noise
        # Noise cannot be fitted: four standard deviations are what the worst of some hundred points has.
        self.enough = min(max(1.0, 4 * noise / GOOD_MAGNITUDE), 2.0)

    # --- how good

    def relative(self, sections: Sections) -> Complex:
        """Error over the whole: the real part is the magnitude's, the imaginary part the phase's in radian."""
        return np.asarray((sections.impedance(self.freq_hz) - self.wanted) / self.whole, np.complex128)

    def score(self, sections: Sections) -> float:
        """The worst error, 1 being good."""
        whole = self.whole
        magnitude, phase_deg = errors(whole + (sections.impedance(self.freq_hz) - self.wanted), whole)
        return float(max(np.abs(magnitude).max() / GOOD_MAGNITUDE, np.abs(phase_deg).max() / GOOD_PHASE_DEG))

    def good(self, sections: Sections) -> bool:
        return self.score(sections) <= self.enough

    def rms(self, sections: Sections) -> float:
        return float(np.sqrt(np.mean(np.abs(self.relative(sections)) ** 2)))

    # --- where to begin

    def peaks(self) -> list[tuple[float, float]]:
        """Resonances (rad/s, Q) at the peaks of the real part, highest first, and one below a falling start."""
        real = self.wanted.real
        height = np.convolve(np.pad(real, 1, mode="edge"), [0.25, 0.5, 0.25], "valid")
        found = []
        for at in range(1, len(height) - 1):
            if not height[at - 1] < height[at] >= height[at + 1]:
                continue
            base = max(_foot(height[at::-1]), _foot(height[at:]))
            if height[at] > (1 + max(0.02, 6 * self.noise)) * max(base, 0.0):
                found.append((float(height[at] - base), self._width(height, at, base)))
        centres = [shape for _, shape in sorted(found, reverse=True)[: MOST_RESONANCES - 1]]
        if self.wanted.imag[0] < 0 and not any(centre < 2 * self.low for centre, _ in centres):
            centres.append((0.7 * self.low, 2.0))
        return centres

    def _width(self, height: Real, at: int, base: float) -> tuple[float, float]:
        half = (height[at] + base) / 2
        below = next((i for i in range(at, -1, -1) if height[i] < half), 0)
        above = next((i for i in range(at, len(height)) if height[i] < half), len(height) - 1)
        centre = float(self.omega[at])
        return centre, float(np.clip(centre / (self.omega[above] - self.omega[below]), 0.3, 50.0))

    def worst_place(self, sections: Sections) -> tuple[float, float]:
        """Where a further resonance would help most."""
        lacking = -self.relative(sections).real
        return float(self.omega[int(np.argmax(np.convolve(lacking, np.ones(5) / 5, "same")))]), 4.0

    def start(self, corners: Real, centres: list[tuple[float, float]]) -> Sections:
        """Sizes for given corners and resonances, by linear least squares without negative parts."""
        from scipy.optimize import nnls

        free = self.series_ohm is None
        columns = [np.ones_like(self.s)] if free else []
        columns += [self.s]
        columns += [_parallel(1.0, corner, self.s) for corner in corners]
        columns += [_resonance(1.0, centre, q, self.s) for centre, q in centres]
        matrix = _real_rows(np.array(columns).T / self.whole[:, None])
        scale = np.linalg.norm(matrix, axis=0)
        sizes = nnls(matrix / scale, _real_rows((self.wanted - (self.series_ohm or 0.0)) / self.whole))[0] / scale
        # What came out as zero begins small instead, so that its logarithm exists and it may grow again.
        least = 1e-3 * float(np.abs(self.whole).min())
        series_ohm = max(float(sizes[0]), least) if free else self.series_ohm
        sizes = sizes[1:] if free else sizes
        ohms = [max(float(size), least) for size in sizes[1:]]
        assert series_ohm is not None
        return Sections(
            series_ohm,
            max(float(sizes[0]), least / self.high),
            tuple((ohm, float(corner)) for ohm, corner in zip(ohms, corners, strict=False)),
            tuple((ohm, *shape) for ohm, shape in zip(ohms[len(corners) :], centres, strict=True)),
        )

    # --- the search

    def grow(self, centres: list[tuple[float, float]]) -> Sections:
        """The best chain with these resonances: sections are added until it is good or no longer gains."""
        best: Sections | None = None
        idle = 0
        for count in range(1, MOST_SECTIONS + 1):
            corners = np.geomspace(self.low / 1.5, self.high * 1.5, count + 2)[1:-1]
            trial = self.polished(self.start(corners, centres))
            gain = self.rms(trial) / self.rms(best) if best is not None else 0.0
            idle = 0 if gain < 0.95 else idle + 1
            if best is None or gain < 1:
                best = trial
            if self.good(best) or idle == 2:
                break
        assert best is not None
        return best

    def polished(self, sections: Sections) -> Sections:
        """Move all numbers of the chain to the nearest least squares of the relative error."""
        from scipy.optimize import least_squares

        shape = (len(sections.parallel), len(sections.resonances))
        found = least_squares(
            lambda x: self._residual(x, shape),
            self._parameters(sections),
            lambda x: self._jacobian(x, shape),
            method="lm",
            max_nfev=80,
        )
        return self._pruned(self._sections(found.x, shape))

    def _parameters(self, sections: Sections) -> Real:
        numbers = [sections.series_ohm] if self.series_ohm is None else []
        numbers += [sections.series_henry]
        numbers += [number for section in (*sections.parallel, *sections.resonances) for number in section]
        return np.asarray(np.log(numbers), np.float64)

    def _sections(self, x: Real, shape: tuple[int, int]) -> Sections:
        numbers = np.exp(np.clip(x, -60.0, 60.0)).tolist()
        series_ohm = numbers.pop(0) if self.series_ohm is None else self.series_ohm
        first, cut = numbers.pop(0), 2 * shape[0]
        corner_low, corner_high = self.lowest_corner, 30 * self.high
        return Sections(
            series_ohm,
            first,
            tuple(
                (ohm, min(max(corner, corner_low), corner_high))
                for ohm, corner in zip(numbers[0:cut:2], numbers[1:cut:2], strict=True)
            ),
            tuple(
                (ohm, min(max(centre, self.low / 10), 10 * self.high), min(max(q, 0.05), 100.0))
                for ohm, centre, q in zip(numbers[cut::3], numbers[cut + 1 :: 3], numbers[cut + 2 :: 3], strict=True)
            ),
        )

    def _parts(self, relative: Complex) -> Complex:
        """Scaled so that a phase error of one degree weighs as much as a magnitude error of one percent."""
        return np.asarray(relative.real + 1j * np.degrees(relative.imag) / 100, np.complex128)

    def _residual(self, x: Real, shape: tuple[int, int]) -> Real:
        return _real_rows(self._parts(self.relative(self._sections(x, shape))))

    def _jacobian(self, x: Real, shape: tuple[int, int]) -> Real:
        sections, s = self._sections(x, shape), self.s
        columns = [np.full_like(s, sections.series_ohm)] if self.series_ohm is None else []
        columns.append(s * sections.series_henry)
        for ohm, corner in sections.parallel:
            value = _parallel(ohm, corner, s)
            columns += [value, -value * corner / (s + corner)]
        for ohm, centre, q in sections.resonances:
            value, detuning = _resonance(ohm, centre, q, s), s / centre + centre / s
            slope = value * q / (1 + q * detuning)
            columns += [value, slope * (s / centre - centre / s), -slope * detuning]
        return _real_rows(np.array([self._parts(column / self.whole) for column in columns]).T)

    def _pruned(self, sections: Sections) -> Sections:
        """Without what adds nothing: less than a millionth of the whole at every point."""
        least = 1e-6 * np.abs(self.whole)

        def counts(value: Complex) -> bool:
            return bool(np.any(np.abs(value) > least))

        return Sections(
            sections.series_ohm,
            sections.series_henry if counts(self.s * sections.series_henry) else 0.0,
            tuple(p for p in sections.parallel if counts(_parallel(*p, self.s))),
            tuple(r for r in sections.resonances if counts(_resonance(*r, self.s))),
        )


def _real_rows(values: Complex) -> Real:
    """Real parts above imaginary parts."""
    return np.concatenate([values.real, values.imag])


def _foot(falling: Real) -> float:
    """The lowest value on the way from a peak until something higher than the peak comes."""
    higher = np.flatnonzero(falling > falling[0])
    return float(falling[: higher[0]].min() if len(higher) else falling.min())
