"""A few mistakes of each class, always the same: a test makes them and compares what comes of them with what did."""

from __future__ import annotations

from random import Random

from mistakes.judging import Judge
from mistakes.slips import CLASSES
from mistakes.tally import GROUPS, Tally

SEED = 2026
DESIGNS = 2
MISTAKES = 2
"""So many designs of each group, and so many mistakes of each class in all of them."""


def sample() -> dict[str, dict[str, int]]:
    """Counts by group and by whether the `expect` lines stand."""
    return {
        f"{group}, {'with' if expects else 'without'} expect lines": _counts(group, expects)
        for group in GROUPS
        for expects in (True, False)
    }


def _counts(group: str, expects: bool) -> dict[str, int]:
    draw, tally = Random(SEED), Tally()
    judges = [Judge(path, expects) for path in draw.sample(GROUPS[group], DESIGNS)]
    for kind in CLASSES:
        made = [(judge, mistake) for judge in judges for mistake in judge.mistakes(kind)]
        for judge, mistake in draw.sample(made, min(MISTAKES, len(made))):
            tally.take(judge.judge(kind, mistake))
    return tally.counts
