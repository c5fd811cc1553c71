"""One slip would explain why the circuit does not do what it must.

What it finds: where an `expect` line is not met, or findings name a part: the one value that a power of ten would put
right, the node that a walk should touch instead, the two parts that belong in each other's place, the parts that belong
in a row, or the driver that is to be turned round, so that every `expect` line comes out and the load is not below the
amplifier's least. Each such change is solved. Of several the one is named that leaves fewest other findings and brings
the figures nearest to the middles of their windows; a plain value is preferred to another node, and that to parts
exchanged. Findings that vanish with it are told under it, in one line.

Why it matters: a slipped part shows far from where it is: in a crossing, in a level, in the load.

Bad:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.47 mH
    capacitor C1 0.68 uF
                 ^^^^^^^
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- tweeter+
      tweeter- -- return
    }
    expect crossing of woofer and tweeter at 3 kHz within 20 %

Good:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.47 mH
    capacitor C1 6.8 uF
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- tweeter+
      tweeter- -- return
    }
    expect crossing of woofer and tweeter at 3 kHz within 20 %

When to ignore it: when the value is meant; then look at the findings that it would explain.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise import units
from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rated import instance_of, named
from shuntwise.checks.rule import Confidence, Diagnostic, Label, Rule, Severity, Span
from shuntwise.diagnostics.wording import quoted
from shuntwise.model.findings import replace
from shuntwise.suspects.change import Change


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    if not evidence.explained:
        return
    first, *others = evidence.explained
    asked = not evidence.asked_met
    change, quantity = first.change, first.change.quantity
    places = sorted((_place(evidence, name) for name in change.owners), key=lambda span: span.start)
    own = quantity is not None and quantity.span.source is evidence.design.source
    named_value = change.owners[0] in evidence.design.values
    if quantity is not None and own and (named_value or instance_of(evidence, change.owners[0]) is None):
        places = [quantity.span]
    if change.span is not None and change.span.source is evidence.design.source:
        places = [change.span]
    span = places[0]
    written = change.span.text if change.span is not None else quantity.text if quantity is not None else None
    plain = bool(change.text) and span.text == written
    either = next((other.change for other in others if other.change.owners != change.owners), None)
    yield RULE.finding(
        span,
        _headline(change, asked),
        label="one slip here would explain what follows",
        why="solved with this one thing put right, "
        + ("everything that the design asks for comes out" if asked else "nothing of what is told here is left"),
        help=f"look at the part: {change.title}" + (f"; less likely: {either.title}" if either is not None else ""),
        places=[Label(other, "and here") for other in places[1:]],
        fixes=(replace(span, change.text, Confidence.NEEDS_REVIEW),) if plain else (),
        subjects=named(evidence, *change.owners),
    )


def _place(evidence: Evidence, owner: str) -> Span:
    """Where the part is first met: a driver's pad, or the use of the network that a part belongs to."""
    outer = instance_of(evidence, owner)
    if outer is not None:
        return evidence.declared(outer)
    if owner in evidence.design.drivers:
        return min((evidence.place(owner + sign) for sign in "+-"), key=lambda span: span.start)
    return evidence.place(owner)


def _headline(change: Change, asked: bool) -> str:
    """What looks wrong, and what comes of putting it right: all that is `asked` for, or else an end of the findings."""
    names = quoted(change.owners)
    look = "look" if len(change.owners) > 1 else "looks"
    so = "all that is asked for comes out" if asked else "nothing of what follows is left"
    match change.manner:
        case "turned":
            return f"the leads of {names} look exchanged: the other way round {so}"
        case "exchanged":
            return f"{names} look exchanged: the other way round {so}"
        case "elsewhere":
            return f"{names} {look} wired to the wrong place: {change.title}, and {so}"
        case "arranged":
            return f"{names} {look} wired the wrong way: {change.title}, and {so}"
    assert change.quantity is not None
    # Its text may be a formula, or the name of a parameter.
    now = units.write(change.quantity.value, change.quantity.dimension)
    would = "would do all that is asked for" if asked else "would leave nothing of what follows"
    return f"{names} {look} slipped: {now}, where {change.text} {would}"


RULE = Rule("slip-explains", Severity.WARNING, "network", check)
