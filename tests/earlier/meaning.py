"""What a design says, without the places and words in which it says it.

    python tests/earlier/meaning.py FOLDER

writes `meaning.json` of all designs in a folder that holds the designs of one version of the language. It is written
once, when that version ends, and never again.
"""

from __future__ import annotations

import json
import sys
from collections.abc import Mapping
from dataclasses import fields, is_dataclass
from pathlib import Path
from typing import Any

if __name__ == "__main__":
    sys.path.insert(0, str(Path(__file__).parents[2] / "compiler"))

from shuntwise.loading import loader
from shuntwise.model.resolve import resolve
from shuntwise.model.variants import to_check
from shuntwise.pipeline import read
from shuntwise.source import Source, Span

WORDING = ("span", "spans", "source", "text", "meant", "doubtful")
"""The ends of the names of fields that hold places and words."""


def plain(value: Any) -> Any:
    """A value of the model in what JSON can hold; places and words are left out."""
    if is_dataclass(value) and not isinstance(value, type):
        kept = [entry.name for entry in fields(value) if not entry.name.endswith(WORDING)]
        return {name: plain(getattr(value, name)) for name in kept}
    if isinstance(value, Mapping):
        return {str(key): plain(inner) for key, inner in value.items() if not isinstance(inner, Span)}
    if isinstance(value, list | tuple | set | frozenset):
        return [plain(inner) for inner in value]
    if isinstance(value, complex):
        return [value.real, value.imag]
    return value


def meanings(path: Path) -> dict[str, Any]:
    """By variant, "" being the design itself."""
    source = Source(path.name, path.read_text(encoding="utf-8"))
    collected, _ = read(source, loader(path, path.name), str(path))
    designs = {name: resolve(collected, variant=name)[0] for name in (None, *to_check(resolve(collected)[0]))}
    return {name or "": plain(design) for name, design in designs.items()}


def main() -> None:
    folder = Path(sys.argv[1])
    found = {path.stem: meanings(path) for path in sorted(folder.rglob("*.shunt"))}
    (folder / "meaning.json").write_text(json.dumps(found, sort_keys=True) + "\n", encoding="utf-8")


if __name__ == "__main__":
    main()
