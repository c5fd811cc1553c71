"""What is wrong on the boards, mistake by mistake, in words: the rules on boards each take those of their sort.

In: the evidence. Out: `BoardFault`s, each with the steps that mend it, as a builder does them and as edits of the
text. Decides nothing: what a mistake is and how it is mended says `board.repair`.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from typing import Literal

from shuntwise.board.compare import Finding, LeadMissing, NoCopper, NothingLeadsTo, Open, Short
from shuntwise.board.islands import Key
from shuntwise.board.judging import Judgement
from shuntwise.board.repair import Mistake
from shuntwise.board.steps import (
    AddWire,
    ExchangeLeads,
    ExchangeParts,
    MakeCut,
    Move,
    MoveWire,
    NewHole,
    PlaceLeads,
    Step,
    TakeCut,
    TakeWire,
    apply,
)
from shuntwise.board.wanted import Lead
from shuntwise.board.wires import key_of
from shuntwise.board.writing import edits, point_text
from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Confidence, Diagnostic, Fix, Label, Rule, Span
from shuntwise.diagnostics.wording import quoted
from shuntwise.model.boards import Cut, Layout
from shuntwise.model.kinds import KINDS

Sort = Literal["misplaced", "exchanged", "reversed", "open", "shorted", "off copper", "led nowhere", "lead missing"]


@dataclass(frozen=True)
class BoardFault:
    """One mistake. `remedies` are ways to mend it in a builder's words, the likeliest first."""

    sort: Sort
    span: Span
    headline: str
    label: str
    remedies: tuple[str, ...]
    places: tuple[Label, ...]
    fixes: tuple[Fix, ...]
    subjects: tuple[str, ...]


def told(rule: Rule, evidence: Evidence, sort: Sort, why: str) -> Iterator[Diagnostic]:
    """The findings of a rule: the faults of its sort."""
    judgement = evidence.boards
    if judgement is None:
        return
    for fault in faults(judgement):
        if fault.sort == sort:
            yield rule.finding(
                fault.span,
                fault.headline,
                label=fault.label,
                why=why,
                help=", or ".join(fault.remedies),
                places=fault.places,
                fixes=fault.fixes,
                subjects=fault.subjects,
            )


def faults(judgement: Judgement) -> Iterator[BoardFault]:
    """All mistakes of wiring on the boards; what is not placed is no one's of them."""
    comparison = judgement.comparison
    words = _Words(judgement)
    for finding in comparison.absent:
        if isinstance(finding, LeadMissing):
            yield words.lead_missing(finding)
    if not comparison.wiring:
        return
    if not judgement.repair.cures:
        for finding in comparison.wiring:
            yield words.unmended(finding)
        return
    for mistake in judgement.repair.mistakes:
        yield words.mistake(mistake)


class _Words:
    def __init__(self, judgement: Judgement) -> None:
        self.judgement = judgement
        self.layouts = judgement.layouts
        self.comparison = judgement.comparison
        self.case = self.comparison.settled.case
        self.home = self.layouts[0].name if len(self.layouts) == 1 else ""

    # --- names

    def key(self, key: Key) -> str:
        """A hole, tag or pad, marked as a name; with its board's where there are several."""
        layout, hole = key
        return f"`{hole}`" if layout in ("", self.home) else f"`{layout}.{hole}`"

    def net(self, net: str) -> str:
        return f"`{net}`"

    def lead(self, lead: Lead, key: Key | None = None) -> str:
        """`C2`'s lead, the start of `L1`, the wire to `woofer+`."""
        owner, terminal = lead
        if terminal in "+-":
            return f"the wire to `{owner}{terminal}`"
        if owner in self.case.wanted.turnable:
            return f"`{owner}`'s lead" + (f" in {self.key(key)}" if key is not None else "")
        return f"the {terminal} of `{owner}`"

    def pair(self, leads: Sequence[Lead], keys: Sequence[Key]) -> str:
        """Two leads in a sentence."""
        if leads[0][0] == leads[1][0]:
            return f"the {leads[0][1]} and the {leads[1][1]} of `{leads[0][0]}`"
        return " and ".join(self.lead(lead, key) for lead, key in zip(leads, keys, strict=True))

    def leads(self, leads: Sequence[Lead]) -> str:
        """Leads by what they belong to, each once."""
        owners = dict.fromkeys(f"{o}{t}" if t in "+-" else o for o, t in leads)
        return quoted(list(owners))

    # --- places in the text

    def span(self, lead: Lead, key: Key | None = None) -> Span:
        """Where the text says into which hole a lead goes."""
        owner, terminal = lead
        if key is None:
            key = self.comparison.keys.get(lead)
        for layout in self.layouts:
            for place in layout.places:
                if place.label == owner and terminal not in "+-":
                    spots = [one.spot for one in place.leads if key_of(one.spot) == key]
                    return spots[0].span if spots else place.label_span
            for wire in layout.wires:
                if ("", f"{owner}{terminal}") in (key_of(wire.first), key_of(wire.second)):
                    return wire.span
        return self.layouts[0].name_span

    def wire_span(self, one: Key, other: Key) -> Span:
        for layout in self.layouts:
            for wire in layout.wires:
                if {key_of(wire.first), key_of(wire.second)} == {one, other}:
                    return wire.span
        return self.layouts[0].name_span

    # --- steps

    def hole(self, hole: NewHole | None) -> str:
        return f" (drill {self.key(hole.key)} of {hole.diameter:g} mm at {point_text(hole.at)})" if hole else ""

    def step(self, step: Step) -> str:
        """What a builder does."""
        match step:
            case Move(lead, source, target, hole):
                return f"move {self.lead(lead)} from {self.key(source)} to {self.key(target)}{self.hole(hole)}"
            case MoveWire(kind, source, other, target, hole):
                word = "end of the wire" if kind == "lead out" else f"end of the {kind}"
                return (
                    f"move the {word} from {self.key(source)} to {self.key(target)}{self.hole(hole)}; "
                    f"its other end stays in {self.key(other)}"
                )
            case ExchangeLeads(leads, keys):
                if step.owner is not None and leads[0][1] in "+-":
                    return f"exchange the wires to {quoted([owner + sign for owner, sign in leads])}"
                return f"exchange {self.pair(leads, keys)}"
            case ExchangeParts(labels, _):
                return f"exchange {quoted(labels)}"
            case AddWire(kind, first, second, holes):
                return f"{kind} {self.key(first)} to {self.key(second)}" + "".join(self.hole(hole) for hole in holes)
            case TakeWire(kind, first, second):
                word = "wire" if kind == "lead out" else kind
                return f"take away the {word} from {self.key(first)} to {self.key(second)}"
            case MakeCut(_, cut, where, _):
                return f"cut {where} ({_from_to(cut)})"
            case TakeCut(_, cut):
                return f"leave out the cut {_from_to(cut)}, or bridge it with wire on all copper that it parts"
            case PlaceLeads(label, leads):
                known = [(lead, key) for lead, key in leads if key is not None]
                into = ", ".join(f"its {lead[1]} into {self.key(key)}" for lead, key in known)
                return f"place `{label}`" + (f", {into}" if into else "")

    def steps(self, steps: Iterable[Step]) -> str:
        return ", then ".join(self.step(step) for step in steps)

    def fix(self, steps: Sequence[Step]) -> tuple[Fix, ...]:
        after: tuple[Layout, ...] = self.layouts
        try:
            for step in steps:
                after = apply(step, after)
        except ValueError:
            return ()
        written = edits(self.layouts, after)
        return (Fix(self.steps(steps).replace("`", ""), written, Confidence.NEEDS_REVIEW),) if written else ()

    # --- faults

    def mistake(self, mistake: Mistake) -> BoardFault:
        first = mistake.steps[0]
        sort, span, headline, label, subjects = self.what(first, mistake)
        ways = (mistake.steps, *mistake.others)
        return BoardFault(
            sort,
            span,
            headline,
            label,
            tuple(dict.fromkeys(self.steps(way) for way in ways)),
            tuple(self.where(mistake.findings, span)),
            tuple(fix for way in ways[:1] for fix in self.fix(way)),
            subjects,
        )

    def what(self, step: Step, mistake: Mistake) -> tuple[Sort, Span, str, str, tuple[str, ...]]:
        match step:
            case Move(lead, source, _, _):
                return self.moved(lead, source, mistake)
            case MoveWire(kind, source, other, _, _):
                word = "wire" if kind == "lead out" else kind
                headline = f"the {word} from {self.key(source)} to {self.key(other)} ends in the wrong place"
                return "misplaced", self.wire_span(source, other), headline, self.wrong(mistake), self.nets(mistake)
            case ExchangeLeads(leads, keys):
                owner = step.owner
                if owner is not None and leads[0][1] in "+-":
                    headline = f"the two wires to `{owner}` are exchanged on the board"
                    return "reversed", self.span(leads[0]), headline, "plus where minus belongs", (owner,)
                span = self.span(leads[0], keys[0])
                owners = tuple(dict.fromkeys(lead[0] for lead in leads))
                return "exchanged", span, f"{self.pair(leads, keys)} are exchanged", self.wrong(mistake), owners
            case ExchangeParts(labels, _):
                span = self.label_span(labels[0])
                return "exchanged", span, f"{quoted(labels)} lie in each other's place", self.wrong(mistake), labels
            case AddWire(kind, first, second, _):
                return self.lacking(kind, first, second, mistake)
            case TakeWire(kind, first, second):
                word = "wire" if kind == "lead out" else kind
                joined = self.joined(mistake.findings)
                headline = f"the {word} from {self.key(first)} to {self.key(second)} joins {joined}"
                return (
                    "shorted",
                    self.wire_span(first, second),
                    headline,
                    "these are apart in the circuit",
                    self.nets(mistake),
                )
            case MakeCut(layout, _, _, _):
                headline = f"copper of `{layout}` joins {self.joined(mistake.findings)}"
                short = next(f for f in mistake.findings if isinstance(f, Short))
                return "shorted", self.span(short.leads[-1][0]), headline, self.wrong(mistake), self.nets(mistake)
            case TakeCut(_, cut):
                opened = next((finding for finding in mistake.findings if isinstance(finding, Open)), None)
                headline = (
                    f"the cut {_from_to(cut)} parts {self.net(opened.net) if opened else 'what belongs together'}"
                )
                return "open", cut.span, headline, self.wrong(mistake), self.nets(mistake)
            case PlaceLeads(label, leads):
                return "lead missing", self.label_span(label), f"`{label}` has a lead that goes nowhere", "", (label,)

    def moved(self, lead: Lead, source: Key, mistake: Mistake) -> tuple[Sort, Span, str, str, tuple[str, ...]]:
        span, wanted = self.span(lead, source), self.case.wanted.net_of[lead]
        label = f"belongs on {self.net(wanted)}"
        subjects = (lead[0],)
        if any(isinstance(finding, NoCopper) and finding.lead == lead for finding in mistake.findings):
            return (
                "off copper",
                span,
                f"{self.lead(lead)} lies in {self.key(source)}, where no copper is",
                label,
                subjects,
            )
        short = next((f for f in mistake.findings if isinstance(f, Short) and wanted in f.nets), None)
        if short is not None:
            others = quoted([net for net in short.nets if net != wanted])
            headline = f"{self.lead(lead)} lies in {self.key(source)}, on the copper of {others}"
        else:
            headline = f"{self.lead(lead)} lies in {self.key(source)}, apart from the rest of {self.net(wanted)}"
        return "misplaced", span, headline, label, subjects

    def lacking(
        self, kind: str, first: Key, second: Key, mistake: Mistake
    ) -> tuple[Sort, Span, str, str, tuple[str, ...]]:
        for finding in mistake.findings:
            if isinstance(finding, NothingLeadsTo):
                pad = "".join(finding.pad)
                span = self.layouts[0].name_span
                return (
                    "led nowhere",
                    span,
                    f"nothing leads out to `{pad}`",
                    f"no `lead out ... to {pad}`",
                    (finding.pad[0],),
                )
        opened = next((finding for finding in mistake.findings if isinstance(finding, Open)), None)
        if opened is None:
            return "open", self.layouts[0].name_span, "a net is not joined on the board", "", ()
        headline, span = self.apart(opened), self.span(opened.groups[-1][0])
        owners = tuple(dict.fromkeys(lead[0] for group in opened.groups[1:] for lead in group))
        return "open", span, headline, "apart from the rest", owners

    def unmended(self, finding: Finding) -> BoardFault:
        """What is wrong where no list of steps was found: what would have to be done all the same."""
        match finding:
            case Short(nets, leads):
                headline = f"one piece of metal joins {quoted(nets)}"
                owners = tuple(dict.fromkeys(lead[0] for group in leads for lead in group))
                remedy = f"part {self.leads(leads[-1])} from the rest: cut the copper, or lead them elsewhere"
                return self.plain("shorted", leads[-1][0], headline, "these are apart in the circuit", owners, remedy)
            case NothingLeadsTo(pad):
                name = "".join(pad)
                net = self.case.wanted.net_of[pad]
                remedy = f"write `lead out ... to {name}`, from where {self.net(net)} is"
                return self.plain("led nowhere", pad, f"nothing leads out to `{name}`", "", (pad[0],), remedy)
            case NoCopper(lead, key):
                headline = f"{self.lead(lead)} lies in {self.key(key)}, where no copper is"
                remedy = "lead it into a hole with copper, or look whether the board's text lacks copper there"
                return self.plain("off copper", lead, headline, "", (lead[0],), remedy)
            case Open(net, groups):
                owners = tuple(dict.fromkeys(lead[0] for group in groups[1:] for lead in group))
                ends = [self.comparison.keys.get(group[0]) for group in groups[:2]]
                where = " and ".join(self.key(key) for key in ends if key is not None)
                remedy = f"join {where} by copper or a wire, or look which cut or lead parts them"
                return self.plain("open", groups[-1][0], self.apart(finding), "apart from the rest", owners, remedy)
        raise TypeError(finding)

    def apart(self, opened: Open) -> str:
        """`return` is in two pieces: nothing joins A and B to C."""
        groups = " to ".join(self.leads(group) for group in opened.groups)
        return f"{self.net(opened.net)} is not one piece of metal: nothing joins {groups}"

    def plain(
        self, sort: Sort, lead: Lead, headline: str, label: str, subjects: tuple[str, ...], remedy: str
    ) -> BoardFault:
        return BoardFault(sort, self.span(lead), headline, label, (remedy,), (), (), subjects)

    def lead_missing(self, finding: LeadMissing) -> BoardFault:
        (label, terminal) = finding.lead
        placing = [step for step in self.judgement.repair.placing if step.label == label]
        headline = f"`{label}` has a lead that goes nowhere: its {terminal}"
        kind = self.judgement.circuit.design.parts[label].kind
        remedies = tuple(
            f"lead it into {self.key(key)}"
            for step in placing
            for lead, key in step.leads
            if lead == finding.lead and key is not None
        )
        fixes = tuple(fix for step in placing for fix in self.fix((step,)))
        return BoardFault(
            "lead missing",
            self.label_span(label),
            headline,
            f"a {kind} has {len(KINDS[kind].terminals)} leads",
            remedies or ("say where it goes: `end into north 1`",),
            (),
            fixes,
            (label,),
        )

    # --- what is wrong, in a few words

    def label_span(self, label: str) -> Span:
        place = self.case.place_of.get(label)
        return place.label_span if place is not None else self.layouts[0].name_span

    def wrong(self, mistake: Mistake) -> str:
        """What comes of it."""
        for finding in mistake.findings:
            if isinstance(finding, Short):
                return f"joins {quoted(finding.nets)}"
            if isinstance(finding, Open):
                return f"leaves {self.net(finding.net)} in {len(finding.groups)} pieces"
        return ""

    def joined(self, findings: Iterable[Finding]) -> str:
        short = next((finding for finding in findings if isinstance(finding, Short)), None)
        return quoted(short.nets) if short is not None else "nets that are apart in the circuit"

    def nets(self, mistake: Mistake) -> tuple[str, ...]:
        """The parts and drivers that it concerns."""
        leads: list[Lead] = []
        for finding in mistake.findings:
            if isinstance(finding, Short):
                leads += [lead for group in finding.leads[1:] for lead in group]
            elif isinstance(finding, Open):
                leads += [lead for group in finding.groups[1:] for lead in group]
        return tuple(dict.fromkeys(owner for owner, _ in leads))

    def where(self, findings: Iterable[Finding], besides: Span) -> Iterator[Label]:
        """A place of each other net or piece that it concerns."""
        seen = {besides}
        for finding in findings:
            groups: Sequence[tuple[str, Sequence[Lead]]] = ()
            if isinstance(finding, Short):
                groups = [
                    (f"belongs on `{net}`", leads) for net, leads in zip(finding.nets, finding.leads, strict=True)
                ]
            elif isinstance(finding, Open):
                groups = [(f"belongs on `{finding.net}`", leads) for leads in finding.groups]
            for words, leads in groups:
                span = self.span(leads[0])
                if span not in seen and not span.source.name.endswith("\0"):
                    seen.add(span)
                    yield Label(span, words)


def _from_to(cut: Cut) -> str:
    return f"from {point_text(cut.start)} to {point_text(cut.end)}"


def spots_for(judgement: Judgement, label: str) -> str:
    """Where the leads of a part that is not placed may go: `: its start into ...`; empty if nobody knows."""
    words = _Words(judgement)
    steps = [step for step in judgement.repair.placing if step.label == label]
    known = [(lead, key) for step in steps for lead, key in step.leads if key is not None]
    return ": " + ", ".join(f"its {lead[1]} into {words.key(key)}" for lead, key in known) if known else ""
