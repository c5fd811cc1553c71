"""A network compiled once into straight-line arithmetic: structure only, values come later.

In: a `Network`. Out: a `Plan`, which can name the register of any voltage, current or admittance of the
network and run a tape for it. It refuses to know any element value, and what a builder wants the numbers for.

The method, in the order of the code:

1. Coils coupled by mutual inductance become *windings*: a coil with the elements directly in series with it.
   The windings of one group have the impedance matrix Z = diag(R + s L + S/s) + s M. Its inverse is stamped as
   ordinary branches: y_pp across winding p, and -y_pq, +y_pq, +y_pq, -y_pq between the ends of p and q.
2. Series and parallel reduction (`reduction.py`). A tree of clusters is evaluated from the leaves: a series
   cluster has z = R + s L + S/s + sum 1/y, a parallel cluster y = G + s C + Gamma/s + sum 1/z. Every element
   is read once, so all rounding equals a change of a few units in the last place of the elements themselves.
3. The mesh that is left is eliminated node by node by the star-mesh transform (S. Rosen, J. IEE 62, 1924), which
   is Gaussian elimination of the nodal matrix without its subtractions: with total = sum y_kn, every pair of
   neighbours gains y_ki y_kj / total. Least degree first (W. F. Tinney, J. W. Walker, Proc. IEEE 55(11), 1967).
4. Voltages come back by v_k = sum (y_kn / total) v_n, and down the trees by sharing: a series cluster hands
   its current to its items, a parallel one its voltage, so no element suffers a difference of node voltages.

A ratio y_kn / total far above 1 means that a total nearly vanished; the tape watches those ratios.
"""

from __future__ import annotations

import heapq
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

import numpy as np

from shuntwise.network.network import GROUND, Network
from shuntwise.response.inverse import invert
from shuntwise.response.reduction import SERIES, Cluster, reduce, unfold
from shuntwise.response.tape import ONE, ZERO, Monomial, Scalar, Tape
from shuntwise.response.windings import Winding, find_windings

Drive = frozenset[str]
"""The names of the feeds that stand at 1 V; the amplifiers of the others are at rest, at 0 V."""

Terms = dict[int, list[Monomial]]
"""Coefficients by power of s."""


MAX_CHAIN = 8
"""Levels of a tree that may be multiplied out: 8 factors of even 1e15 stay far inside the range of numbers."""


@dataclass(frozen=True)
class Eliminated:
    """A node of the mesh with its neighbours, the admittances to them, and 1 / (their sum)."""

    node: str
    neighbours: tuple[str, ...]
    admittances: tuple[int, ...]
    per_total: int


class Plan:
    """The compiled network. Registers are made when first asked for and kept.

    `floating` are nodes with no path of elements to ground or to a feed: such a network has no solution.
    """

    def __init__(self, network: Network) -> None:
        """Compile a network. Raises ValueError for an element value or a coupling that cannot be."""
        self.network = network
        self.tape = Tape()
        self.every_feed: Drive = frozenset(feed.name for feed in network.feeds)
        self._number = {element.name: i for i, element in enumerate(network.elements)}
        self._coupling_number = {
            coupling.name: len(network.elements) + i for i, coupling in enumerate(network.couplings)
        }
        self._nominal: list[Scalar] = [element.value for element in network.elements]
        self._nominal += [coupling.k for coupling in network.couplings]
        for number, value in enumerate(self._nominal):
            self._refuse_absurd(number, value)
        self._coupled: dict[int, dict[int, list[int]]] = {}
        """By coil: the coils coupled with it, with the numbers of the couplings."""
        for coupling in network.couplings:
            ends = self._number[coupling.first], self._number[coupling.second]
            for a, b in (ends, ends[::-1]):
                self._coupled.setdefault(a, {}).setdefault(b, []).append(self._coupling_number[coupling.name])
        self._kinds = [element.kind for element in network.elements]
        self._terminals = {GROUND, *(feed.node for feed in network.feeds)}
        windings = find_windings(network, self._terminals)
        self._groups, self._loose = windings.groups, windings.loose
        self._in_winding = {
            item: (group, p, place)
            for group, members in enumerate(self._groups)
            for p, winding in enumerate(members)
            for place, (item, _) in enumerate(winding.items)
        }
        self._in_loose = {item for winding, _ in self._loose for item, _ in winding.items}
        self._build_trees()
        self._mesh = self._open_mesh()
        self._stamped: dict[str, list[int]] = {}
        self._pivots: list[int] = []  # their product is the determinant of the impedance matrices of all groups
        self._y_winding = [self._stamp(group) for group in self._groups]
        self._eliminated, floating = self._eliminate()
        self.floating = (*windings.floating, *floating)
        self._at_clusters()
        self._voltages: dict[Drive, dict[str, int]] = {}
        self._per_denominator: dict[tuple[Drive, int], int] = {}
        self._winding_currents: dict[tuple[Drive, int, int], int] = {}

    # Parameters: element values, then the k of each coupling, then (1 - k)(1 + k) of each coupling.

    def parameters(self, values: Mapping[str, object] | None = None) -> list[Scalar]:
        """The parameters for `values` (by element or coupling name; others as in the network).

        A value is a number, or an array (builds,) or (builds, 1). Raises ValueError for an unknown name, an element
        value that is not finite and above zero, or a coupling beyond 1.
        """
        result = list(self._nominal)
        for name, value in (values or {}).items():
            number = self._number.get(name, self._coupling_number.get(name))
            if number is None:
                raise ValueError(f"no element or coupling is called {name!r}")
            array = np.asarray(value, np.float64)
            result[number] = float(array) if array.ndim == 0 else array.reshape(-1, 1)
            self._refuse_absurd(number, result[number])
        builds = {p.shape[0] for p in result if isinstance(p, np.ndarray)}
        if len(builds) > 1:
            raise ValueError(f"values for different numbers of builds: {sorted(builds)}")
        for i in range(len(self.network.couplings)):
            k = result[len(self.network.elements) + i]
            result.append((1 - k) * (1 + k))
        return result

    def _refuse_absurd(self, number: int, value: Scalar) -> None:
        elements = self.network.elements
        if number >= len(elements):
            if not np.all(np.abs(value) <= 1):
                raise ValueError(f"the coupling {self.network.couplings[number - len(elements)].name!r} is beyond 1")
        elif not (np.all(np.isfinite(value)) and np.all(np.greater(value, 0))):
            raise ValueError(f"the value of {elements[number].name!r} must be finite and above zero")

    def parameter_number(self, name: str) -> int:
        """The place of an element's value, or of a coupling's k, among the parameters."""
        return self._number[name] if name in self._number else self._coupling_number[name]

    # 1. Coupled coils

    def _mutual(self, a: int, b: int) -> list[Monomial]:
        """M = k sqrt(La Lb), summed over the couplings declared between two coils."""
        return [((coupling, 1.0), (a, 0.5), (b, 0.5)) for coupling in self._coupled[a].get(b, ())]

    def _stamp(self, windings: Sequence[Winding]) -> list[list[int]]:
        """Invert the impedance matrix of one group and add its admittances to the mesh; return them signed."""
        tape = self.tape
        terms = [self._series_terms([element for element, _ in w.items]) for w in windings]
        z = [tape.laurent(t) for t in terms]
        size = len(windings)
        mutual = self._mutual(windings[0].coil, windings[1].coil)
        if size == 2 and len(mutual) == 1:
            # With resistance in both windings no current flows without a voltage, so nothing can vanish.
            can_vanish = any(0 not in t for t in terms)
            determinant = tape.laurent(self._determinant(windings, terms, mutual[0][0][0]), can_vanish=can_vanish)
            self._pivots.append(determinant)
            per_determinant = tape.reciprocal(determinant)
            between = tape.neg(tape.mul(tape.laurent({1: mutual}), per_determinant))
            y = [[tape.mul(z[1], per_determinant), between], [between, tape.mul(z[0], per_determinant)]]
        else:
            below = [
                [tape.laurent({1: self._mutual(a.coil, b.coil)}) for b in windings[:i]] for i, a in enumerate(windings)
            ]
            y, pivots = invert(tape, z, below)
            self._pivots += pivots
        for p in range(size):
            # z_pp y_pp is 1 without coupling and grows without bound towards a lossless |k| = 1.
            tape.watch(tape.mul(z[p], y[p][p]))
            a, b = windings[p].path[0], windings[p].path[-1]
            self._add_branch(a, b, y[p][p])
            self._stamped.setdefault(a, []).append(y[p][p])
            self._stamped.setdefault(b, []).append(y[p][p])
            for q in range(p + 1, size):
                c, d = windings[q].path[0], windings[q].path[-1]
                if a == b or c == d or y[p][q] == ZERO:
                    continue
                for one, other, opposite in ((a, c, True), (b, d, True), (a, d, False), (b, c, False)):
                    self._add_branch(one, other, tape.neg(y[p][q]) if opposite else y[p][q])
        return y

    def _determinant(self, windings: Sequence[Winding], terms: list[Terms], coupling: int) -> Terms:
        """z1 z2 - (s M)^2 as one polynomial, in which L1 L2 - M^2 is written as L1 L2 (1 - k)(1 + k), exactly."""
        coils = {w.coil for w in windings}
        leak = coupling + len(self.network.couplings)
        product: Terms = {}
        for power, one in terms[0].items():
            for other_power, other in terms[1].items():
                for a in one:
                    for b in other:
                        both = a + b
                        if {p for p, _ in both} == coils and power == other_power == 1:
                            both += ((leak, 1.0),)
                        product.setdefault(power + other_power, []).append(both)
        return product

    # 2. Trees

    def _build_trees(self) -> None:
        """Reduce all that is not coupled, and record the immittance of every cluster, leaves first."""
        elements = self.network.elements
        staying = dict.fromkeys([GROUND, *(feed.node for feed in self.network.feeds)])
        for windings in self._groups:
            for winding in windings:
                staying.update({winding.path[0]: None, winding.path[-1]: None})
        reduced = reduce(
            (
                (i, e.plus, e.minus)
                for i, e in enumerate(elements)
                if i not in self._in_winding and i not in self._in_loose
            ),
            staying,
        )
        self._clusters: list[Cluster] = []
        self._loops = set(reduced.loops)
        self._core_clusters = {
            branch: unfold(reduced.edges, branch, self._clusters)
            for node, around in reduced.core.items()
            for other, branch in around.items()
            if reduced.edges[branch].plus == node
        }
        self._live = len(self._clusters)
        self._dead_ends = [
            (node, other, unfold(reduced.edges, branch, self._clusters)) for node, other, branch in reduced.dead_ends
        ]
        self._core = reduced.core
        self._record_trees()

    def _record_trees(self) -> None:
        """Record the immittance of every live cluster (its z if series, its y if parallel), leaves first.

        It is kept as a fraction n/d. With n'/d' that of one child, lump + d'/n' = (lump n' + d') / n', so going up a
        level costs a product instead of a division, the dearest operation by far. Other children come in by their
        reciprocals; so does that one after MAX_CHAIN levels, lest the products of a long ladder leave the range of
        numbers, where nothing has any resistance, since a sum that may vanish has to be seen as such, and in an
        outermost parallel cluster, whose y is wanted undivided.
        """
        self._fraction = [(ZERO, ONE)] * len(self._clusters)
        self._main = [-1] * len(self._clusters)
        levels = [0] * len(self._clusters)
        lossless = [False] * len(self._clusters)
        for number in range(self._live - 1, -1, -1):
            cluster = self._clusters[number]
            children = [n for is_cluster, n, _ in cluster.items if is_cluster]
            leaves = [n for is_cluster, n, _ in cluster.items if not is_cluster]
            terms = self._series_terms(leaves) if cluster.kind == SERIES else self._parallel_terms(leaves)
            lossless[number] = 0 not in terms and all(lossless[c] for c in children)
            if not lossless[number] and (cluster.kind == SERIES or cluster.parent >= 0):
                able = [c for c in children if levels[c] < MAX_CHAIN]
                self._main[number] = max(able, key=lambda c: levels[c], default=-1)
            main = self._main[number]
            # A single element never vanishes.
            others = [self._inverse(c) for c in children if c != main]
            lump = self.tape.laurent(terms, others, lossless[number] and len(cluster.items) > 1)
            if main < 0:
                self._fraction[number] = (lump, ONE)
            else:
                above, below = self._fraction[main]
                self._fraction[number] = (self.tape.add(self.tape.mul(lump, above), below), above)
                levels[number] = levels[main] + 1

    def _inverse(self, number: int) -> int:
        """One over the immittance of a cluster."""
        above, below = self._fraction[number]
        return self.tape.mul(below, self.tape.reciprocal(above))

    def _series_terms(self, leaves: Iterable[int]) -> Terms:
        """R + s L + 1/(s C) of elements in series."""
        return self._terms(leaves, {"R": (0, 1.0), "L": (1, 1.0), "C": (-1, -1.0)})

    def _parallel_terms(self, leaves: Iterable[int]) -> Terms:
        """1/R + s C + 1/(s L) of elements in parallel."""
        return self._terms(leaves, {"R": (0, -1.0), "L": (-1, -1.0), "C": (1, 1.0)})

    def _terms(self, leaves: Iterable[int], rule: Mapping[str, tuple[int, float]]) -> Terms:
        terms: Terms = {}
        for leaf in leaves:
            power, exponent = rule[self._kinds[leaf]]
            terms.setdefault(power, []).append(((leaf, exponent),))
        return terms

    # 3. The mesh

    def _open_mesh(self) -> dict[str, dict[str, int]]:
        """The admittance between each pair of neighbouring core nodes."""
        mesh: dict[str, dict[str, int]] = {node: {} for node in self._core}
        for root in self._core_clusters.values():
            cluster = self._clusters[root]
            y = self._inverse(root) if cluster.kind == SERIES else self._fraction[root][0]
            mesh[cluster.plus][cluster.minus] = mesh[cluster.minus][cluster.plus] = y
        return mesh

    def _add_branch(self, one: str, other: str, admittance: int) -> None:
        if one != other and admittance != ZERO:
            total = self.tape.add(self._mesh[one].get(other, ZERO), admittance)
            self._mesh[one][other] = self._mesh[other][one] = total

    def _eliminate(self) -> tuple[list[Eliminated], list[str]]:
        """Star-mesh transforms, least degree first, down to the terminals; also the nodes that nothing holds."""
        tape, mesh = self.tape, self._mesh
        rank = {node: i for i, node in enumerate(mesh)}
        heap = [(len(around), rank[node], node) for node, around in mesh.items() if node not in self._terminals]
        heapq.heapify(heap)
        order: list[Eliminated] = []
        floating: list[str] = []
        while heap:
            degree, _, node = heapq.heappop(heap)
            around = mesh.get(node)
            if around is None or len(around) != degree:
                continue
            del mesh[node]
            # Ground first: its share is then never needed, neither for the pairs nor for a voltage.
            neighbours = tuple(sorted(around, key=lambda n: (n != GROUND, n not in self._terminals, rank[n])))
            y = tuple(around[n] for n in neighbours)
            total = ZERO
            for admittance in y:
                total = tape.add(total, admittance)
            if not y:
                floating.append(node)
                order.append(Eliminated(node, (), (), ZERO))
                continue
            per_total = tape.reciprocal(total)
            order.append(Eliminated(node, neighbours, y, per_total))
            for stamped in self._stamped.get(node, ()):
                # The branches of coupled windings have either sign; what they leave may be far smaller than they.
                tape.watch(tape.mul(stamped, per_total))
            for n in neighbours:
                del mesh[n][node]
            for j in range(1, len(neighbours)):
                share = tape.mul(y[j], per_total)
                tape.watch(share)
                for i in range(j):
                    self._add_branch(neighbours[i], neighbours[j], tape.mul(y[i], share))
            for n in neighbours:
                if n not in self._terminals:
                    heapq.heappush(heap, (len(mesh[n]), rank[n], n))
        return order, floating

    def input_admittance(self, feed: str) -> int:
        """The register of I/V at a feed (S), the amplifiers of all other feeds at rest."""
        node = next(f.node for f in self.network.feeds if f.name == feed)
        total = ZERO
        for y in self._mesh[node].values():
            total = self.tape.add(total, y)
        return total

    def determinant(self) -> dict[int, int]:
        """Registers with the power of each in a product: the determinant of the network but for constant factors.

        It is that of the nodal matrix, times the impedance of every element that lies in a series run. Each node of
        the mesh gives its total; the nodes inside a series run of impedances z give (sum of z) / (product of z), so a
        tree gives the immittance of every cluster, save that of an outermost parallel one. With n/d for each, and d
        being the n of the main child, only clusters that are no main child are left.
        """
        inside = set(self._main)
        powers: dict[int, int] = {}
        for number, cluster in enumerate(self._clusters[: self._live]):
            if number not in inside and (cluster.kind == SERIES or cluster.parent >= 0):
                above = self._fraction[number][0]
                powers[above] = powers.get(above, 0) + 1
        for pivot in self._pivots:
            powers[pivot] = powers.get(pivot, 0) + 1
        for step in self._eliminated:
            powers[step.per_total] = powers.get(step.per_total, 0) - 1
        return powers

    def in_one_run(self, names: Iterable[str]) -> bool | None:
        """Whether elements lie in one series run (True) or straight in parallel (False); None if neither is so.

        A coupled coil lies in no run, since its value has a part in the couplings; what is in series with it does.
        """
        places = {self._run_of(name) for name in names}
        run = places.pop() if len(places) == 1 else None
        return run if run is None else len(run) > 1 or self._clusters[run[0]].kind == SERIES

    def _run_of(self, name: str) -> tuple[int, ...] | None:
        """The cluster of an element, or the group and number of its winding."""
        element = self._number.get(name, -1)
        if element in self._in_winding:
            return None if element in self._coupled else self._in_winding[element][:2]
        return self._place[element][:1] if element in self._place else None

    # 4. Voltages and currents

    def _at_clusters(self) -> None:
        """Find the place of every element and inner node in the trees, and what lies straight across two nodes."""
        self._place: dict[int, tuple[int, int]] = {}
        self._inner: dict[str, tuple[int, int]] = {}
        self._across: dict[tuple[str, str], int] = {}
        for number, cluster in enumerate(self._clusters):
            self._across[cluster.plus, cluster.minus] = number
            for place, (is_cluster, item, sign) in enumerate(cluster.items):
                if not is_cluster:
                    self._place[item] = (number, sign)
                if cluster.kind == SERIES and place:
                    self._inner[cluster.path[place]] = (number, place)

    def node_voltage(self, node: str, drive: Drive | None = None) -> int:
        """The register of a node's voltage to ground (V)."""
        drive = self.every_feed if drive is None else drive
        known = self._voltages.get(drive) or self._mesh_voltages(drive)
        chain: list[str] = []
        while node not in known:
            chain.append(node)
            node, _ = self._toward_ground(node)
        for inner in reversed(chain):
            towards, (cluster, place, sign) = self._toward_ground(inner)
            item = self._item_voltage(cluster, place, drive)
            known[inner] = (self.tape.add if sign > 0 else self.tape.sub)(known[towards], item)
        return known[chain[0] if chain else node]

    def _toward_ground(self, node: str) -> tuple[str, tuple[int, int, int]]:
        """The next node on the way to ground in the series run, and the item between (cluster, place, sign)."""
        number, place = self._inner[node]
        path = self._clusters[number].path
        if path[0] == GROUND:
            return path[place - 1], (number, place - 1, -1)
        return path[place + 1], (number, place, 1)

    def _mesh_voltages(self, drive: Drive) -> dict[str, int]:
        tape = self.tape
        known = {GROUND: ZERO}
        self._voltages[drive] = known
        for feed in self.network.feeds:
            known[feed.node] = ONE if feed.name in drive else ZERO
        for step in reversed(self._eliminated):
            if len(step.neighbours) == 1:
                # No current flows in the only branch of a node.
                known[step.node] = known[step.neighbours[0]]
                continue
            total = ZERO
            for n, y in zip(step.neighbours, step.admittances, strict=True):
                if known[n] != ZERO:
                    total = tape.add(total, tape.mul(tape.mul(y, step.per_total), known[n]))
            known[step.node] = total
        for node, other, root in reversed(self._dead_ends):
            self._per_denominator[drive, root] = ZERO
            known[node] = self.node_voltage(other, drive)
        for windings in self._groups:
            for winding in windings:
                self._inner_voltages(winding, winding.path[0] == GROUND, drive, known)
        for winding, from_start in reversed(self._loose):
            held = winding.path[0 if from_start else -1]
            known[held] = self.node_voltage(held, drive)
            self._inner_voltages(winding, from_start, drive, known)
        return known

    def _inner_voltages(self, winding: Winding, from_start: bool, drive: Drive, known: dict[str, int]) -> None:
        """Walk along a winding from one end, to the nodes between its elements and to a loose end."""
        places = range(len(winding.items)) if from_start else range(len(winding.items) - 1, -1, -1)
        for place in places:
            item, sign = winding.items[place]
            here, there = winding.path[place], winding.path[place + 1]
            if from_start and there not in known:
                fall = self._signed(self.element_voltage(self.network.elements[item].name, drive), sign)
                known[there] = self.tape.sub(known[here], fall)
            elif not from_start and here not in known:
                fall = self._signed(self.element_voltage(self.network.elements[item].name, drive), sign)
                known[here] = self.tape.add(known[there], fall)

    def _quantity(self, number: int, drive: Drive) -> int:
        """What a cluster shares out among its items: a series cluster its current, a parallel one its voltage.

        Either way an item that is a cluster of the other kind passes on the same quantity over its own immittance
        n/d. Divided by d, the quantity of a cluster is that of its main child: they are kept in that form.
        """
        known, chain = self._per_denominator, []
        while (drive, number) not in known:
            chain.append(number)
            number = self._clusters[number].parent
            if number < 0:
                break
        for child in reversed(chain):
            cluster, above = self._clusters[child], self._fraction[child][0]
            if cluster.parent < 0:
                across = self.tape.sub(self.node_voltage(cluster.plus, drive), self.node_voltage(cluster.minus, drive))
                series = cluster.kind == SERIES and across != ZERO
                shared = self.tape.mul(across, self.tape.reciprocal(above)) if series else across
            else:
                shared = known[drive, cluster.parent]
                if child != self._main[cluster.parent] and shared != ZERO:
                    shared = self.tape.mul(shared, self._fraction[cluster.parent][1])
                    shared = self.tape.mul(shared, self.tape.reciprocal(above))
                shared = self._signed(shared, cluster.sign)
            known.setdefault((drive, child), shared)
        number = chain[0] if chain else number
        return self.tape.mul(known[drive, number], self._fraction[number][1])

    def _signed(self, register: int, sign: int) -> int:
        return register if sign > 0 else self.tape.neg(register)

    def _cluster_voltage(self, number: int, drive: Drive) -> int:
        """Plus to minus of the cluster."""
        cluster = self._clusters[number]
        quantity = self._quantity(number, drive)
        if cluster.kind != SERIES:
            return quantity
        if cluster.parent >= 0:
            return self._signed(self._quantity(cluster.parent, drive), cluster.sign)
        if quantity == ZERO:
            return ZERO
        return self.tape.sub(self.node_voltage(cluster.plus, drive), self.node_voltage(cluster.minus, drive))

    def _item_voltage(self, number: int, place: int, drive: Drive) -> int:
        """The voltage over one item of a series cluster, in the direction of the cluster."""
        is_cluster, item, sign = self._clusters[number].items[place]
        if is_cluster:
            return self._signed(self._cluster_voltage(item, drive), sign)
        return self._signed(self.element_voltage(self.network.elements[item].name, drive), sign)

    def element_current(self, name: str, drive: Drive | None = None) -> int:
        """The register of an element's current, plus to minus (A)."""
        drive = self.every_feed if drive is None else drive
        element = self._number[name]
        if element in self._in_winding:
            group, p, place = self._in_winding[element]
            return self._signed(self._winding_current(group, p, drive), self._groups[group][p].items[place][1])
        if element in self._loops or element in self._in_loose:
            return ZERO
        number, sign = self._place[element]
        quantity = self._signed(self._quantity(number, drive), sign)
        if self._clusters[number].kind == SERIES or quantity == ZERO:
            return quantity
        return self.tape.mul(quantity, self.tape.laurent(self._parallel_terms([element])))

    def element_voltage(self, name: str, drive: Drive | None = None) -> int:
        """The register of an element's voltage, plus to minus (V)."""
        drive = self.every_feed if drive is None else drive
        element = self._number[name]
        if element in self._in_winding or element in self._in_loose:
            current = self.element_current(name, drive)
            own = self.tape.mul(current, self.tape.laurent(self._series_terms([element])))
            return self.tape.add(own, self._induced(element, drive))
        if element in self._loops:
            return ZERO
        number, sign = self._place[element]
        quantity = self._signed(self._quantity(number, drive), sign)
        if self._clusters[number].kind != SERIES or quantity == ZERO:
            return quantity
        return self.tape.mul(quantity, self.tape.laurent(self._series_terms([element])))

    def _winding_current(self, group: int, p: int, drive: Drive) -> int:
        key = (drive, group, p)
        if key not in self._winding_currents:
            total = ZERO
            for q, winding in enumerate(self._groups[group]):
                across = self.tape.sub(
                    self.node_voltage(winding.path[0], drive), self.node_voltage(winding.path[-1], drive)
                )
                total = self.tape.add(total, self.tape.mul(self._y_winding[group][p][q], across))
            self._winding_currents[key] = total
        return self._winding_currents[key]

    def _induced(self, coil: int, drive: Drive) -> int:
        """The voltage that the currents of other coils induce in this one."""
        total = ZERO
        for other in self._coupled.get(coil, ()):
            mutual = self.tape.laurent({1: self._mutual(coil, other)})
            current = self.element_current(self.network.elements[other].name, drive)
            total = self.tape.add(total, self.tape.mul(mutual, current))
        return total

    def voltage_between(self, plus: str, minus: str, drive: Drive | None = None) -> int:
        """The register of V(plus) - V(minus): read straight across a branch where one lies between the two."""
        drive = self.every_feed if drive is None else drive
        if plus == minus:
            return ZERO
        for ends, sign in (((plus, minus), 1), ((minus, plus), -1)):
            if ends in self._across:
                return self._signed(self._cluster_voltage(self._across[ends], drive), sign)
        run = self._series_run(plus, minus)
        if run is not None:
            number, first, last, sign = run
            items = self._clusters[number].items[first:last]
            current = self._quantity(number, drive)
            if current == ZERO:
                return ZERO
            impedance = self.tape.laurent(
                self._series_terms([n for is_cluster, n, _ in items if not is_cluster]),
                [self._inverse(n) for is_cluster, n, _ in items if is_cluster],
            )
            return self._signed(self.tape.mul(current, impedance), sign)
        return self.tape.sub(self.node_voltage(plus, drive), self.node_voltage(minus, drive))

    def _series_run(self, plus: str, minus: str) -> tuple[int, int, int, int] | None:
        """(cluster, first item, end item, sign) if both nodes lie on the path of one series cluster."""
        for one, other, sign in ((plus, minus, 1), (minus, plus, -1)):
            if one in self._inner:
                number, place = self._inner[one]
                path = self._clusters[number].path
                beside, end = self._inner.get(other, (-1, 0))
                if beside == number or other in (path[0], path[-1]):
                    end = end if beside == number else 0 if other == path[0] else len(path) - 1
                    return (number, place, end, sign) if place < end else (number, end, place, -sign)
        return None
