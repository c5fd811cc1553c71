"""Used networks -> their parts, couplings and walks, under the name of each use.

In: the declared networks, the scope of the user. Out: what they bring in, gathered as it goes, and findings. A network
that cannot be put in leaves its name doubtful. Refuses to know drivers and inputs.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from shuntwise.diagnostics.diagnostic import Diagnostic, Label
from shuntwise.model import findings, kinds
from shuntwise.model.changes import Changes
from shuntwise.model.components import read_part
from shuntwise.model.coupling import read_couplings
from shuntwise.model.declarations import Declarations, declare_network
from shuntwise.model.design import Coupling, Part, Quantity
from shuntwise.model.evaluate import Scope
from shuntwise.model.wiring import Place, Wiring, resolve_walks
from shuntwise.source import Span
from shuntwise.syntax import tree as t

MOST_PARTS = 20_000
"""Networks that use networks can grow without bound; a real crossover has some ten parts."""
MOST_NETWORKS = 2000
"""The same for networks, which may hold nothing but further networks."""
DEEPEST_NETWORKS = 20
"""Networks within networks; the pass calls itself for each level."""


@dataclass
class Uses:
    """What has been put in so far. `parts` are those of the design as well, `doubtful` the words of which nothing is
    said; `instances` are the ports of each use, `parameters` what `set` may name, `arguments` what they
    are, `wirings` one for each use.
    """

    networks: Mapping[str, t.NetworkDecl]
    changes: Changes
    diagnostics: list[Diagnostic]
    parts: dict[str, Part]
    doubtful: frozenset[str]
    couplings: list[Coupling] = field(default_factory=list)
    instances: dict[str, tuple[str, ...]] = field(default_factory=dict)
    network_of: dict[str, str] = field(default_factory=dict)
    instance_spans: dict[str, Span] = field(default_factory=dict)
    parameters: list[str] = field(default_factory=list)
    arguments: dict[str, Quantity] = field(default_factory=dict)
    wirings: list[Wiring] = field(default_factory=list)
    seen_networks: set[str] = field(default_factory=set)

    def put_in(self, use: t.Use, prefix: str, scope: Scope, chain: tuple[str, ...] = ()) -> None:
        """Put in a network: its parts and walks under the name of this use."""
        network = self.networks.get(use.network.text)
        label = prefix + use.name.text
        if network is None:
            if use.network.text not in self.doubtful:
                self.diagnostics.append(findings.unknown_network(use.network, self.networks))
            self.doubtful |= {use.name.text}
            return
        if network.name.text in chain:
            self.diagnostics.append(
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
            self.diagnostics.append(
                findings.error(
                    "nested-too-deep",
                    use.span,
                    f"networks stand in one another more than {DEEPEST_NETWORKS} levels deep",
                    help="wire some of them side by side",
                )
            )
            return
        if len(self.parts) > MOST_PARTS or len(self.instances) >= MOST_NETWORKS:
            self.diagnostics.append(
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
        values = self._arguments(use, label, network, inner, scope)
        self.arguments |= {f"{label}.{name}": value for name, value in values.items()}
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
        couplings, wrong = read_couplings(inner.couplings, f"{label}.", local, self.parts, inner.uses, self.doubtful)
        self.couplings += couplings
        self.diagnostics += wrong
        for nested in inner.uses.values():
            self.put_in(nested, f"{label}.", local, (*chain, network.name.text))
        self._wire(network, inner, label)

    def _arguments(
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
                self.diagnostics.append(
                    findings.unknown_word(
                        item.span.text, item.span, params, "here; each value needs the parameter's name"
                    )
                )
            elif item.key.text not in params:
                self.diagnostics.append(
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
                self.diagnostics.append(
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

    def _wire(self, network: t.NetworkDecl, inner: Declarations, label: str) -> None:
        place = Place(
            paired={},
            through=self.through(inner.parts, inner.uses, f"{label}."),
            named_terminals=self.named_terminals(inner.parts, inner.uses),
            ports=tuple(port.text for port in network.ports),
            prefix=f"{label}.",
            doubtful=self.doubtful | self.refused(inner.uses, f"{label}."),
        )
        self.wirings.append(resolve_walks([(walk, None) for walk in inner.walks], place))

    # --- how a walk goes through what is there

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
