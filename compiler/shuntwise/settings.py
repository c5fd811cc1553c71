"""Values to try, given outside the design: `L1=0.75mH`, `L1.dcr=0.3ohm`, `200Hz`, or what was measured of a box.

In: texts from a command line or a script, a box. Out: the statements or quantities that they mean, or an
exception that says how to write them. They are read by the language's own parser.
"""

from __future__ import annotations

from collections.abc import Sequence

from shuntwise import units
from shuntwise.diagnostics.diagnostic import Diagnostic
from shuntwise.model.box import Box
from shuntwise.model.evaluate import Scope
from shuntwise.model.kinds import Attribute
from shuntwise.source import Source
from shuntwise.syntax.parser import parse
from shuntwise.syntax.tree import Let, Set


class SettingUnclear(Exception):
    """A text that is no setting: what is wrong, and how to write it."""

    def __init__(self, message: str, help: str) -> None:
        super().__init__(message)
        self.help = help


def read_settings(settings: Sequence[str]) -> tuple[Set, ...]:
    """Each text `NAME=VALUE` as the statement `set NAME=VALUE`. Raises SettingUnclear."""
    return tuple(_setting(text) for text in settings)


def settings_of(box: Box) -> tuple[str, ...]:
    """What was measured of a box as tried values, with the share by which it may be off as the part's tolerance.

    A value is written as a product, so that none takes it for one that is printed on a part.
    """
    told = []
    for label, (quantity, share) in box.measured.items():
        told += [
            f"{label}=1 * {units.write(quantity.value, quantity.dimension, 9)}",
            f"{label}.tolerance={100 * share:.6g} %",
        ]
    return tuple(told)


def _setting(text: str) -> Set:
    tree, findings = parse(Source("--set", f"set {text}\n"))
    entry = tree.entries[0] if len(tree.entries) == 1 else None
    if findings or not isinstance(entry, Set) or "\n" in text:
        raise SettingUnclear(f"the setting `{text}` cannot be understood", "write it as L1=0.75mH or L1.dcr=0.3ohm")
    return entry


def read_frequency(text: str) -> float:
    """A frequency in Hz, from `200Hz`, `2.4 kHz` or a plain number of hertz. Raises SettingUnclear."""
    plain = text.strip().replace(".", "", 1).isdigit()
    tree, findings = parse(Source("frequency", f"let f = {text}{' Hz' * plain}\n"))
    entry = tree.entries[0] if len(tree.entries) == 1 else None
    said: list[Diagnostic] = []
    quantity = None
    if not findings and isinstance(entry, Let) and "\n" not in text:
        quantity = Scope({}, said).typed(entry.value, Attribute("f", units.HERTZ, 1e-3, 1e7, "a frequency"), "f")
    if quantity is None:
        raise SettingUnclear(f"`{text}` is no frequency between 1 mHz and 10 MHz", "write it as 200Hz or 2.4kHz")
    return quantity.value
