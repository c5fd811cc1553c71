"""Declarations of parts, drivers and amplifier -> typed values.

In: one declaration, the names in scope, the changes laid over it. Out: a `Part`, `Driver` or `Amplifier`; what is
wrong with it goes to the scope. A part whose value is refused stays, so that it keeps its place in the wiring.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import replace

from shuntwise import units as u
from shuntwise.model import findings, kinds
from shuntwise.model.changes import Changes
from shuntwise.model.conductors import RESISTIVITY_OHM_M
from shuntwise.model.design import Amplifier, Cable, Driver, ImpedanceTable, Part, Quantity
from shuntwise.model.driver_check import check_driver, resonance_of
from shuntwise.model.evaluate import Scope
from shuntwise.model.instruments import USUAL, Instruments
from shuntwise.model.items import Attributes, read_items
from shuntwise.model.part_check import check_part
from shuntwise.model.wiring import RETURN_WORDS
from shuntwise.source import Source
from shuntwise.syntax import tree as t

_READ_ALL_THE_SAME = ("decimal-comma", "needless-key")
"""Findings behind which the attribute still counts."""

_ROLE_NAME = re.compile(rf"({'|'.join(kinds.ROLES)})(?:s?\d+|_\w+)?")


def read_part(entry: t.PartDecl, label: str, scope: Scope, changes: Changes) -> Part:
    """A part as declared and changed; `label` has the names of the networks around it in front."""
    kind = kinds.KINDS[entry.kind.text]
    if label in RETURN_WORDS:
        scope.say(
            findings.error(
                "reserved-name",
                entry.name.span,
                f"`{label}` cannot name a part",
                help="it is the word for the input's minus: choose another name",
                subjects=(label,),
            )
        )
    span, name_span = entry.span, entry.name.span
    value: Quantity | None = None
    if kind.value is None:
        if entry.value is not None:
            scope.say(
                findings.error(
                    "unit-wrong-kind",
                    entry.value.span,
                    f"a {kind.word} has no value",
                    help=f"a {kind.word} is a wire; for a low resistance declare a resistor" if kind.wire else "",
                    subjects=(label,),
                )
            )
    elif entry.value is None and label not in changes.sets:
        scope.say(
            findings.error(
                "value-missing",
                name_span,
                f"`{label}` has no value",
                label=f"a {kind.word} without {kind.value.meaning}",
                help=f"write it behind the name: `{kind.word} {entry.name.text} {kind.example_value}`",
                subjects=(label,),
            )
        )
    else:
        value = changes.value(label, entry.value, kind.value, scope)
    before = len(scope.diagnostics)
    attributes = read_items(entry.items, kind, scope, label)
    changes.lay_over(attributes, label, kind, scope)
    refused = any(finding.name not in _READ_ALL_THE_SAME for finding in scope.diagnostics[before:])
    if isinstance(entry.value, t.Code) and value is not None:
        code = u.read_code(entry.value.text)
        if code and code.tolerance and "tolerance" not in attributes.quantities:
            attributes.quantities["tolerance"] = Quantity(code.tolerance, u.PLAIN, value.span, value.text)
    construction = next(iter(attributes.words), None)
    part = Part(
        label,
        kind.word,
        value,
        attributes.quantities,
        construction,
        attributes.notes,
        changes.fitted(label),
        span,
        name_span,
        refused,
    )
    return check_part(part, entry, scope)


def read_driver(
    entry: t.DriverDecl, scope: Scope, changes: Changes, attached: Mapping[tuple[Source, str], Source | None]
) -> Driver:
    """A driver as declared and changed; `attached` holds the texts of data files by who names them and how."""
    name = entry.name.text
    kind = kinds.DRIVER
    assert kind.value is not None
    nominal = changes.value(name, entry.value, kind.value, scope)
    before = len(scope.diagnostics)
    attributes = read_items(entry.items, kind, scope, name, word_keys={"role": kinds.ROLES})
    changes.lay_over(attributes, name, kind, scope)
    unread = any(finding.name not in _READ_ALL_THE_SAME for finding in scope.diagnostics[before:])
    role_word = attributes.keyed_words.get("role")
    match = _ROLE_NAME.fullmatch(name)
    role = role_word.text if role_word else match[1] if match else None
    if name in RETURN_WORDS:
        scope.say(
            findings.error(
                "reserved-name",
                entry.name.span,
                f"`{name}` cannot name a driver",
                help="it is the word for the input's minus: choose another name",
            )
        )
    quantities, named = attributes.quantities, attributes.files.get("measured")
    table = _table(named, scope, attached)
    written = {item.key.text for item in entry.items if item.key is not None}
    said, refused = check_driver(name, quantities, written, named.span if named else None)
    scope.diagnostics.extend(said)
    return Driver(
        name,
        nominal,
        quantities if refused else resonance_of(quantities),
        role,
        attributes.notes,
        entry.span,
        entry.name.span,
        measured=table,
        measured_span=named.span if named else None,
        model_refused=refused or (named is not None and table is None),
        refused=unread,
        programme_rated="programme power" in attributes.words,
        stated=quantities,
    )


def _table(
    named: t.Text | None, scope: Scope, attached: Mapping[tuple[Source, str], Source | None]
) -> ImpedanceTable | None:
    """The table that a driver names; what is wrong with it has been said, or is said here."""
    source = attached.get((named.span.source, named.value)) if named else None
    if source is None:
        return None
    from shuntwise.model.measured import read_table  # few designs have a measured driver

    table, said = read_table(source)
    scope.diagnostics.extend(said)
    return table


def read_amplifier(entry: t.AmplifierDecl, scope: Scope, changes: Changes) -> Amplifier:
    """The amplifier as declared and changed."""
    kind = kinds.AMPLIFIER
    assert kind.value is not None
    power = scope.typed(entry.power, kind.value, "amplifier")
    load = scope.typed(entry.load, kinds.AMPLIFIER_LOAD, "amplifier")
    attributes = read_items(entry.items, kind, scope, "amplifier", word_keys={"programme": kinds.PROGRAMMES})
    changes.lay_over(attributes, "amplifier", kind, scope)
    word = attributes.keyed_words.get("programme")
    programme = word.text if word is not None else kinds.PROGRAMMES[0]
    bridged = "bridged" in attributes.words
    cable = _cable(entry, attributes, scope)
    return Amplifier(power, load, attributes.quantities, bridged, entry.span, programme, cable)


def read_instruments(
    entry: t.BenchDecl | None, scope: Scope, changes: Changes, others: Instruments = USUAL
) -> Instruments:
    """What stands on the bench as declared and changed; the rest as in `others`."""
    attributes = read_items(entry.items if entry is not None else (), kinds.BENCH, scope, "bench")
    changes.lay_over(attributes, "bench", kinds.BENCH, scope)
    stated = {_FIELD_OF[name]: quantity.value for name, quantity in attributes.quantities.items() if name in _FIELD_OF}
    return replace(others, **stated)


_FIELD_OF = {
    "source": "source_v",
    "series": "series_ohm",
    "dummies": "dummy_ohm",
    "meter": "meter_share",
    "meter_top": "meter_top_hz",
    "leads": "leads_ohm",
}


def _cable(entry: t.AmplifierDecl, attributes: Attributes, scope: Scope) -> Cable | None:
    """A cable by its conductor's resistance, or by length and section; what tells only half of it is said here."""
    length, section, ohm = (attributes.quantities.get(name) for name in ("cable", "section", "conductor"))
    material = next((word for word in attributes.words if word in RESISTIVITY_OHM_M), "copper")
    if ohm is not None and section is None:
        return Cable(ohm.value, (f"{length.text} of cable, " if length else "cable of ") + f"{ohm.text} a conductor")
    if length is not None and section is not None and ohm is None:
        value = RESISTIVITY_OHM_M[material] * length.value / section.value
        return Cable(value, f"{length.text} of cable, {section.text} of {material}")
    stray = ohm or section or length or attributes.words.get("copper-clad aluminium")
    if stray is not None:
        where = stray.span if isinstance(stray, Quantity) else stray
        scope.say(
            findings.value_unclear(
                where,
                "a cable is told by its length and section, or by the resistance of a conductor",
                "write `cable 10 m, section 2.5 mm2`, or `conductor 0.07 ohm`",
            )
        )
    return None
