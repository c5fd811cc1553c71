"""Response -> the response table: aligned text to read, CSV to work on.

In: a solved response. Out: columns of numbers with units in their heads, as text or as CSV. Levels are dB over
the input's 1 V. It refuses to know which frequencies are worth a row: the response brings them.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import groupby
from math import isnan
from typing import TYPE_CHECKING

import numpy as np
import numpy.typing as npt

from shuntwise.diagnostics.terminal import cell_width, visible
from shuntwise.documents.page import Table
from shuntwise.response.measures import FLOOR_DB
from shuntwise.response.sensitivity import group_delay

if TYPE_CHECKING:
    from shuntwise.network.network import Network
    from shuntwise.response.solve import Response

Real = npt.NDArray[np.float64]

FORMULA_STARTS = ("=", "+", "-", "@", "\t", "\r")
"""A cell of text that begins so is a formula to spreadsheets (OWASP, CSV Injection; from memory)."""


@dataclass(frozen=True)
class Column:
    """Numbers of one kind: `owner` is a driver, an input or empty. NaN stands where there is no number.

    `layout` is how the text table writes them.
    """

    owner: str
    quantity: str
    unit: str
    layout: str
    values: Real


def response_rows(response: Response, network: Network) -> tuple[Column, ...]:
    """Frequency; level, phase and group delay of each driver's voltage; modulus and phase of each input's impedance.

    All of shape (F,). Where a driver has no voltage at all, or no current flows in at an input, there is no
    number.
    """
    columns = [Column("", "frequency", "Hz", "z.1f", response.freq_hz)]
    for driver in network.drivers:
        voltage = response.driver_voltage(driver.name)
        columns += [
            Column(driver.name, "level", "dB", "z.2f", decibels(voltage)),
            Column(driver.name, "phase", "deg", "z.1f", degrees(voltage)),
            Column(driver.name, "group delay", "ms", "z.3f", delay_ms(response, driver.name)),
        ]
    for feed in network.feeds:
        impedance = input_impedance(response, feed.name)
        columns += [
            Column(feed.name, "impedance", "ohm", "z.2f", np.abs(impedance)),
            Column(feed.name, "phase", "deg", "z.1f", degrees(impedance)),
        ]
    return tuple(columns)


def as_plain(response: Response, network: Network) -> dict[str, object]:
    """The same for machines: the frequencies (Hz), one object a driver and one an input, each with complex values."""

    def of(value: npt.NDArray[np.complex128], **more: Real) -> dict[str, object]:
        whole = {"real": value.real, "imag": value.imag, **more, "phase_deg": degrees(value)}
        return {name: column.tolist() for name, column in whole.items()}

    drivers, inputs = [], []
    for driver in network.drivers:
        voltage = response.driver_voltage(driver.name)
        delay = delay_ms(response, driver.name)
        drivers.append({"name": driver.name, **of(voltage, level_db=decibels(voltage), group_delay_ms=delay)})
    for feed in network.feeds:
        impedance = input_impedance(response, feed.name)
        inputs.append({"name": feed.name, **of(impedance, ohm=np.abs(impedance))})
    return {"freq_hz": response.freq_hz.tolist(), "drivers": drivers, "inputs": inputs}


def decibels(voltage: npt.NDArray[np.complex128]) -> Real:
    """20 log10 of the modulus, NaN where that is below FLOOR_DB: it is zero then, but for rounding."""
    size = np.abs(voltage)
    return 20 * np.log10(np.where(size >= 10 ** (FLOOR_DB / 20), size, np.nan))


def degrees(value: npt.NDArray[np.complex128]) -> Real:
    """The phase in degrees, above -180 and up to 180; NaN where the value is zero or none."""
    angle = np.degrees(np.angle(value))
    return _where(value, np.where(angle <= -180, 180.0, angle))


def delay_ms(response: Response, driver: str) -> Real:
    """The group delay of a driver's voltage (ms), NaN where that is zero; from the exact derivative."""
    return _where(response.driver_voltage(driver), 1e3 * group_delay(response, driver))


def input_impedance(response: Response, name: str) -> npt.NDArray[np.complex128]:
    """V/I at an input (ohm), NaN where no current flows in."""
    admittance = response.admittance(name)
    impedance = np.full(admittance.shape, complex(np.nan, np.nan))
    np.divide(1, admittance, out=impedance, where=admittance != 0)
    return impedance


def _where(value: npt.NDArray[np.complex128], result: Real) -> Real:
    return np.where(np.isfinite(value) & (value != 0), result, np.nan)


def as_text(columns: Sequence[Column]) -> str:
    """The table with aligned columns: whose they are, quantities, units, then one line to each frequency."""
    blocks = [_block(owner, list(group)) for owner, group in groupby(columns, key=lambda column: column.owner)]
    return "".join("   ".join(row).rstrip() + "\n" for row in zip(*blocks, strict=True))


def _block(owner: str, columns: Sequence[Column]) -> list[str]:
    """The columns of one owner, right-aligned, under its name."""
    cells = [[column.quantity, column.unit, *_written(column)] for column in columns]
    widths = [max(map(len, column)) for column in cells]
    rows = ["  ".join(cell.rjust(width) for cell, width in zip(row, widths, strict=True))
            for row in zip(*cells, strict=True)]  # fmt: skip
    width = max(len(rows[0]), cell_width(owner))
    return [visible(owner) + " " * (width - cell_width(owner)), *(row.rjust(width) for row in rows)]


def as_tables(columns: Sequence[Column], every: int = 1) -> tuple[Table, ...]:
    """The same for pages: one table to each owner, with the frequency in front; one in `every` rows."""
    freq, *others = columns

    def named(column: Column) -> tuple[str, ...]:
        return f"{column.quantity} ({column.unit})", *_written(column)[:: max(every, 1)]

    tables = []
    for owner, group in groupby(others, key=lambda column: column.owner):
        heads, *rows = zip(named(freq), *map(named, group), strict=True)
        tables.append(Table((f"{owner}: {heads[0]}", *heads[1:]), tuple(rows), frozenset()))
    return tuple(tables)


def _written(column: Column) -> list[str]:
    return ["-" if isnan(value) else format(value, column.layout) for value in column.values]


def as_csv(columns: Sequence[Column]) -> str:
    """The table in the form of RFC 4180: a header with units, then one record to each frequency.

    Lines end with CR LF, as section 2 of the RFC says. Numbers have 9 significant digits: more than any part
    is known to, few enough that two machines write the same file. Where there is no number the cell is empty.
    """
    head = [cell(f"{column.owner} {column.quantity} ({column.unit})".lstrip()) for column in columns]
    numbers = (["" if isnan(value) else f"{value:.9g}" for value in column.values] for column in columns)
    return "".join(",".join(row) + "\r\n" for row in [head, *zip(*numbers, strict=True)])


def cell(text: str) -> str:
    """A cell of text: not a formula to a spreadsheet, quoted where the RFC asks for it, nothing hidden in it."""
    text = ("'" if text.startswith(FORMULA_STARTS) else "") + visible(text)
    return '"' + text.replace('"', '""') + '"' if any(mark in text for mark in ',"') else text
