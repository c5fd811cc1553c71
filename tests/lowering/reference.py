"""A second opinion on what a text means: text to circuit to voltages, from grammar/LANGUAGE.md alone.

The netlist and the built-in solver start from one lowered network, so comparing them cannot show a fault in the
lowering. This lowering shares no line with the compiler: reading, meaning, laying, drivers, solving.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from pathlib import Path

from lowering.drivers import exact_law, two_coils
from lowering.laying import Circuit, Law, lay_out
from lowering.meaning import FlatDriver, Meaning, understand
from lowering.quantities import Senseless
from lowering.reading import Choice, Part, Unreadable, Variant, read
from lowering.solving import Solution, Unsolvable, solve

LIBRARY = Path(__file__).parents[2] / "compiler" / "shuntwise" / "library"
Files = Callable[[str], str]


def meaning_of(files: Files, main: str, variant: str | None = None, settings: Iterable[str] = ()) -> Meaning:
    return understand(files, lambda name: (LIBRARY / f"{name}.shunt").read_text("utf-8"), main, variant, settings)


def circuit_of(meaning: Meaning, files: Files, laws: Callable[[FlatDriver], Law] | None = None) -> Circuit:
    """The circuit, each driver by its exact law, or by what `laws` says."""
    return lay_out(meaning, laws or (lambda driver: exact_law(driver, files)), two_coils)


def variants_of(text: str) -> list[str]:
    """All that is checked beside the design itself, by name: variants, positions, ends of attenuators."""
    statements = read(text)
    moved = [f"{s.name}.{position}" for s in statements if isinstance(s, Choice) for position in s.positions]
    moved += [f"{s.name}.{end}" for s in statements for end in ("least", "most") if _is_attenuator(s)]
    variants = [statement.name for statement in statements if isinstance(statement, Variant)]
    return [*moved, *(name for v in variants for name in (v, *(f"{v}+{one}" for one in moved)))]


def _is_attenuator(statement: object) -> bool:
    return isinstance(statement, Part) and statement.kind == "attenuator"


__all__ = [
    "Circuit",
    "FlatDriver",
    "Law",
    "Meaning",
    "Senseless",
    "Solution",
    "Unreadable",
    "Unsolvable",
    "circuit_of",
    "meaning_of",
    "solve",
    "variants_of",
]
