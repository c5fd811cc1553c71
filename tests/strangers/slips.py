"""The slips of slips.toml, read, and made in the designs that stand beside it."""

from __future__ import annotations

import tomllib
from dataclasses import dataclass
from pathlib import Path

HERE = Path(__file__).parent
DESIGNS = sorted(HERE.glob("*.shunt"))


@dataclass(frozen=True)
class MadeSlip:
    """One slip: `was` became `typed`. The first message should name `part` and stand on the line that `line` is in."""

    design: str
    kind: str
    was: str
    typed: str
    part: str
    line: str
    why: str

    @property
    def path(self) -> Path:
        return HERE / f"{self.design}.shunt"

    @property
    def sound(self) -> str:
        return self.path.read_text(encoding="utf-8")

    @property
    def harmed(self) -> str:
        return self.sound.replace(self.was, self.typed)

    @property
    def line_number(self) -> int:
        """Of the place where the first message should stand, in the harmed text; the first line is 1."""
        return self.harmed[: self.harmed.index(self.line) + len(self.line.split("\n", 1)[0])].count("\n") + 1


def read_slips() -> tuple[MadeSlip, ...]:
    with (HERE / "slips.toml").open("rb") as file:
        return tuple(MadeSlip(**slip) for slip in tomllib.load(file)["slip"])
