"""Run a text through all passes with the rules of some families only."""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import replace
from pathlib import Path

import shuntwise
from shuntwise.board.judging import judged
from shuntwise.boxes import BoxRead, DesignRead, Near, read_text
from shuntwise.checks.evidence import Evidence
from shuntwise.checks.folding import with_cause
from shuntwise.checks.idle_waivers import idle_waivers
from shuntwise.checks.registry import CATALOGUE, CAUSES, FAMILIES
from shuntwise.checks.run import run
from shuntwise.diagnostics.diagnostic import Diagnostic
from shuntwise.graph.connect import connect
from shuntwise.model.include import Loaded, Loader, NotLoaded
from shuntwise.model.resolve import resolve
from shuntwise.model.variants import to_check
from shuntwise.network.lower import lower
from shuntwise.pipeline import in_order, read
from shuntwise.source import Source

OWN_NAME = "box.shunt"
"""By this name an example can include itself."""

LIBRARY = Path(shuntwise.__file__).parent / "library"


def loader(own: Source, beside: Collection[Source]) -> Loader:
    """The shipped library, the example itself, and the files beside it."""
    files = {source.name: source for source in beside} | {OWN_NAME: own}

    def load(path: str, source: Source, library: bool) -> Loaded | NotLoaded:
        if not library and path in files:
            return Loaded(files[path], path)
        file = LIBRARY / f"{path}.shunt"
        if library and file.is_file():
            return Loaded(Source(f"library/{path}.shunt", file.read_text(encoding="utf-8")), f"library:{path}")
        return NotLoaded("there is no such file", "check the path")

    return load


def findings_of(source: Source, families: Collection[str], beside: Collection[Source] = ()) -> tuple[Diagnostic, ...]:
    """All findings of a design and its variants, each once, by the passes and the rules of these families."""
    collected, said = read(source, loader(source, beside), OWN_NAME)
    rules = [module.RULE for family, modules in FAMILIES.items() if family in families for module in modules]
    found = list(said)
    for variant in (None, *to_check(resolve(collected)[0])):
        design, resolved = resolve(collected, variant=variant, catalogue=CATALOGUE)
        circuit, connected = connect(design)
        evidence = Evidence(design, circuit, lower(circuit), boards=judged(circuit))
        checked = with_cause(rules, CAUSES, evidence, run(rules, evidence))
        ran = {rule.name for rule in rules}
        asked = replace(design, waivers=tuple(waiver for waiver in design.waivers if waiver.finding in ran))
        found += [*resolved, *connected, *checked.findings, *idle_waivers(asked, checked)]
    return in_order(found)


def findings_of_box(source: Source, beside: Collection[Source] = ()) -> tuple[Diagnostic, ...]:
    """All findings of a box's own file; the first design beside it is the one that is asked for."""
    files = {one.name: one for one in beside} | {source.name: source}
    asked = next((one.name for one in beside if one.name.endswith(".shunt")), None)

    def design(path: str) -> DesignRead | NotLoaded:
        found = table(path)
        if isinstance(found, NotLoaded):
            return found
        return DesignRead(*read(found.source, loader(found.source, beside)), path, path)

    def table(path: str) -> Loaded | NotLoaded:
        return Loaded(files[path], path) if path in files else NotLoaded("there is no such file", "check the path")

    def sister(path: str) -> BoxRead | NotLoaded:
        found = table(path)
        return found if isinstance(found, NotLoaded) else read_text(found.source, near, with_sister=False)

    near = Near(design, table, sister)
    return read_text(source, near, of=asked).findings


def families_for(family: str) -> tuple[str, ...]:
    """The families that examples of one family are run with.

    Examples of the language and of wiring are kept so small that other families would ask for more, and those of
    intent and values that the ratings would.
    """
    small = ("language", "wiring", "drivers")
    shaped = (*small, "intent", "values")
    if family == "board":
        return (*small, family)
    return small if family in small else shaped if family in shaped else tuple(FAMILIES)
