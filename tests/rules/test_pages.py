"""Every finding has a page, and every page tells the truth: its examples are run."""

from __future__ import annotations

import ast
import importlib
import pkgutil
import re
from collections.abc import Iterator
from contextlib import suppress
from pathlib import Path

import pytest

import shuntwise
from rules.compiling import families_for, findings_of, findings_of_box
from shuntwise import checks
from shuntwise.checks.page import Example, Page, page_of, render, render_markdown
from shuntwise.checks.registry import FAMILIES, FAMILY_OF, MODULES, PAGES, RETIRED, RULES
from shuntwise.diagnostics.diagnostic import Diagnostic
from shuntwise.house.reference import FINDINGS, reference
from shuntwise.model import uses
from shuntwise.syntax import parser

SOURCES = Path(shuntwise.__file__).parent


def valid_pages() -> dict[str, Page]:
    """Those that have the shape of a page; of the others a test complains by name."""
    found = {}
    for name in PAGES:
        with suppress(ValueError):
            found[name] = page_of(name)
    return found


ALL_PAGES = valid_pages()


def rule_modules() -> set[str]:
    """Names of all modules below `checks` that hold a rule."""
    found = set()
    for info in pkgutil.walk_packages(checks.__path__, "shuntwise.checks."):
        if hasattr(importlib.import_module(info.name), "RULE"):
            found.add(info.name)
    return found


def test_every_rule_module_is_listed() -> None:
    assert rule_modules() == {module.__name__ for module in MODULES}


def test_names_are_unique_and_kebab_case_and_not_retired() -> None:
    names = [module.RULE.name for module in MODULES]
    assert len(set(names)) == len(names)
    assert all(re.fullmatch(r"[a-z]+(?:-[a-z]+)*", name) for name in names)
    assert not set(names) & set(RETIRED)


def test_names_say_the_bad_thing_after_allow() -> None:
    """`allow loose-node` reads well; `allow check-nodes` or `allow no-loose-nodes` would not."""
    verbs = {"check", "test", "require", "ensure", "forbid", "avoid", "prevent", "detect", "find"}
    for name in RULES:
        words = name.split("-")
        assert words[0] not in verbs, name
        assert len(name) <= 32, name


def test_a_module_bears_the_name_of_its_rule() -> None:
    exceptions = {"idle-allow": "idle_waivers"}
    for name, module in PAGES.items():
        assert module.__name__.rpartition(".")[2] == exceptions.get(name, name.replace("-", "_"))


def test_families_are_the_packages() -> None:
    for family, modules in FAMILIES.items():
        for module in modules:
            package = module.__name__.split(".")[-2]
            assert package in (family, "checks"), module.__name__


@pytest.mark.parametrize("name", PAGES)
def test_page_has_its_headings_in_order_and_prints(name: str) -> None:
    page = page_of(name)
    assert page.bad and page.good and all(example.marked for example in page.bad)
    assert not any(example.marked for example in page.good)
    text, markdown = render(page, RULES[name]), render_markdown(page, RULES[name])
    for said in (page.title, page.finds, page.why, page.ignore):
        assert said in " ".join(text.split()) and said in markdown


def examples(kind: str) -> list[tuple[str, int]]:
    return [(name, number) for name, page in ALL_PAGES.items() for number in range(len(getattr(page, kind)))]


def told_of(name: str, example: Example) -> tuple[Diagnostic, ...]:
    if FAMILY_OF[name] == "box":
        return findings_of_box(example.source, example.files)
    return findings_of(example.source, families_for(FAMILY_OF[name]), example.files)


@pytest.mark.parametrize(("name", "number"), examples("bad"))
def test_bad_example_gives_this_finding_alone(name: str, number: int, monkeypatch: pytest.MonkeyPatch) -> None:
    """Exactly this finding, at exactly the marked place, and none besides but what follows from it."""
    # Two bounds are brought down, as the pages say: true examples would fill a book.
    if name == "too-many-parts":
        monkeypatch.setattr(uses, "MOST_PARTS", 4)
    if name == "nested-too-deep":
        monkeypatch.setattr(parser, "DEEPEST_BRACES", 1)
    page: Page = ALL_PAGES[name]
    example: Example = page.bad[number]
    found = [f for f in told_of(name, example) if f.cause != name]
    assert example.marked is not None
    assert [(f.name, f.span.source.name, f.span.start, f.span.text) for f in found] == [
        (name, example.marked.source.name, example.marked.start, example.marked.text)
    ]


@pytest.mark.parametrize(("name", "number"), examples("good"))
def test_good_example_gives_nothing(name: str, number: int) -> None:
    example = ALL_PAGES[name].good[number]
    found = told_of(name, example)
    assert [(f.name, f.headline) for f in found] == []


def test_reference_is_fresh() -> None:
    """Run `python -m shuntwise.house.reference` after a change of a page."""
    assert FINDINGS.read_text(encoding="utf-8") == reference()


# --- names that the sources emit


def emitted() -> set[tuple[str, str]]:
    """Finding names written in the sources of the passes, with the severity they are made with.

    A finding is made by a call of `Diagnostic`, `error` or `finding`; its name is the first argument or `name`.
    """
    found = {("syntax-error", "error")}
    for folder in ("syntax", "model", "graph", "network"):
        for file in sorted((SOURCES / folder).glob("*.py")):
            for call in ast.walk(ast.parse(file.read_text(encoding="utf-8"))):
                if isinstance(call, ast.Call):
                    found.update(_name_and_severity(call))
    return found


def _name_and_severity(call: ast.Call) -> Iterator[tuple[str, str]]:
    maker = call.func.attr if isinstance(call.func, ast.Attribute) else getattr(call.func, "id", "")
    if maker not in ("Diagnostic", "error", "finding"):
        return
    severity = "error"
    for node in ast.walk(call):
        if isinstance(node, ast.Attribute) and isinstance(node.value, ast.Name) and node.value.id == "Severity":
            severity = node.attr.lower()
    for value in (*call.args[:1], *(keyword.value for keyword in call.keywords if keyword.arg == "name")):
        if isinstance(value, ast.Constant) and isinstance(value.value, str):
            yield value.value, severity


def test_every_emitted_finding_is_registered_with_its_severity() -> None:
    assert {(name, RULES[name].severity.value if name in RULES else "none") for name, _ in emitted()} == emitted()


def test_every_rule_without_a_check_is_emitted_by_a_pass() -> None:
    """No page describes a finding that nothing makes."""
    without = {name for name, rule in RULES.items() if rule.check is None}
    assert without - {"idle-allow"} == {name for name, _ in emitted()} - {n for n, r in RULES.items() if r.check}
