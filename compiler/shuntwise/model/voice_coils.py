"""A driver of two voice coils -> two drivers, one for each coil, on one former.

In: the driver as declared, and the pads that walks touch. Out: the coils that are wired, called `sub.a` and `sub.b`. A
coil of which no pad is wired carries no current, and is left out. Refuses to know how coils are solved.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping
from dataclasses import replace

from shuntwise import units as u
from shuntwise.model import findings
from shuntwise.model.design import Driver, Quantity
from shuntwise.model.evaluate import Scope
from shuntwise.model.kinds import COIL_COUPLING, COILS

_NOT_OF_TWO = ("bl", "semi_k", "semi_n", "r_factor", "r_exponent", "x_factor", "x_exponent")


def coils(driver: Driver, scope: Scope) -> tuple[Driver, ...]:
    """The coils of a driver that has two; itself where it has one.

    Both coils together, in series or side by side, have the stated Qes = 2 pi fs Mms Re / (Bl)^2; one of them alone has
    half the Bl for half the resistance in series, or as much Bl for twice the resistance side by side: twice the Qes
    (from the definitions in R. H. Small, J. Audio Eng. Soc. 20(5), 1972).
    """
    quantities = dict(driver.quantities)
    count, k = quantities.pop("coils", None), quantities.pop("k", None)
    if count is None or count.value == 1:
        if k is not None:
            scope.say(findings.value_unclear(k.span, f"`{driver.name}` has one voice coil, which couples with none",
                                             "write `coils 2`, or leave `k` out"))  # fmt: skip
        return (replace(driver, quantities=quantities),)
    fitted = next((quantities[key] for key in _NOT_OF_TWO if key in quantities), None)
    table = driver.measured_span
    if count.value != 2:
        said = findings.value_unclear(
            count.span,
            f"`{driver.name}` cannot have {count.value:g} voice coils",
            "a driver has one voice coil or two: write `coils 2`",
        )
    elif fitted is not None or table is not None:
        where = fitted.span if fitted is not None else table
        assert where is not None
        said = findings.value_unclear(where, f"`{driver.name}` has two voice coils, which are told by re and le",
                                      "give these two, of one coil, and mms instead of bl")  # fmt: skip
    else:
        said = None
    if said is not None:
        scope.say(said)
    for key, factor in (("qes", 2.0), ("power", 0.5)):
        if key in quantities:
            quantities[key] = _times(quantities[key], factor)
    if "qts" in quantities:
        quantities |= _alone(quantities)
    return tuple(
        replace(
            driver,
            name=f"{driver.name}.{coil}",
            quantities=quantities,
            coil_of=driver.name,
            coils_k=k.value if k is not None else COIL_COUPLING,
            model_refused=driver.model_refused or said is not None,
        )
        for coil in COILS
    )


def _alone(quantities: Mapping[str, Quantity]) -> dict[str, Quantity]:
    """The total Q with one coil alone, where it is stated for both: 1/Qts = 1/Qms + 1/Qes."""
    qts = quantities["qts"]
    if "qes" in quantities:  # doubled already
        qes = quantities["qes"].value
        mechanical = 1 / qts.value - 2 / qes
        return {"qts": _times(qts, 1 / (mechanical + 1 / qes) / qts.value)} if mechanical > 0 else {}
    if "qms" in quantities:
        qms = quantities["qms"].value
        electrical = 1 / qts.value - 1 / qms
        return {"qts": _times(qts, 1 / (1 / qms + electrical / 2) / qts.value)} if electrical > 0 else {}
    return {}


def _times(quantity: Quantity, factor: float) -> Quantity:
    value = quantity.value * factor
    return replace(quantity, value=value, text=u.write(value, quantity.dimension, 4))


def wired(drivers: Mapping[str, Driver], points: Collection[str]) -> dict[str, Driver]:
    """The drivers without the open coils of those of which another is wired; the second of two knows the first."""
    found: dict[str, Driver] = {}
    for name, driver in drivers.items():
        mates = [mate for mate in drivers.values() if mate.coil_of == driver.coil_of and driver.coil_of is not None]
        touched = [mate.name for mate in mates if not {f"{mate.name}+", f"{mate.name}-"}.isdisjoint(points)]
        if touched and name not in touched:
            continue
        first = next((mate for mate in touched if mate != name and mate in found), None)
        found[name] = replace(driver, other=first)
    return found
