"""The table of what the checks catch: TABLE.md is written from counts.json, and both by `run.py --write`."""

from __future__ import annotations

from pathlib import Path

from mistakes.tally import Tallies, Tally, total

TABLE = Path(__file__).parent / "TABLE.md"
COUNTS = Path(__file__).parent / "counts.json"
COMMAND = "python tests/mistakes/run.py --write"
HEAD = f"""\
# What the checks catch

Written by `{COMMAND}`; what is counted and what flatters it stands in DEVELOPERS.md. Each class has three numbers:
mistakes on which `check` makes a new error or warning, those on which it gives new advice only, and those of which it
says nothing. Harmless ones are not counted. The last column is messages a mistake, each one counted that `check` would
fold under a cause; how many lines are left then is told for the strangers' slips by `python tests/strangers/run.py`.
"""
_COLUMNS = """\
| mistake | error or warning | advice only | nothing | error or warning | any finding | messages |
|---|---|---|---|---|---|---|"""


def markdown(counts: dict[str, dict[str, dict[str, int]]]) -> str:
    """The page, of counts by title and class."""
    return HEAD + "".join(
        f"\n## {title}\n\n{section({kind: Tally(**row) for kind, row in rows.items()})}\n"
        for title, rows in counts.items()
    )


def section(tallies: Tallies) -> str:
    """One table: a row a class, all together, and the mean of the classes, each weighing the same."""
    rows = [_row(kind, tally) for kind, tally in tallies.items()]
    return "\n".join([_COLUMNS, *rows, _row("**all**", total(tallies.values())), _mean(tallies)])


def _row(name: str, tally: Tally) -> str:
    cells = _cells(_shares(tally)) if tally.counted else "- | - | -"
    return f"| {name} | {tally.told} | {tally.advised} | {tally.silent} | {cells} |"


def _mean(tallies: Tallies) -> str:
    shares = [_shares(tally) for tally in tallies.values() if tally.counted]
    means = [sum(column) / len(shares) for column in zip(*shares, strict=True)]
    return f"| **mean of the classes** | | | | {_cells(means)} |"


def _shares(tally: Tally) -> list[float]:
    """The share told, the share told or advised, and messages a mistake. ZeroDivisionError where there is none."""
    many = tally.counted
    return [tally.told / many, (tally.told + tally.advised) / many, tally.messages / many]


def _cells(shares: list[float]) -> str:
    told, noticed, messages = shares
    return f"{told:.1%} | {noticed:.1%} | {messages:.2f}".replace("%", " %")
