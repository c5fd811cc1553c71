"""The page of what the fault finder finds: TABLE.md is written from counts.json, and both by `run.py --write`."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterable, Mapping, Sequence
from pathlib import Path
from statistics import mean
from typing import Any

from faultfinding.scoring import PLAIN
from faultfinding.targets import LATER, OWN

TABLE = Path(__file__).parent / "TABLE.md"
COUNTS = Path(__file__).parent / "counts.json"
APART = ("near twins", "drift", "joint under 2 ohm")
SETUP = ("driver", "dummies", "series", "source", "meter", "scatter")
ACROSS = ("any value",)
"""Families that the mean leaves out: what hardly differs from a sound board, faults of the set-up, and what lies across
the other families."""

HEAD = """\
# What the bench finds

Written by `{command}`:
{boards} boards of each fault, {faults}. Boards are simulated: made
by ngspice from circuits with a fault in them, with the errors of parts, drivers and meters, and read by the first
readings of the sheet that the bench itself chose (8 of a two-way, 10 of a three-way, 2 more for a second input).
Detected: the board does not pass. First: the first suspect is the fault, or one that the sheet does not tell from it,
of the boards that are detected; among three likewise. Sure and wrong: of all boards, a wrong first suspect with a share
of 90 % or more, and no word that it may be none. The aims were set for the examples and the judge's first designs; the
later ones, on which nothing was tuned either, stand beside them, and among all in the tables below.
How boards are made and what counts as one fault stands in DEVELOPERS.md.
"""

Counts = Mapping[str, Any]
TWO, THREE = "two ways and fewer", "three ways and more"
PAIRS = ("flagged or one first", "flagged", "one first", "sure and wrong")


def markdown(counts: Sequence[Counts], amount: Mapping[str, Any]) -> str:
    """The page, of the counts of all designs, and how much was counted."""
    boards, most = amount["boards"], amount["most"]
    limit = f" --most {most}" if most else ""
    command = f"python tests/faultfinding/run.py --boards {boards}{limit} --assume broken --write"
    faults = f"in each design {most} of a family at the most" if most else "all of each design"
    head = HEAD.format(command=command, boards=boards, faults=faults)
    return head + "".join(f"\n## {title}\n\n{text}\n" for title, text in sections(counts))


def sections(counts: Sequence[Counts]) -> Iterable[tuple[str, str]]:
    """Titles and tables: what was aimed at, by family, by design, and what else was asked."""
    yield "Aims", _against_aims(counts)
    for title, group in _by_ways(counts):
        yield f"By family, {title}", _families(group)
    yield "By design", _designs(counts)
    yield "Two faults at once, and reading on from the first four", _more(counts)
    if any(one["broken"] for one in counts):
        yield "With other errors than assumed", _broken(counts)
    yield "Stated shares against hits", _stated(counts)
    yield "What is one and the same on a bench", _classes(counts)
    yield "What a bench does not see", _blind(counts)


def _blind(counts: Sequence[Counts]) -> str:
    """What hardly differs from a sound board, with what is seen of it all the same, and what no reading is about."""
    families = by_family(counts)
    seen = {name: _share(families[name]["detected"], families[name]["boards"]) for name in APART if name in families}
    words = {
        "drift": "A part 2 to 4 tolerances off: as far as a few good ones together",
        "joint under 2 ohm": "A joint of 0.5 to 2 ohm: the leads and contacts of an ohmmeter make as much",
        "near twins": "What changes the readings less than parts and meters do: parts of nearly one value exchanged, a"
        " driver's wires exchanged where little lies between them, a joint where hardly any current flows",
    }
    lines = [f"- {words[name]} ({seen[name]} seen)." for name in words if name in seen]
    lines += [
        "- Nothing of: joints, tracks and parts under load, heat and shaking; insulation and voltage; coils that "
        "saturate; the drivers inside, their polarity among it; rattle and leaks of air.",
        "- Which one it is of faults that are one on a bench: the eye must tell, or a part with one end lifted.",
    ]
    return "\n".join(lines)


def _by_ways(counts: Sequence[Counts]) -> list[tuple[str, list[Counts]]]:
    """The designs of two drivers at the most, and the others."""
    two, three = ([one for one in counts if (one["ways"] > 2) == many] for many in (False, True))
    return [(title, group) for title, group in ((TWO, two), (THREE, three)) if group]


def _against_aims(counts: Sequence[Counts]) -> str:
    """The aims beside what came of them: on the designs that they were set for, and on those written later."""
    last = [one for one in counts if _stem(one) in _stems(LATER)]
    first = [one for one in counts if one not in last]
    groups = [
        (title, dict(_aims(group))) for title, group in (("measured", first), ("on the later designs", last)) if group
    ]
    aims = dict.fromkeys(key for _, measured in groups for key in measured)
    head = ["what", "aim", *(title for title, _ in groups)]
    return _table([head, *([*key, *(measured.get(key, "-") for _, measured in groups)] for key in aims)])


def _aims(counts: Sequence[Counts]) -> list[tuple[tuple[str, str], str]]:
    """What was aimed at before anything was measured, and what came of it. Shares in percent but for the readings."""
    rows: list[tuple[tuple[str, str], str]] = []

    def row(what: str, aim: str, part: float, whole: float) -> None:
        rows.append(((what, aim), _share(part, whole)))

    sound = summed(one["sound"] for one in counts)
    row("sound boards pass the whole sheet", "98.5 % and more", sound["passed"], sound["boards"])
    for title, group in _by_ways(counts):
        families, plain_aim = by_family(group), 97 if title == TWO else 95
        for rate, aim, only in (
            ("detected", "95 % and more", ()),
            ("first", "95 % and more", ()),
            ("among three", "99 % and more", ()),
            ("first", f"{plain_aim} % and more", PLAIN),
            ("sure and wrong", "2 % and less", ()),
        ):
            average, worst = mean_of(families, rate, only)
            of = f" of {', '.join(only)}" if only else ""
            rows.append(((f"{rate}{of}, mean of the families, {title}", aim), f"{100 * average:.1f} %; worst {worst}"))
    any_value = by_family(counts).get("any value", Counter())
    row("any value, first", "90 % and more", any_value["first"], any_value["detected"])
    pairs = summed(one["pairs"] for one in counts)
    row("two faults, flagged or one first", "90 % and more", pairs["flagged or one first"], pairs["boards"])
    row("two faults, sure and wrong", "3 % and less", pairs["sure and wrong"], pairs["boards"])
    adaptive = adaptive_by_family(counts)
    right = {name: c["right"] / c["boards"] for name, c in adaptive.items()}
    readings = {name: c["readings"] / c["boards"] for name, c in adaptive.items()}
    if adaptive:
        least, most = min(right, key=lambda name: right[name]), max(readings, key=lambda name: readings[name])
        rows.append((("reading on from four, right, mean of the families", "95 % and more"),
                     f"{100 * mean(right.values()):.1f} %; worst {least}, {100 * right[least]:.1f} %"))  # fmt: skip
        rows.append((("reading on from four, readings, mean of the families", "6 and fewer"),
                     f"{mean(readings.values()):.2f}; worst {most}, {readings[most]:.2f}"))  # fmt: skip
    for what in sorted({what for one in counts for what in one["broken"]}):
        broken = summed(one["broken"].get(what, {}) for one in counts)
        doubted = broken["sound"] - broken["sound: passed"]
        row(f"{what}: false alarms", "10 % and less", broken["sound: blamed"], broken["sound"])
        row(f"{what}: first", "88 % and more", broken["first"], broken["detected"])
        row(f"{what}: set-up named where a sound board fails", "most", broken["sound: set-up among suspects"], doubted)
    for how, place in (("families as often as the bench takes them to be", 1), ("every fault alike", 0)):
        bins = {low: _shares_and_hits(c)[place] for low, c in _bins(counts).items() if c["cases"] >= 1000}
        off = {low: abs(hits - share) for low, (share, hits) in bins.items()}
        worst = max(off, key=lambda low: off[low], default="")
        rows.append(((f"stated share against hits, worst of bins of 1,000 boards, {how}", "3 points and less"),
                     f"{100 * off[worst]:.1f}, from {100 * float(worst):.0f} %" if off else "-"))  # fmt: skip
    return rows


def _shares_and_hits(c: Mapping[str, int]) -> tuple[tuple[float, float], tuple[float, float]]:
    """Mean share and hits of a bin, every fault alike, and each as often as the bench takes it to be."""
    often = c["often"] or 1
    alike = c["millionths"] / 1e6 / c["cases"], c["hits"] / c["cases"]
    return alike, (c["often: share"] / often, c["often: hits"] / often)


def adaptive_by_family(counts: Iterable[Counts]) -> dict[str, Counter[str]]:
    counts = list(counts)
    names = sorted({family for one in counts for family in one["adaptive"]})
    return {name: summed(one["adaptive"].get(name, {}) for one in counts) for name in names}


def _bins(counts: Sequence[Counts]) -> dict[str, Counter[str]]:
    lows = sorted({low for one in counts for low in one["stated"]})
    return {low: summed(one["stated"].get(low, {}) for one in counts) for low in lows}


def summed(tables: Iterable[Mapping[str, int]]) -> Counter[str]:
    total: Counter[str] = Counter()
    for table in tables:
        total.update(table)
    return total


def by_family(counts: Iterable[Counts]) -> dict[str, Counter[str]]:
    """The families of several designs, their counts added."""
    counts = list(counts)
    names = sorted({family for one in counts for family in one["families"]})
    return {name: summed(one["families"].get(name, {}) for one in counts) for name in names}


def _share(part: float, whole: float) -> str:
    return f"{100 * part / whole:.1f} %" if whole else "-"


RATES: Mapping[str, Callable[[Mapping[str, int]], tuple[int, int]]] = {
    "detected": lambda c: (c["detected"], c["boards"]),
    "first": lambda c: (c["first"], c["detected"]),
    "among three": lambda c: (c["among 3"], c["detected"]),
    "sure and wrong": lambda c: (c["sure and wrong"], c["boards"]),
}


def mean_of(families: Mapping[str, Mapping[str, int]], rate: str, only: Sequence[str] = ()) -> tuple[float, str]:
    """The mean of a rate over families of faults of the board, each weighing the same, and the worst of them."""
    found = {}
    for name, counts in families.items():
        part, whole = RATES[rate](counts)
        if whole and (name in only if only else name not in (*APART, *SETUP, *ACROSS)):
            found[name] = part / whole
    if not found:
        return float("nan"), "-"
    worst = (max if rate == "sure and wrong" else min)(found, key=lambda name: found[name])
    return sum(found.values()) / len(found), f"{worst}, {100 * found[worst]:.1f} %"


def _families(group: Sequence[Counts]) -> str:
    families = by_family(group)
    ordered = [n for n in families if n not in (*APART, *SETUP, *ACROSS)]
    rows = [["family", "boards", *RATES, "no single fault"]]
    for name in [*ordered, None, *ACROSS, *SETUP, *APART]:
        if name is None:
            rows.append(["**mean**", "", *(f"{100 * mean_of(families, rate)[0]:.1f} %" for rate in RATES), ""])
            rows.append(["**worst**", "", *(mean_of(families, rate)[1] for rate in RATES), ""])
            rows.append([f"**mean of {', '.join(PLAIN)}**", "",
                         *(f"{100 * mean_of(families, rate, PLAIN)[0]:.1f} %" for rate in RATES), ""])  # fmt: skip
        elif name in families:
            c = families[name]
            rows.append([name, str(c["boards"]), *(_share(*of(c)) for of in RATES.values()),
                         _share(c["no single fault"], c["boards"])])  # fmt: skip
    return _table(rows)


def _designs(counts: Sequence[Counts]) -> str:
    rows = [
        ["design", "ways", "readings", "faults", "sound passes", *RATES, f"first of {', '.join(PLAIN)}", "worst family"]
    ]
    for one in counts:
        families, sound = by_family([one]), one["sound"]
        rows.append([
            one["name"], str(one["ways"]), str(one["readings"]), str(one["faults"]),
            _share(sound.get("passed", 0), sound["boards"]),
            *(f"{100 * mean_of(families, rate)[0]:.1f} %" for rate in RATES),
            f"{100 * mean_of(families, 'first', PLAIN)[0]:.1f} %", mean_of(families, "first")[1],
        ])  # fmt: skip
    for title, group in ("all", counts), *_own(counts):
        families, sound = by_family(group), summed(one["sound"] for one in group)
        rows.append([
            f"**{title}**", "", "", "", _share(sound["passed"], sound["boards"]),
            *(f"{100 * mean_of(families, rate)[0]:.1f} %" for rate in RATES),
            f"{100 * mean_of(families, 'first', PLAIN)[0]:.1f} %", mean_of(families, "first")[1],
        ])  # fmt: skip
    return _table(rows)


def _own(counts: Sequence[Counts]) -> Iterable[tuple[str, list[Counts]]]:
    """The judge's designs by themselves: those of before there was a bench, and those that were written later."""
    for title, paths in ("the judge's own", OWN), ("the judge's later ones", LATER):
        group = [one for one in counts if _stem(one) in _stems(paths)]
        if group:
            yield title, group


def _stem(one: Counts) -> str:
    """The design's file, whatever the variant."""
    return str(one["name"]).partition(" (")[0]


def _stems(paths: Iterable[Path]) -> set[str]:
    return {path.stem for path in paths}


def _more(counts: Sequence[Counts]) -> str:
    rows = [["design", "two faults: boards", "flagged or one first", "flagged", "one first", "sure and wrong",
             "pair named, right", "reading on: boards", "readings", "right", "settled"]]  # fmt: skip
    for name, group in [*((one["name"], [one]) for one in counts), ("**all**", counts)]:
        p, a = summed(one["pairs"] for one in group), summed(adaptive_by_family(group).values())
        rows.append([
            name, str(p["boards"]),
            *(_share(p[key], p["boards"]) for key in PAIRS),
            _share(p["both of it right"], p["a pair named"]), str(a["boards"]),
            f"{a['readings'] / a['boards']:.2f}" if a["boards"] else "-",
            _share(a["right"], a["boards"]), _share(a["settled"], a["boards"]),
        ])  # fmt: skip
    return _table(rows)


def _broken(counts: Sequence[Counts]) -> str:
    head = ["what is otherwise", "sound boards", "blamed", "set-up named", "set-up among suspects", "with a fault"]
    rows = [[*head, *RATES]]
    for what in sorted({what for one in counts for what in one["broken"]}):
        c = summed(one["broken"].get(what, {}) for one in counts)
        rows.append([
            what, str(c["sound"]),
            *(_share(c[f"sound: {key}"], c["sound"]) for key in ("blamed", "set-up", "set-up among suspects")),
            str(c["boards"]), *(_share(*of(c)) for of in RATES.values()),
        ])  # fmt: skip
    return _table(rows)


def _stated(counts: Sequence[Counts]) -> str:
    rows = [["share stated from", "boards", *(f"{how}: {what}" for how in ("as often as taken", "every fault alike")
             for what in ("mean share", "hits", "difference"))]]  # fmt: skip
    for low, c in _bins(counts).items():
        alike, often = _shares_and_hits(c)
        told = [
            f"{100 * share:.1f} % | {100 * hits:.1f} % | {100 * (hits - share):+.1f}" for share, hits in (often, alike)
        ]
        rows.append([f"{100 * float(low):.0f} %", str(c["cases"]), *told])
    text = (
        "A share says how likely a suspect is where families of faults happen as often as the bench takes them to\n"
        "(its WEIGHTS): in the first columns boards are weighed so. In the others every fault counts alike, and many\n"
        "a fault is a lead on a wrong node."
    )
    return f"{text}\n\n{_table(rows)}"


def _classes(counts: Sequence[Counts]) -> str:
    keys = ("made", "near sound", "slices", "slices alone")
    rows = [["design", "faults made", "near a sound board", "with their sizes apart", "of these told from all others"]]
    rows += [[one["name"], *(str(one["classes"][key]) for key in keys)] for one in counts]
    return _table(rows)


def _table(rows: Sequence[Sequence[str]]) -> str:
    head, *body = rows
    return "\n".join(
        ["| " + " | ".join(head) + " |", "|" + "---|" * len(head), *("| " + " | ".join(r) + " |" for r in body)]
    )
