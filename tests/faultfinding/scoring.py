"""How a fault finder does on boards made here: counts by family of fault, and of every question that is asked of it.

In: a circuit and a maker of fault finders. Out: plain counts. What is right is told by `cases.Classes`, which are there
before anything is judged.
"""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from itertools import islice
from random import Random

from faultfinding.boards import Errors, Plan
from faultfinding.cases import CLASS_BOARDS, SOUND, Case, Classes, Made, made, own_cases, read
from faultfinding.method import Method
from shuntwise.bench.dictionary import WEIGHTS
from shuntwise.bench.faults import Fault
from shuntwise.bench.verdict import Verdict
from shuntwise.graph.circuit import Circuit
from shuntwise.model.box import Instruments, Reading, Taken

READINGS, MORE_FOR_AN_INPUT = {2: 8, 3: 10}, 2
"""So many readings of the sheet are judged, by the number of drivers (3 of three and more), and for an input more."""

SURE, MOST_READINGS, FIRST_READINGS = 0.9, 12, 4
BINS = (0.0, 0.3, 0.5, 0.7, 0.8, 0.9, 0.95, 0.99)
"""Lower ends of the bins in which stated shares are held against hits."""

PLAIN = ("open", "short", "bridge", "exchanged", "outputs")
_WEIGHTS: Mapping[str, float] = {**WEIGHTS}
"""How often the bench takes each family to happen; of those that lie across the others it takes nothing."""

UNDETECTED = ("passed", "good so far")

USUAL = Errors()
BROKEN: Mapping[str, Errors] = {
    "meter 5 % low at its top": Errors(sag=0.05),
    "parts at 1.6 x tolerance": Errors(parts=1.6),
    "drivers +-20 %": Errors(drivers=0.2),
    "dummies +-5 %": Errors(dummies=0.05),
}


@dataclass(frozen=True)
class Amount:
    """How many boards of each question: of each fault, sound, with two faults, adaptively; `most` faults a family."""

    boards: int = 50
    most: int | None = None
    broken: bool = False
    class_boards: int = CLASS_BOARDS

    @property
    def sound(self) -> int:
        return 20 * self.boards

    @property
    def pairs(self) -> int:
        return 10 * self.boards

    @property
    def adaptive(self) -> int:
        return max(1, self.boards // 50)


@dataclass
class Score:
    """Counts of one design. `families` and `adaptive` by family and what was counted; `stated` by the bin of the share
    of the first suspect: cases, hits and the sum of shares in millionths, then the same with each case as often as the
    bench takes it to happen, in billionths of a family that happens once, so that all counts are whole numbers.
    """

    name: str
    readings: int = 0
    ways: int = 0
    faults: int = 0
    classes: dict[str, int] = field(default_factory=dict)
    sound: Counter[str] = field(default_factory=Counter)
    families: dict[str, Counter[str]] = field(default_factory=lambda: defaultdict(Counter))
    pairs: Counter[str] = field(default_factory=Counter)
    adaptive: dict[str, Counter[str]] = field(default_factory=lambda: defaultdict(Counter))
    broken: dict[str, Counter[str]] = field(default_factory=lambda: defaultdict(Counter))
    stated: dict[str, Counter[str]] = field(default_factory=lambda: defaultdict(Counter))

    def plain(self) -> dict[str, object]:
        """As JSON has it."""
        return {
            key: {k: dict(sorted(v.items())) if isinstance(v, dict) else v for k, v in sorted(value.items())}
            if isinstance(value, dict)
            else value
            for key, value in vars(self).items()
        }


@dataclass(frozen=True)
class _Bench:
    """A design on the bench, with everything that judges it."""

    plan: Plan
    method: Method
    classes: Classes
    instruments: Instruments
    seed: str
    whole: tuple[Reading, ...]
    few: int

    def board(self, cases: Iterable[Case], why: str, errors: Errors = USUAL) -> Made:
        """A board with the faults of these cases."""
        faults = [case.fault for case in cases if case.fault is not None]
        return made(self.plan, faults, f"{self.seed} {why}", errors, self.instruments)


def score(
    name: str,
    circuit: Circuit,
    maker: Callable[[Circuit, Instruments], Method],
    amount: Amount,
    seed: int,
    tell: Callable[[str], None] = lambda _: None,
) -> Score:
    """All counts of one design. `tell` is given what is listed before it is judged."""
    instruments, plan = Instruments(), Plan(circuit)
    method, seed_text = maker(circuit, instruments), f"{seed} {name}"
    whole = tuple(line.reading for line in method.sheet.lines)
    ways = len({driver.coil_of or driver.name for driver in plan.drivers.values()})
    few = min(READINGS[3 if ways > 2 else 2] + MORE_FOR_AN_INPUT * (len(plan.feeds) - 1), len(whole))
    chosen = _chosen(
        [*(Case(f.family, f) for f in method.faults if f.family != "drift"), *own_cases(plan)], amount.most, seed_text
    )
    classes = Classes(plan, whole, instruments, seed_text, chosen, amount.class_boards)
    near = {case: classes.always_near(case) for case in chosen}
    bench = _Bench(plan, method, classes, instruments, seed_text, whole, few)
    score = Score(name, few, ways, len(method.faults), _listed(bench, chosen, near, tell))
    _sound(bench, amount, score)
    _singles(bench, amount, chosen, score)
    telling = [case for case in chosen if not near[case] and not _setup(case)]
    _pairs(bench, amount, telling, score)
    _adaptive(bench, amount, [case for case in telling if case.family not in ("drift", "any value")], score)
    if amount.broken:
        _broken(bench, amount, [case for case in telling if case.family not in ("drift", "any value")], score)
    return score


def _chosen(cases: Sequence[Case], most: int | None, seed: str) -> list[Case]:
    """At most so many of each family, evenly spread over sizes and places by chance."""
    by_family: dict[str, list[Case]] = defaultdict(list)
    for case in cases:
        by_family[case.family].append(case)
    draw = Random(f"{seed} chosen")
    return [
        case
        for family in by_family.values()
        for case in (family if most is None or len(family) <= most else draw.sample(family, most))
    ]


def _setup(case: Case) -> bool:
    return case.fault is not None and case.fault.of_setup


def _listed(
    bench: _Bench, chosen: Sequence[Case], near: Mapping[Case, bool], tell: Callable[[str], None]
) -> dict[str, int]:
    """Which faults are one, told and counted."""
    tell(f"{bench.seed}: {len(chosen)} faults are made, read by {[r.words() for r in bench.whole]}")
    for case in chosen:
        if near[case]:
            tell(f"near a sound board: {case.fault}")
    twins = bench.classes.listed
    for one, others in twins:
        if others:
            tell(f"{one.fault or 'sound'} is one with {[str(other.fault or 'sound') for other in others]}")
    alone = sum(1 for _, others in twins if not others)
    return {"made": len(chosen), "near sound": sum(near.values()), "slices": len(twins), "slices alone": alone}


# --- the questions


def _sound(bench: _Bench, amount: Amount, score: Score) -> None:
    """Sound boards and the whole sheet."""
    for verdict, _, _ in _verdicts(bench, [(SOUND, n) for n in range(amount.sound)], "sound", USUAL, len(bench.whole)):
        score.sound["boards"] += 1
        score.sound[verdict.outcome] += 1


def _singles(bench: _Bench, amount: Amount, chosen: Sequence[Case], score: Score) -> None:
    """Every fault by itself, and the first readings of the sheet."""
    asked = [(case, number) for case in chosen for number in range(amount.boards)]
    cases_of = Counter(case.family for case in chosen)
    for verdict, case, one in _verdicts(bench, asked, "single", USUAL, bench.few):
        family = case.family
        if family == "joint" and one.size < 2:
            family = "joint under 2 ohm"
        elif family != "drift" and bench.classes.near_sound(case, one.size):
            family = "near twins"
        ranks = [bench.classes.right(case, one.size, s.fault) for s in verdict.suspects]
        _count(score.families[family], verdict, ranks)
        if verdict.suspects and verdict.outcome not in UNDETECTED:
            # A share is that of a class of the bench's own: what it takes for one, and told so.
            first = verdict.suspects[0]
            hit = case.fault is not None and bench.method.is_one(case.fault, first.fault)
            often = _WEIGHTS.get(case.family, 0.0) / cases_of[case.family] / amount.boards
            _state(score.stated, first.share, hit, often)


def _count(counts: Counter[str], verdict: Verdict, ranks: Sequence[bool]) -> None:
    detected, first = verdict.outcome not in UNDETECTED, bool(ranks) and ranks[0]
    sure = bool(verdict.suspects) and verdict.suspects[0].share >= SURE
    counts["boards"] += 1
    counts[verdict.outcome] += 1
    counts["detected"] += detected
    counts["first"] += detected and first
    counts["among 3"] += detected and any(ranks)
    counts["sure and wrong"] += sure and not first and verdict.outcome in ("fault", "set-up")


def _state(stated: dict[str, Counter[str]], share: float, hit: bool, often: float) -> None:
    counts = stated[f"{max(low for low in BINS if low <= max(share, 0.0)):.2f}"]
    counts["cases"] += 1
    counts["hits"] += hit
    counts["millionths"] += round(1e6 * share)
    counts["often"] += round(1e9 * often)
    counts["often: hits"] += round(1e9 * often) * hit
    counts["often: share"] += round(1e9 * often * share)


def _pairs(bench: _Bench, amount: Amount, cases: Sequence[Case], score: Score) -> None:
    """Two faults at once that have no owner in common, each of which a bench tells from none."""
    singles = [case for case in cases if case.family not in ("drift", "any value")]
    draw, pairs = Random(f"{bench.seed} pairs"), []
    for _ in range(20 * amount.pairs if len(singles) > 1 else 0):
        one, other = draw.sample(singles, 2)
        assert one.fault and other.fault
        if len(pairs) < amount.pairs and not {*one.fault.owners} & {*other.fault.owners}:
            pairs.append((one, other))
    boards = [bench.board(pair, f"pair {number}") for number, pair in enumerate(pairs)]
    taken = read(bench.plan, [(board, bench.whole[: bench.few]) for board in boards], bench.instruments)
    verdicts = [bench.method.judge(row) for row in taken]
    bench.classes.prepare(
        (one.fault, s.fault) for pair, v in zip(pairs, verdicts, strict=True) for one in pair for s in v.suspects
    )
    for verdict, board, pair in zip(verdicts, boards, pairs, strict=True):
        flagged = verdict.outcome == "no single fault"
        first = bool(verdict.suspects) and _either(bench.classes, pair, board.sizes, verdict.suspects[0].fault)
        sure = bool(verdict.suspects) and verdict.suspects[0].share >= SURE
        score.pairs["boards"] += 1
        score.pairs["detected"] += verdict.outcome not in UNDETECTED
        score.pairs["flagged"] += flagged
        score.pairs["one first"] += first
        score.pairs["flagged or one first"] += flagged or (first and verdict.outcome not in UNDETECTED)
        score.pairs["sure and wrong"] += sure and not first and verdict.outcome in ("fault", "set-up")
        if verdict.pair is not None:
            named = [_either(bench.classes, pair, board.sizes, one.fault) for one in verdict.pair]
            score.pairs["a pair named"] += 1
            score.pairs["both of it right"] += all(named)


def _either(classes: Classes, pair: Sequence[Case], sizes: Sequence[float], named: Fault) -> bool:
    return any(classes.right(case, size, named) for case, size in zip(pair, sizes, strict=True))


def _adaptive(bench: _Bench, amount: Amount, cases: Sequence[Case], score: Score) -> None:
    """From the first four readings on what is proposed, until the first suspect is sure or nothing more is proposed.

    All boards go on by one reading in turn, so that they are read together.
    """
    asked = [(case, number) for case in cases for number in range(amount.adaptive)]
    boards = [(case, bench.board([case], f"adaptive {case} {number}")) for case, number in asked]
    boards = [(case, board) for case, board in boards if not bench.classes.near_sound(case, board.size)]
    start = bench.whole[: min(FIRST_READINGS, len(bench.whole))]
    rows = read(bench.plan, [(board, start) for _, board in boards], bench.instruments)
    going = [(case, board, row) for (case, board), row in zip(boards, rows, strict=True)]
    while going:
        proposed: list[tuple[Case, Made, tuple[Taken, ...], Reading]] = []
        for case, board, row in going:
            verdict = bench.method.judge(row)
            settled = bool(verdict.suspects) and verdict.suspects[0].share >= SURE
            proposal = None if settled or len(row) >= MOST_READINGS else bench.method.propose(row)
            if proposal is not None:
                proposed.append((case, board, row, proposal.line.reading))
                continue
            first = bool(verdict.suspects) and bench.classes.right(case, board.size, verdict.suspects[0].fault)
            counts = score.adaptive[case.family]
            counts["boards"] += 1
            counts["readings"] += len(row)
            counts["right"] += first
            counts["settled"] += settled
        more = read(bench.plan, [(board, [reading]) for _, board, _, reading in proposed], bench.instruments)
        going = [(case, board, (*row, *new)) for (case, board, row, _), new in zip(proposed, more, strict=True)]


def _broken(bench: _Bench, amount: Amount, cases: Sequence[Case], score: Score) -> None:
    """What comes of it where errors are other than assumed: sound boards, and boards with a fault."""
    for what, errors in BROKEN.items():
        counts = score.broken[what]
        asked = [(SOUND, number) for number in range(4 * amount.boards)]
        for verdict, _, _ in _verdicts(bench, asked, f"broken {what}", errors, len(bench.whole)):
            counts["sound"] += 1
            counts["sound: passed"] += verdict.outcome in UNDETECTED
            counts["sound: blamed"] += verdict.outcome in ("fault", "no single fault")
            counts["sound: set-up"] += verdict.outcome == "set-up"
            counts["sound: set-up among suspects"] += _names_setup(verdict)
        asked = [(case, 0) for case in cases]
        for verdict, case, one in _verdicts(bench, asked, f"broken {what}", errors, bench.few):
            ranks = [bench.classes.right(case, one.size, s.fault) for s in verdict.suspects]
            _count(counts, verdict, ranks)


def _names_setup(verdict: Verdict) -> bool:
    """Is the set-up called in question, by the outcome or among the suspects of a board that does not pass?"""
    named = any(s.fault.of_setup for s in verdict.suspects)
    return verdict.outcome == "set-up" or (verdict.outcome not in UNDETECTED and named)


BATCH = 400


def _verdicts(
    bench: _Bench, asked: Iterable[tuple[Case, int]], why: str, errors: Errors, readings: int
) -> Iterable[tuple[Verdict, Case, Made]]:
    """Boards made, read and judged, and the suspects' classes worked out, some hundred at a time."""
    left = iter(asked)
    while batch := list(islice(left, BATCH)):
        boards = [bench.board([case], f"{why} {case} {number}", errors) for case, number in batch]
        rows = read(bench.plan, [(board, bench.whole[:readings]) for board in boards], bench.instruments)
        verdicts = [bench.method.judge(row) for row in rows]
        bench.classes.prepare(
            (case.fault, s.fault) for (case, _), v in zip(batch, verdicts, strict=True) for s in v.suspects
        )
        for verdict, (case, _), board in zip(verdicts, batch, boards, strict=True):
            yield verdict, case, board
