"""Whether what the author says of a part with a third terminal makes one sound part: complete, and possible.

In: a part with typed attributes. Out: the part, its tap in henry, or without its value where it cannot be solved;
what is wrong goes to the scope.
"""

from __future__ import annotations

from dataclasses import replace

from shuntwise import units as u
from shuntwise.diagnostics.diagnostic import Label
from shuntwise.model import findings, kinds
from shuntwise.model.design import Part, Quantity
from shuntwise.model.evaluate import Scope
from shuntwise.syntax import tree as t

LEAST_LOSS_DB, MOST_LOSS_DB = 0.0, 40.0
"""The range of an attenuator of which none is stated: from fully open to as good as shut.

Common practice, no source.
"""


def check_part(part: Part, entry: t.PartDecl, scope: Scope) -> Part:
    """The part if it can be solved; a part of two terminals is taken as it is."""
    if part.kind == kinds.TAPPED_COIL.word:
        return _with_tap(_tap_in_henry(part), entry, scope)
    return _with_loss(part, scope) if part.kind == kinds.ATTENUATOR.word else part


def loss_range_db(part: Part) -> tuple[float, float]:
    """The least and the greatest loss of an attenuator."""
    return part.get("least", LEAST_LOSS_DB), part.get("most", MOST_LOSS_DB)


def _tap_in_henry(part: Part) -> Part:
    """A tap told by its share of the turns, or by the level there re the whole (20 log10 of the share), in henry.

    With a share s of the turns and the coupling k, La : Lb = s^2 : (1 - s)^2, and L = La + Lb + 2 k sqrt(La Lb).
    """
    tap = part.quantities.get("tap")
    if tap is None or tap.dimension == u.HENRY or part.value is None:
        return part
    share = 10 ** (tap.value / 20) if tap.dimension == u.DECIBEL else tap.value
    rest, k = 1 - share, part.get("k", kinds.TIGHT)
    henry = part.value.value * share**2 / (share**2 + rest**2 + 2 * k * share * rest)
    return replace(part, quantities={**part.quantities, "tap": Quantity(henry, u.HENRY, tap.span, tap.text)})


def _with_loss(part: Part, scope: Scope) -> Part:
    """The attenuator, without its value if its loss is not stated or lies outside of its range."""
    loss, (least, most) = part.quantities.get("loss"), loss_range_db(part)
    if loss is None:
        if not part.refused:
            scope.say(
                findings.error(
                    "value-missing",
                    part.name_span,
                    f"`{part.label}` does not say where it stands",
                    help="give the loss: `{ loss 3 dB }`",
                    subjects=(part.label,),
                )
            )
    elif least <= loss.value <= most:
        return part
    else:
        signed = loss.value < 0
        scope.say(
            findings.error(
                "value-unclear",
                loss.span,
                f"`{part.label}` cannot stand at {loss.text}: its range is {least:g} to {most:g} dB",
                label="a loss has no sign" if signed else "outside its range",
                help=f"write `{loss.text.strip('- ')}`" if signed else "state its range by `least` and `most`",
                subjects=(part.label,),
            )
        )
    return replace(part, value=None)


def _with_tap(part: Part, entry: t.PartDecl, scope: Scope) -> Part:
    """The tapped coil, without its value if its tap cannot be."""
    tap = part.quantities.get("tap")
    refused = any(item.key is not None and item.key.text == "tap" for item in entry.items)
    if tap is None and refused:
        pass  # the finding on it has said why
    elif tap is None:
        scope.say(
            findings.error(
                "value-missing",
                part.name_span,
                f"`{part.label}` does not say where its tap is",
                help="give the inductance from the start to the tap: `{ tap 0.3 mH }`",
                subjects=(part.label,),
            )
        )
    elif part.value is not None and tap.value >= part.value.value:
        scope.say(
            findings.error(
                "tap-outside-coil",
                tap.span,
                "the tap has no less inductance than the whole coil",
                label="from the start to the tap",
                help="the value behind the name is the whole winding",
                places=(Label(part.value.span, "the whole winding"),),
                subjects=(part.label,),
            )
        )
    else:
        dcr, tap_dcr = part.quantities.get("dcr"), part.quantities.get("tap_dcr")
        if tap_dcr is None or (dcr is not None and tap_dcr.value < dcr.value):
            return part
        scope.say(
            findings.error(
                "tap-outside-coil",
                tap_dcr.span,
                "the tap has no less resistance than the whole coil",
                help="`dcr` is the resistance of the whole winding",
                subjects=(part.label,),
            )
        )
    return replace(part, value=None)
