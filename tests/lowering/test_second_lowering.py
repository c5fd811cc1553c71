"""The product against a second lowering, written from the language reference alone.

The netlist and the solver start from the same network, so that comparing them cannot show a fault in the lowering.
The second one is modified nodal analysis (C. W. Ho, A. E. Ruehli, P. A. Brennan, IEEE Trans. Circuits Syst. 22(6),
1975) with the drivers' laws as the reference states them. `python tests/lowering/run.py` runs it on 2,000 texts.
"""

from __future__ import annotations

from pathlib import Path

import pytest

from lowering.comparing import BOUND, compare
from lowering.run import examples, outcome_of
from lowering.texts import make

TEXTS = 96


@pytest.mark.parametrize(("path", "variant"), examples(), ids=lambda value: getattr(value, "stem", str(value)))
def test_every_example_and_variant(path: Path, variant: str | None) -> None:
    outcome = compare(path, variant)
    assert (outcome.refused, outcome.wrong) == ("", []) and outcome.deviation <= BOUND


@pytest.mark.parametrize("part", range(8))
def test_random_texts(part: int) -> None:
    refused = 0
    for seed in range(part * TEXTS // 8, (part + 1) * TEXTS // 8):
        outcome = outcome_of(make(seed))
        assert outcome.wrong == [], f"seed {seed}"
        refused += bool(outcome.refused)
    assert refused <= TEXTS // 8 // 2, "most of the texts must be solved"


def test_a_disagreement_is_seen(monkeypatch: pytest.MonkeyPatch) -> None:
    """Another coupling of tapped coils in the product than the reference states."""
    from shuntwise.network import part_model

    monkeypatch.setattr(part_model, "TIGHT", 0.97)
    assert any(outcome_of(make(seed)).wrong for seed in range(60))
