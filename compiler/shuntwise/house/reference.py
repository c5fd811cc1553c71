"""The registry -> grammar/FINDINGS.md, the reference of all findings.

`python -m shuntwise.house.reference` writes the file; with `--check` it only says whether it is fresh.
"""

from __future__ import annotations

import sys
from pathlib import Path

from shuntwise.checks.page import page_of, render_markdown
from shuntwise.checks.registry import FAMILIES
from shuntwise.house.fresh import write_or_check

FINDINGS = Path(__file__).parents[3] / "grammar" / "FINDINGS.md"

_FAMILIES = {
    "language": "Language: what the text says",
    "wiring": "Wiring: what is joined to what",
    "drivers": "Drivers: what is known of them",
    "intent": "Intent: what the circuit is for",
    "values": "Values: what the parts amount to",
    "ratings": "Ratings: what the parts bear",
    "load": "Load: what the amplifier sees",
    "board": "Board: whether copper, wires and leads make the circuit",
    "box": "Box: what the file of one box says",
    "documents": "Documents: what the build needs",
}

_HEAD = """# Findings

What `shuntwise check` may have to say, one section for each finding. The text is made from the rules
themselves, by `python -m shuntwise.house.reference`; `shuntwise explain NAME` prints the same. In a `Bad`
example the line of `^` marks the place that the finding points at.
"""


def reference() -> str:
    """The whole reference as Markdown."""
    parts = [_HEAD]
    for family, modules in FAMILIES.items():
        names = [module.RULE.name for module in modules]
        parts.append(f"- **{_FAMILIES[family]}**: " + ", ".join(f"[{name}](#{name})" for name in names) + "\n")
    for family, modules in FAMILIES.items():
        parts.append(f"## {_FAMILIES[family]}\n")
        parts += [render_markdown(page_of(module.RULE.name), module.RULE) for module in modules]
    return "\n".join(parts)


if __name__ == "__main__":
    raise SystemExit(write_or_check(sys.argv[1:], "shuntwise.house.reference", FINDINGS, reference))
