"""Collected -> Design: names resolved, values typed, networks put in, one variant chosen.

In: the entries of all files. Out: a `Design` and the findings. It goes on after an error with what is
sound: a part whose value was refused keeps its place in the wiring, a walk with an unknown station
keeps the others. Refuses to know what is joined to what.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass, field

from shuntwise import units as u
from shuntwise.diagnostics.diagnostic import Diagnostic, Label
from shuntwise.model import findings, kinds
from shuntwise.model.changes import Changes
from shuntwise.model.components import read_amplifier, read_driver, read_part
from shuntwise.model.declarations import Declarations, declare, declare_network
from shuntwise.model.design import (
    Coupling,
    Design,
    Driver,
    Leg,
    Part,
    Quantity,
    Terminals,
    VariantName,
    Walk,
)
from shuntwise.model.evaluate import Scope
from shuntwise.model.include import Collected
from shuntwise.model.intent import read_expectations, read_limits, read_waivers
from shuntwise.model.wiring import RETURN_WORDS, Place, resolve_walks
from shuntwise.source import Span
from shuntwise.syntax import tree as t

MOST_PARTS = 20_000
"""Networks that use networks can grow without bound; a real crossover has some ten parts."""
MOST_NETWORKS = 2000
"""The same for networks, which may hold nothing but further networks."""
DEEPEST_NETWORKS = 20
"""Networks within networks; the pass calls itself for each level."""


@dataclass(frozen=True)
class Catalogue:
    """What the checks offer: names that may be waived, and the limits that may be set."""

    waivable: Collection[str] = ()
    limits: Mapping[str, u.Dimension] = field(default_factory=dict)


def variant_names(collected: Collected) -> tuple[str, ...]:
    """The names of the variants, in the order in which they are written."""
    return tuple(dict.fromkeys(entry.name.text for entry in collected.entries if isinstance(entry, t.Variant)))


def resolve(
    collected: Collected,
    *,
    variant: str | None = None,
    settings: Sequence[t.Set] = (),
    catalogue: Catalogue = Catalogue(),
) -> tuple[Design, tuple[Diagnostic, ...]]:
    """One design, or one variant of it with `settings` (tried values) laid over it.

    An unknown `variant` is the caller's mistake: ask `variant_names` first.
    """
    declarations, said = declare(collected.entries, variant, settings)
    return _Resolver(collected, declarations, said, variant, catalogue).design()


class AnyName(frozenset[str]):
    """All names there are: what a file that could not be read may have declared."""

    def __contains__(self, name: object) -> bool:
        return True

    def __or__(self, other: object) -> AnyName:
        return self


class _Resolver:
    def __init__(
        self,
        collected: Collected,
        declarations: Declarations,
        diagnostics: list[Diagnostic],
        variant: str | None,
        catalogue: Catalogue,
    ) -> None:
        self.collected, self.d, self.diagnostics = collected, declarations, diagnostics
        self.variant, self.catalogue = variant, catalogue
        unread = any(lost.whole_file for lost in collected.lost)
        words = frozenset(declarations.stray_words).union(*(lost.words for lost in collected.lost))
        self.doubtful: frozenset[str] = AnyName() if unread else words
        self.parts: dict[str, Part] = {}
        self.couplings: list[Coupling] = []
        self.walks: list[Walk] = []
        self.node_spans: dict[str, tuple[Span, ...]] = {}
        self.meant: set[str] = set()
        self.instances: dict[str, tuple[str, ...]] = {}
        self.parameters: list[str] = []
        self.network_of: dict[str, str] = {}
        self.instance_spans: dict[str, Span] = {}
        self.lost_wiring = declarations.stray_walks or bool(collected.lost)
        self.seen_networks: set[str] = set()
        self.changes = Changes(declarations.sets, declarations.fittings)

    def say(self, finding: Diagnostic) -> None:
        self.diagnostics.append(finding)

    # --- the whole

    def design(self) -> tuple[Design, tuple[Diagnostic, ...]]:
        d = self.d
        lets = self.changes.lets({name: let.value for name, let in d.lets.items()})
        scope = Scope(lets, self.diagnostics, parts=(*d.parts, *d.drivers), doubtful=self.doubtful)
        for let in d.lets.values():  # so that a fault in a value that nothing uses is found too
            scope.look_up(let.name)
        terminals = self.terminals()
        attached = self.collected.attached
        drivers = {name: read_driver(entry, scope, self.changes, attached) for name, entry in d.drivers.items()}
        amplifier = read_amplifier(d.amplifier, scope, self.changes) if d.amplifier else None
        for label, entry in d.parts.items():
            self.parts[label] = read_part(entry, label, scope, self.changes)
        self.coupling_entries(d.couplings, "", scope)
        for use in d.uses.values():
            self.use(use, "", scope, ())
        legs = self.wire(terminals, drivers)
        self.check_targets()
        subjects = {*self.parts, *drivers, *self.node_spans, *self.instances, *(pair.name for pair in terminals)}
        design = Design(
            source=self.collected.source,
            title=d.title.title.value if d.title else None,
            amplifier=amplifier,
            terminals=terminals,
            drivers=drivers,
            parts=self.parts,
            couplings=tuple(self.couplings),
            legs=legs,
            walks=tuple(self.walks),
            testpoints={name: entry.node.span for name, entry in d.testpoints.items()},
            node_spans=self.node_spans,
            expectations=read_expectations(
                d.expects, drivers, [pair.name for pair in terminals if pair.fed], self.doubtful, scope
            ),
            waivers=read_waivers(d.allows, subjects, self.catalogue.waivable, self.doubtful, scope),
            limits=read_limits(d.limits.values(), dict(self.catalogue.limits), scope),
            variants=tuple(
                VariantName(name, entry.title.value if entry.title else None, entry.name.span)
                for name, entry in d.variants.items()
            ),
            variant=self.variant,
            instances=self.instances,
            network_of=self.network_of,
            instance_spans=self.instance_spans,
            doubtful=self.doubtful,
            meant=frozenset(self.meant),
            lost_wiring=self.lost_wiring,
            unread=isinstance(self.doubtful, AnyName),
        )
        return design, tuple(self.diagnostics)

    # --- inputs

    def terminals(self) -> tuple[Terminals, ...]:
        """Declared inputs and posts; where no input is declared there is one, called `input`."""
        declared = tuple(Terminals(name, entry.fed, entry.span) for name, entry in self.d.terminals.items())
        for pair in declared:
            if pair.name in RETURN_WORDS and pair.span is not None:
                self.say(
                    findings.error(
                        "reserved-name",
                        pair.span,
                        f"`{pair.name}` cannot name an input",
                        help="it is the word for the input's minus: choose another name",
                    )
                )
        if any(pair.fed for pair in declared):
            return declared
        return (Terminals("input", True, None), *declared)

    # --- couplings

    def coupling_entries(self, entries: Sequence[t.CouplingDecl], prefix: str, scope: Scope) -> None:
        for entry in entries:
            k = scope.typed(entry.value, kinds.COUPLING, "coupling")
            labels = []
            for path in (entry.first, entry.second):
                label = prefix + path.text
                part = self.parts.get(label)
                if part is None:
                    if path.text not in self.doubtful and path.words[0].text not in self.d.uses:
                        coils = [name for name, part in self.parts.items() if kinds.KINDS[part.kind].couples]
                        self.say(findings.unknown_name(path.text, path.span, coils, "no coil of this name"))
                    elif path.words[0].text in self.d.uses:
                        labels.append(label)  # a coil inside a network: looked up once all are put in
                elif not kinds.KINDS[part.kind].couples:
                    self.say(
                        findings.error(
                            "coupling-impossible",
                            path.span,
                            f"`{path.text}` is a {part.kind}, not a coil",
                            label="only coils couple",
                            help="name two coils",
                            subjects=(label,),
                        )
                    )
                else:
                    labels.append(label)
            if len(labels) == 2 and labels[0] == labels[1]:
                self.say(
                    findings.error(
                        "coupling-impossible",
                        entry.span,
                        f"`{labels[0]}` is coupled with itself",
                        help="name two coils",
                        subjects=(labels[0],),
                    )
                )
            elif len(labels) == 2:
                self.couplings.append(Coupling(labels[0], labels[1], k, entry.span))

    # --- networks

    def use(self, use: t.Use, prefix: str, scope: Scope, chain: tuple[str, ...]) -> None:
        """Put in a network: its parts and walks under the name of this use."""
        network = self.d.networks.get(use.network.text)
        label = prefix + use.name.text
        if network is None:
            if use.network.text not in self.doubtful:
                self.say(
                    findings.unknown_name(
                        use.network.text, use.network.span, self.d.networks, "no network of this name"
                    )
                )
            self.doubtful |= {use.name.text}
            return
        if network.name.text in chain:
            self.say(
                findings.error(
                    "network-loop",
                    use.span,
                    f"the network `{network.name.text}` uses itself",
                    label=" -> ".join([*chain, network.name.text]),
                    help="a network cannot contain itself",
                    places=(Label(network.name.span, "declared here"),),
                )
            )
            return
        if len(chain) >= DEEPEST_NETWORKS:
            self.say(
                findings.error(
                    "nested-too-deep",
                    use.span,
                    f"networks stand in one another more than {DEEPEST_NETWORKS} levels deep",
                    help="wire some of them side by side",
                )
            )
            return
        if len(self.parts) > MOST_PARTS or len(self.instances) >= MOST_NETWORKS:
            self.say(
                findings.error(
                    "too-many-parts",
                    use.span,
                    f"more than {MOST_PARTS} parts"
                    if len(self.parts) > MOST_PARTS
                    else f"more than {MOST_NETWORKS} networks",
                    help="networks that use networks multiply; look at the inner ones",
                )
            )
            return
        inner, said = declare_network(network)
        if network.name.text not in self.seen_networks:  # once for each network, not for each use
            self.seen_networks.add(network.name.text)
            self.diagnostics.extend(said)
        self.doubtful |= inner.stray_words
        values = self.arguments(use, label, network, inner, scope)
        lets: dict[str, t.Expr | Quantity] = {**{name: let.value for name, let in inner.lets.items()}, **values}
        unset = frozenset(param.name.text for param in network.params) - frozenset(values)
        local = Scope(
            lets, self.diagnostics, parts=inner.parts, doubtful=self.doubtful | unset, design_scope=scope.design_scope
        )
        self.instances[label] = tuple(f"{label}.{port.text}" for port in network.ports)
        self.network_of[label] = network.name.text
        self.instance_spans[label] = use.name.span
        for name, entry in inner.parts.items():
            self.parts[f"{label}.{name}"] = read_part(entry, f"{label}.{name}", local, self.changes)
        self.coupling_entries(inner.couplings, f"{label}.", local)
        for nested in inner.uses.values():
            self.use(nested, f"{label}.", local, (*chain, network.name.text))
        self.wire_network(network, inner, label)

    def arguments(
        self, use: t.Use, label: str, network: t.NetworkDecl, inner: Declarations, scope: Scope
    ) -> dict[str, Quantity]:
        """The values of a network's parameters in this use, worked out in the user's scope, or as changed."""
        params = {param.name.text: param for param in network.params}
        values: dict[str, Quantity] = {}
        refused: set[str] = set()
        changed = {}
        for name in params:
            self.parameters.append(f"{label}.{name}")
            if name not in inner.parts and (entry := self.changes.of_parameter(f"{label}.{name}")) is not None:
                changed[name] = entry
        for item in use.items:
            if item.key is None or isinstance(item.value, t.Text):
                self.say(
                    findings.unknown_word(
                        item.span.text, item.span, params, "here; each value needs the parameter's name"
                    )
                )
            elif item.key.text not in params:
                self.say(
                    findings.unknown_word(item.key.text, item.key.span, params, f"to the network `{network.name.text}`")
                )
            elif item.key.text not in changed:
                refused.add(item.key.text)
                quantity = scope.evaluate(item.value)
                if quantity is not None:
                    values[item.key.text] = quantity
        for name, entry in changed.items():
            refused.add(name)
            quantity = scope.design_scope.evaluate(entry.value)
            if quantity is not None:
                values[name] = quantity
        for name, param in params.items():
            if name in refused:
                continue
            if param.default is None:
                self.say(
                    findings.error(
                        "parameter-missing",
                        use.name.span,
                        f"`{use.name.text}` does not give `{name}`",
                        label=f"the network `{network.name.text}` needs it",
                        places=(Label(param.span, "asked for here"),),
                        help=f"write `{{ {name} ... }}` behind it",
                        subjects=(use.name.text,),
                    )
                )
            else:
                quantity = Scope({}, self.diagnostics).evaluate(param.default)
                if quantity is not None:
                    values[name] = quantity
        return values

    # --- wiring

    def through(
        self, parts: Mapping[str, t.PartDecl], uses: Mapping[str, t.Use], prefix: str = ""
    ) -> dict[str, tuple[str, ...]]:
        table = {name: kinds.KINDS[entry.kind.text].terminals for name, entry in parts.items()}
        for name in uses:
            ports = self.instances.get(prefix + name, ())
            if len(ports) >= 2:
                table[name] = tuple(port.rpartition(".")[2] for port in ports)
        return table

    def refused(self, uses: Mapping[str, t.Use], prefix: str = "") -> frozenset[str]:
        """Uses that were not put in: the finding has been made, and nothing is said of what they leave open."""
        return frozenset(name for name in uses if prefix + name not in self.instances)

    def named_terminals(self, parts: Mapping[str, t.PartDecl], uses: Mapping[str, t.Use]) -> frozenset[str]:
        several = {name for name, entry in parts.items() if len(kinds.KINDS[entry.kind.text].terminals) > 2}
        return frozenset(several | set(uses))

    def wire(self, terminals: Sequence[Terminals], drivers: Mapping[str, Driver]) -> tuple[Leg, ...]:
        d = self.d
        legs, walks = [], []
        for index, leg in enumerate(d.legs):
            for driver in leg.drivers:
                if driver.text not in drivers and driver.text not in self.doubtful:
                    self.say(findings.unknown_name(driver.text, driver.span, drivers, "no driver of this name"))
            names = tuple(driver.text for driver in leg.drivers)
            legs.append(Leg(names, leg.span, tuple(driver.span for driver in leg.drivers)))
            walks += [(walk, index) for walk in leg.entries if isinstance(walk, t.Walk)]
        place = Place(
            paired={**{pair.name: "input" for pair in terminals}, **dict.fromkeys(drivers, "driver")},
            through=self.through(d.parts, d.uses),
            named_terminals=self.named_terminals(d.parts, d.uses),
            returns=tuple(pair.name for pair in terminals if pair.fed),
            doubtful=self.doubtful | self.refused(d.uses),
        )
        self.take_wiring(walks, place)
        for name, testpoint in d.testpoints.items():
            if name not in self.node_spans and name not in self.doubtful:
                self.say(findings.unknown_name(name, testpoint.node.span, self.node_spans, "no node of this name"))
        return tuple(legs)

    def wire_network(self, network: t.NetworkDecl, inner: Declarations, label: str) -> None:
        place = Place(
            paired={},
            through=self.through(inner.parts, inner.uses, f"{label}."),
            named_terminals=self.named_terminals(inner.parts, inner.uses),
            ports=tuple(port.text for port in network.ports),
            prefix=f"{label}.",
            doubtful=self.doubtful | self.refused(inner.uses, f"{label}."),
        )
        self.take_wiring([(walk, None) for walk in inner.walks], place)

    def take_wiring(self, walks: Sequence[tuple[t.Walk, int | None]], place: Place) -> None:
        wiring = resolve_walks(walks, place)
        self.walks += wiring.walks
        self.node_spans.update({node: tuple(spans) for node, spans in wiring.node_spans.items()})
        self.lost_wiring |= wiring.lost
        self.meant |= wiring.meant
        self.diagnostics.extend(wiring.diagnostics)

    # --- what `set`, `omit`, `fit` and couplings name

    def check_targets(self) -> None:
        values = (*self.parts, *self.d.drivers, *self.d.lets, *self.parameters, "amplifier")
        self.diagnostics.extend(self.changes.unused(values, (*self.parts, *self.instances), self.doubtful))
        kept: list[Coupling] = []
        for coupling in self.couplings:
            old = next((c for c in kept if {c.first, c.second} == {coupling.first, coupling.second}), None)
            if old is not None:  # such as inside a network and outside it
                word = f"{coupling.first} and {coupling.second}"
                self.say(findings.same_label_twice(word, coupling.span, old.span, "coupling"))
                continue
            lacking = [label for label in (coupling.first, coupling.second) if label not in self.parts]
            for label in (label for label in lacking if label not in self.doubtful):
                self.say(findings.unknown_name(label, coupling.span, self.parts, "no coil of this name"))
            if not lacking:
                kept.append(coupling)
        self.couplings = kept
