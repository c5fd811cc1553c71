"""A few boards of two designs, always the same: a test has them judged and compares what comes of it with what did."""

from __future__ import annotations

from typing import Any

from faultfinding.scoring import Amount
from faultfinding.targets import judged, targets

DESIGNS = ("ropewalk", "night-train")
AMOUNT = Amount(boards=1, most=1, class_boards=8)
SEED = 2026


def sample(stand_in: bool = False) -> dict[str, dict[str, Any]]:
    """Counts by design."""
    return {target.name: judged(target, AMOUNT, SEED, stand_in, lambda _: None).plain() for target in targets(DESIGNS)}
