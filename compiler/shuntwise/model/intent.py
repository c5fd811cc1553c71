"""`expect`, `allow` and `limit` lines -> typed intent.

In: the statements, the names of drivers and inputs, the scope. Out: `Expectation`s, `Waiver`s and
`LimitSetting`s. Whether they hold is for the checks to find out.
"""

from __future__ import annotations

from collections.abc import Collection, Iterable
from dataclasses import dataclass, replace

from shuntwise import units as u
from shuntwise.diagnostics.diagnostic import Diagnostic
from shuntwise.diagnostics.wording import listed
from shuntwise.model import findings
from shuntwise.model.design import Design, Expectation, LimitSetting, Quantity, Waiver
from shuntwise.model.evaluate import Scope
from shuntwise.model.kinds import Attribute
from shuntwise.model.variants import all_names, is_known
from shuntwise.source import Span
from shuntwise.syntax import tree as t
from shuntwise.syntax.words import nearest


@dataclass(frozen=True)
class Form:
    """What an expectation on one quantity looks like.

    `subjects` is the least and greatest number of drivers (or inputs). `clauses` gives each permitted
    clause its dimension. `needs` lists sets of clauses, one of which must be there whole. `words` are what
    may stand in place of a value.
    """

    subjects: tuple[int, int]
    of: str
    clauses: dict[str, u.Dimension]
    needs: tuple[frozenset[str], ...]
    example: str
    words: tuple[str, ...] = ()


def _needs(*sets: str) -> tuple[frozenset[str], ...]:
    return tuple(frozenset(words.split()) for words in sets)


FORMS: dict[str, Form] = {
    "crossing": Form(
        (2, 2),
        "driver",
        {"at": u.HERTZ, "within": u.PLAIN},
        _needs("at within"),
        "expect crossing of woofer and tweeter at 2.4 kHz within 10 %",
    ),
    "corner": Form(
        (1, 1),
        "driver",
        {"at": u.HERTZ, "within": u.PLAIN, "is": u.DECIBEL},
        _needs("at within"),
        "expect corner of tweeter at 2.2 kHz within 10 %",
    ),
    "impedance": Form(
        (0, 1),
        "input",
        {"above": u.OHM, "below": u.OHM, "from": u.HERTZ, "to": u.HERTZ},
        _needs("above", "below"),
        "expect impedance above 4 ohm from 20 Hz to 20 kHz",
    ),
    "level": Form(
        (1, 1),
        "driver",
        {"is": u.DECIBEL, "at": u.HERTZ, "within": u.DECIBEL, "above": u.DECIBEL, "below": u.DECIBEL},
        _needs("is at within", "at above", "at below"),
        "expect level of tweeter -6 dB at 10 kHz within 1 dB",
    ),
    "slope": Form(
        (1, 1),
        "driver",
        {"is": u.DECIBEL_PER_OCTAVE, "from": u.HERTZ, "to": u.HERTZ, "within": u.DECIBEL_PER_OCTAVE},
        _needs("is from within"),
        "expect slope of woofer -12 dB/octave from 5 kHz to 10 kHz within 2 dB/octave",
    ),
    "polarity": Form(
        (1, 2),
        "driver",
        {},
        _needs("word"),
        "expect polarity of tweeter reversed",
        ("normal", "reversed", "same", "opposite"),
    ),
}

BOUNDS = {
    u.HERTZ: (0.1, 1e6),
    u.OHM: (1e-3, 1e6),
    u.DECIBEL: (-300, 200),
    u.DECIBEL_PER_OCTAVE: (-200, 200),
    u.PLAIN: (1e-6, 1),
}


def read_expectations(
    expects: Iterable[t.Expect],
    drivers: Collection[str],
    inputs: Collection[str],
    doubtful: Collection[str],
    scope: Scope,
) -> tuple[Expectation, ...]:
    """Type the `expect` lines; one that cannot be understood is a finding and is left out."""
    read = [_expectation(expect, drivers, inputs, doubtful, scope) for expect in expects]
    return tuple(expectation for expectation in read if expectation is not None)


def _expectation(
    expect: t.Expect, drivers: Collection[str], inputs: Collection[str], doubtful: Collection[str], scope: Scope
) -> Expectation | None:
    before = len(scope.diagnostics)
    form = FORMS.get(expect.quantity.text)
    if form is None:
        scope.say(findings.unknown_word(expect.quantity.text, expect.quantity.span, FORMS, "behind `expect`"))
        return None
    known = drivers if form.of == "driver" else inputs
    least, most = form.subjects
    unclear = False
    for subject in expect.subjects:
        if subject.text in doubtful and subject.text not in known:
            unclear = True
        elif subject.text not in known:
            scope.say(findings.unknown_name(subject.text, subject.span, known, f"no {form.of} of this name"))
    if not least <= len(expect.subjects) <= most:
        count = {0: "none", 1: "one", 2: "two"}
        wanted = count[least] if least == most else f"{count[least]} or {count[most]}"
        scope.say(
            _malformed(
                expect.span, f"`{expect.quantity.text}` is of {wanted} {form.of}" + ("s" if least > 1 else ""), form
            )
        )
    clauses: dict[str, Quantity] = {}
    word: str | None = None
    for clause in expect.clauses:
        value = clause.values[0]
        if clause.word == "is" and isinstance(value, t.Name) and form.words:
            word = _word(value.ident, form, len(expect.subjects), scope)
            continue
        names = ("from", "to") if clause.word == "from" else (clause.word,)
        for name, expr in zip(names, clause.values, strict=True):
            if name not in form.clauses:
                shown = "a value" if name == "is" else f"`{name}`"
                scope.say(
                    _malformed(
                        clause.span, f"{shown} does not belong to an expectation on {expect.quantity.text}", form
                    )
                )
                continue
            if name in clauses:
                scope.say(_malformed(clause.span, f"`{name}` is given twice", form))
                continue
            dimension = form.clauses[name]
            if name == "within" and dimension == u.PLAIN and isinstance(expr, t.Number) and expr.unit is None:
                scope.say(
                    findings.percent_missing(
                        expr.span,
                        "a share of the frequency",
                        "a plain number is the share itself: 10 would be a thousand percent, and the line could not "
                        "fail",
                    )
                )
                continue
            low, high = BOUNDS[dimension]
            signed = low < 0 and name != "within"
            attribute = Attribute(name, dimension, low, high, f"what stands behind `{name}`", signed=signed)
            quantity = scope.typed(expr, attribute, expect.quantity.text)
            if quantity is not None:
                clauses[name] = quantity
            else:  # said already, here or where the text was lost that would have told it
                unclear = True
    if len(scope.diagnostics) > before or unclear:
        return None
    given = frozenset(clauses) | ({"word"} if word else set())
    if not any(need <= given for need in form.needs):
        scope.say(_malformed(expect.span, "this expectation is not complete", form))
        return None
    if "from" in clauses and clauses["from"].value >= clauses["to"].value:
        scope.say(_malformed(clauses["to"].span, "the band ends where it begins or below", form))
        return None
    subjects = tuple(subject.text for subject in expect.subjects)
    return Expectation(expect.quantity.text, subjects, clauses, word, expect.span)


def _word(ident: t.Ident, form: Form, subjects: int, scope: Scope) -> str | None:
    fitting = ("same", "opposite") if subjects == 2 else ("normal", "reversed")
    if ident.text in fitting:
        return ident.text
    scope.say(findings.unknown_word(ident.text, ident.span, fitting, f"of {subjects} driver{'s' * (subjects > 1)}"))
    return None


def _malformed(span: Span, headline: str, form: Form) -> Diagnostic:
    return findings.error("expectation-unclear", span, headline, help=f"in full: `{form.example}`")


def read_waivers(
    allows: Iterable[t.Allow],
    subjects: Collection[str],
    known_findings: Collection[str],
    doubtful: Collection[str],
    design: Design,
    scope: Scope,
) -> tuple[Waiver, ...]:
    """Type the `allow` lines. `known_findings` are the names that may be waived; variants are those of the design."""
    waivers = []
    for allow in allows:
        finding = allow.finding.text
        if finding not in known_findings:
            close = nearest(finding, known_findings)
            scope.say(
                findings.error(
                    "unknown-finding",
                    allow.finding.span,
                    f"no check that can be waived is called `{finding}`",
                    label="not a finding",
                    help=f"a similar one exists: `{close}`" if close else "`shuntwise explain` lists all findings",
                    fixes=(findings.replace(allow.finding.span, close),) if close else (),
                )
            )
            continue
        target = allow.target
        if target is not None and target.text not in subjects:
            if target.text not in doubtful:
                scope.say(
                    findings.unknown_name(target.text, target.span, subjects, "no part, driver or node of this name")
                )
            continue
        unknown = [name for name in allow.variants if not is_known(design, name.text)]
        for name in unknown:
            if name.text not in doubtful:
                known = all_names(design)
                own = [one for one in known if one.startswith(f"{name.text}.")]
                said = findings.unknown_name(name.text, name.span, known, "no variant of this name")
                told = f"`{name.text}` is a choice: name its position, {listed(own, 'or')}"
                scope.say(replace(said, help=told, fixes=()) if own else said)
        if unknown:
            continue
        if not allow.reason.value.strip():
            scope.say(
                findings.error(
                    "reason-missing",
                    allow.reason.span,
                    "a waiver must give its reason",
                    label="empty",
                    why="in two years somebody will ask why this was let pass",
                    help="say in a few words why it is right here",
                )
            )
            continue
        subject = target.text if target is not None else None
        only = tuple(variant.text for variant in allow.variants)
        waivers.append(Waiver(finding, subject, allow.reason.value, allow.span, allow.finding.span, only))
    return tuple(waivers)


def read_limits(limits: Iterable[t.Limit], known: dict[str, u.Dimension], scope: Scope) -> dict[str, LimitSetting]:
    """Type the `limit` lines. `known` gives each check that has a limit the limit's dimension."""
    settings: dict[str, LimitSetting] = {}
    for limit in limits:
        name = limit.finding.text
        if name not in known:
            close = nearest(name, known)
            scope.say(
                findings.error(
                    "unknown-finding",
                    limit.finding.span,
                    f"no check with a limit is called `{name}`",
                    label="has no limit",
                    help=f"a similar one exists: `{close}`"
                    if close
                    else "`shuntwise explain NAME` says whether a check has a limit",
                    fixes=(findings.replace(limit.finding.span, close),) if close else (),
                )
            )
            continue
        attribute = Attribute("limit", known[name], 1e-12, 1e12, f"the limit of {name}")
        quantity = scope.typed(limit.value, attribute, name)
        if quantity is not None:
            settings[name] = LimitSetting(name, quantity, limit.span)
    return settings
