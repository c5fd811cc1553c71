"""What a driver's impedance is made of: ideal elements for every way in which a driver may be described.

In: a `Driver` of the design. Out: a `DriverModel`, a chain of stages from its plus to its minus, and the fit
report where elements stand for a formula or a table that no few elements are. It refuses to know nodes.

A new voice coil or a new box is one function and one row in `VOICE_COILS` or `MOTIONS`. What needs numerical
libraries imports them inside, so that designs without such drivers never load them.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from functools import lru_cache
from math import pi
from typing import TYPE_CHECKING, Any

from shuntwise.model.design import Driver, ImpedanceTable
from shuntwise.network.ideal import Ideal, Stage
from shuntwise.network.network import ElementKind, FitReport

if TYPE_CHECKING:
    from shuntwise.network.fit import Sections

BAND_HZ = (20.0, 20_000.0)
"""Where a formula is fitted, and where the fit is held to its promise."""

TABLE_BAND_HZ = (10.0, 24_000.0)
"""Points of a measured table outside this band are left out: they say nothing about the audio band."""

TYPICAL_QL = 7.0
"""Box leakage Q where none is given: R. H. Small, Vented-box loudspeaker systems, part 1, 1973, takes 7."""


@dataclass(frozen=True)
class DriverModel:
    """Stages in series from plus to minus. The first is a single resistor: it carries the driver's current."""

    stages: tuple[Stage, ...]
    fit: FitReport | None = None


def driver_model(driver: Driver) -> DriverModel:
    """The elements of a driver, from the best that is known of it. Slow (some 50 ms) once for each fit.

    Raises ValueError where `lacks` has something to say.
    """
    if lacking := lacks(driver):
        raise ValueError(lacking)
    q = {key: quantity.value for key, quantity in driver.quantities.items()}
    if driver.measured is not None:
        model = _measured(driver.measured, q.get("re"))
    elif "re" in q:
        model = _from_parameters(q)
        if driver.other is not None:
            model = replace(model, stages=tuple(map(_carried, model.stages)))
    else:
        assert driver.nominal is not None
        model = DriverModel((_single("R", "nominal", driver.nominal.value),))
    if model.fit is not None:
        return replace(model, fit=replace(model.fit, driver=driver.name))
    return model


def lacks(driver: Driver) -> str | None:
    """What is missing for a model, in words that complete "not checked: ...", or None."""
    if driver.model_refused:
        return f"a sound model of `{driver.name}`"
    if driver.nominal is None and "re" not in driver.quantities and driver.measured is None:
        return f"the impedance of `{driver.name}`"
    return None


def needs_fit(driver: Driver) -> bool:
    """Is this driver described by a table or a formula that elements can only come near?"""
    return driver.measured is not None or not {"semi_k", "r_factor"}.isdisjoint(driver.quantities)


def _carried(stage: Stage) -> Stage:
    """A stage of the second of two voice coils: of a motional impedance, the coil that is coupled with the first's.

    What else moves with the cone is seen through it.
    """
    return tuple(chain for chain in stage if chain[0].quantity == "lces") or stage


# --- motion: the cone on its suspension, in free air or in a box


def _resonance(q: dict[str, float]) -> tuple[float, float, float]:
    """Res = Re Qms/Qes, Lces = Re/(2 pi fs Qes), Cmes = Qes/(2 pi fs Re): R. H. Small, Direct-radiator
    loudspeaker system analysis, J. Audio Eng. Soc. 20(5), 1972; 1/Qts = 1/Qms + 1/Qes.
    """
    re, omega = q["re"], 2 * pi * q["fs"]
    qms = q["qms"] if "qms" in q else 1 / (1 / q["qts"] - 1 / q["qes"])
    qes = q["qes"] if "qes" in q else 1 / (1 / q["qts"] - 1 / qms)
    return re * qms / qes, re / (omega * qes), qes / (omega * re)


def _free_air(q: dict[str, float]) -> Stage:
    res, lces, cmes = _resonance(q)
    return (Ideal("R", "res", res),), (Ideal("L", "lces", lces),), (Ideal("C", "cmes", cmes),)


def _sealed_box(q: dict[str, float]) -> Stage:
    """The air in the box is a second spring: Lceb = Lces/alpha beside Lces.

    R. H. Small, Closed-box loudspeaker systems, part 1: analysis, J. Audio Eng. Soc. 20(10), 1972.
    """
    _, lces, _ = _resonance(q)
    return *_free_air(q), (Ideal("L", "lceb", lces / q["alpha"]),)


def _vented_box(q: dict[str, float]) -> Stage:
    """Beside the cone: the air in the box, the air in the vent and the leaks, in series.

    Lceb = Lces/alpha, Cmep = 1/(wb^2 Lceb), Rel = wb Lceb/Ql with wb = 2 pi fb. R. H. Small, Vented-box
    loudspeaker systems, part 1: small-signal analysis, J. Audio Eng. Soc. 21(5), 1973.
    """
    _, lces, _ = _resonance(q)
    lceb, omega_box = lces / q["alpha"], 2 * pi * q["fb"]
    box = (
        Ideal("L", "lceb", lceb),
        Ideal("C", "cmep", 1 / (omega_box**2 * lceb)),
        Ideal("R", "rel", omega_box * lceb / q.get("ql", TYPICAL_QL)),
    )
    return *_free_air(q), box


MOTIONS: tuple[tuple[str, Callable[[dict[str, float]], Stage]], ...] = (
    ("fb", _vented_box),
    ("alpha", _sealed_box),
    ("fs", _free_air),
)
"""The first whose key is given is used."""


# --- the voice coil beyond its resistance


def _plain_inductance(q: dict[str, float], _: tuple[Stage, ...]) -> DriverModel:
    return DriverModel((_single("L", "le", q["le"]),))


def _semi_inductance(q: dict[str, float], motion: tuple[Stage, ...]) -> DriverModel:
    """Ze = K (j w)^n. W. M. Leach, Loudspeaker voice-coil inductance losses: circuit models, parameter
    estimation, and effect on frequency response, J. Audio Eng. Soc. 50(6), 2002.
    """
    k, n = q["semi_k"], q["semi_n"]
    return _fitted_coil("the semi-inductance", (k, n, k, n), True, q["re"], motion)


def _power_laws(q: dict[str, float], motion: tuple[Stage, ...]) -> DriverModel:
    """Ze = Kr w^Xr + j Ki w^Xi. J. R. Wright, An empirical model for loudspeaker motor impedance, J. Audio
    Eng. Soc. 38(10), 1990. Its two parts are chosen freely, so it is passive and causal only by luck.
    """
    powers = (q["r_factor"], q["r_exponent"], q["x_factor"], q["x_exponent"])
    return _fitted_coil("the power laws of the coil", powers, False, q["re"], motion)


VOICE_COILS: tuple[tuple[str, Callable[[dict[str, float], tuple[Stage, ...]], DriverModel]], ...] = (
    ("semi_k", _semi_inductance),
    ("r_factor", _power_laws),
    ("le", _plain_inductance),
)
"""The first whose key is given is used; the second argument is what the coil is in series with."""


def _from_parameters(q: dict[str, float]) -> DriverModel:
    motion = next(((build(q),) for key, build in MOTIONS if key in q), ())
    coil = next((build(q, motion) for key, build in VOICE_COILS if key in q), DriverModel(()))
    return DriverModel((_copper(q["re"]), *coil.stages, *motion), coil.fit)


# --- what must be fitted


@lru_cache(maxsize=256)
def _fitted_coil(
    stands_for: str, powers: tuple[float, float, float, float], semi: bool, re: float, motion: tuple[Stage, ...]
) -> DriverModel:
    """Sections for a voice coil; the errors are those of the whole driver. The DC resistance stays `re`."""
    import numpy as np

    from shuntwise.network import fit

    freq_hz = np.geomspace(*BAND_HZ, 241)
    s = 2j * np.pi * freq_hz
    kr, xr, ki, xi = powers
    wanted = kr * s**xr if semi else kr * np.abs(s) ** xr + 1j * ki * np.abs(s) ** xi
    beside = re + stages_impedance(motion, s)
    sections = fit.fit(freq_hz[::2], wanted[::2], beside=beside[::2])
    errors = fit.errors(beside + sections.impedance(freq_hz), beside + wanted)
    return DriverModel(_stages(sections), _report(stands_for, sections, freq_hz, errors))


@lru_cache(maxsize=64)
def _measured(table: ImpedanceTable, re: float | None) -> DriverModel:
    """Sections and resonances for a measured table.

    A DC resistance that was given is kept if the table lies nowhere below it: in such a chain the real part
    never falls below its value at DC.
    """
    import numpy as np

    from shuntwise.network import fit

    low, high = TABLE_BAND_HZ
    points = [(freq, ohm) for freq, ohm in zip(table.freq_hz, table.ohm, strict=True) if low <= freq <= high]
    freq_hz = np.array([freq for freq, _ in points])
    wanted = np.array([ohm for _, ohm in points])
    series_ohm = re if re is not None and re <= float(wanted.real.min()) else None
    sections = fit.fit(freq_hz, wanted, series_ohm=series_ohm, resonances=True)
    errors = fit.errors(sections.impedance(freq_hz), wanted)
    report = _report("the measured table", sections, freq_hz, errors, fit.scatter(wanted))
    return DriverModel((_copper(sections.series_ohm), *_stages(sections)), report)


def stages_impedance(stages: tuple[Stage, ...], s: Any) -> Any:
    """Ohm of stages in series at the complex frequencies `s` (F,) in rad/s."""

    def impedance(item: Ideal) -> Any:
        return item.value if item.kind == "R" else s * item.value if item.kind == "L" else 1 / (s * item.value)

    return sum(1 / sum(1 / sum(impedance(item) for item in chain) for chain in stage) for stage in stages) + 0 * s


def _stages(sections: Sections) -> tuple[Stage, ...]:
    stages: list[Stage] = []
    if sections.series_henry > 0:
        stages.append(_single("L", "le", sections.series_henry))
    for number, (ohm, corner) in enumerate(sections.parallel, 1):
        stages.append(((Ideal("R", f"r{number}", ohm),), (Ideal("L", f"l{number}", ohm / corner),)))
    for number, (ohm, centre, q) in enumerate(sections.resonances, 1):
        stages.append(
            (
                (Ideal("R", f"res{number}", ohm),),
                (Ideal("L", f"lces{number}", ohm / (q * centre)),),
                (Ideal("C", f"cmes{number}", q / (ohm * centre)),),
            )
        )
    return tuple(stages)


def _report(stands_for: str, sections: Sections, freq_hz: Any, errors: Any, scatter: float = 0.0) -> FitReport:
    magnitude, phase_deg = errors
    counts = len(sections.parallel), len(sections.resonances)
    return FitReport(
        "", stands_for, *counts, tuple(freq_hz.tolist()), tuple(magnitude.tolist()), tuple(phase_deg.tolist()), scatter
    )


def _single(kind: ElementKind, quantity: str, value: float) -> Stage:
    return ((Ideal(kind, quantity, value),),)


def _copper(ohm: float) -> Stage:
    """The DC resistance of the voice coil."""
    return ((Ideal("R", "re", ohm, copper=True),),)
