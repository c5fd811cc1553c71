"""No module of the house imports itself by way of others, and no rule knows another rule."""

from __future__ import annotations

import ast
from pathlib import Path

import networkx as nx
import pytest

import shuntwise
from shuntwise.checks.registry import FAMILIES, MODULES

ROOT = Path(shuntwise.__file__).parent


def name_of(path: Path) -> str:
    parts = path.relative_to(ROOT.parent).with_suffix("").parts
    return ".".join(parts[:-1] if parts[-1] == "__init__" else parts)


MODULE_NAMES = {name_of(path): path for path in ROOT.rglob("*.py")}


def imported(path: Path) -> set[str]:
    """Every module of the house that a module imports, at any place: at its top, when called, for its types only."""
    found: set[str] = set()
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Import):
            found |= {alias.name for alias in node.names}
        elif isinstance(node, ast.ImportFrom) and node.module:
            inner = {f"{node.module}.{alias.name}" for alias in node.names}
            found |= {name if name in MODULE_NAMES else node.module for name in inner}
    return found & MODULE_NAMES.keys()


@pytest.fixture(scope="module")
def graph() -> nx.DiGraph:
    return nx.DiGraph((name, other) for name, path in MODULE_NAMES.items() for other in imported(path))


def test_no_circle(graph: nx.DiGraph) -> None:
    assert graph.number_of_edges() > 1000
    circles = [sorted(group) for group in nx.strongly_connected_components(graph) if len(group) > 1]
    assert circles == []
    assert list(nx.selfloop_edges(graph)) == []


def test_rules_are_strangers_to_one_another(graph: nx.DiGraph) -> None:
    rules = {module.__name__ for module in MODULES}
    assert len(rules) == len(MODULES) > 130
    assert [(a, b) for a, b in graph.edges if a in rules and b in rules] == []
    folders = {f"shuntwise.checks.{family}" for family in FAMILIES}
    into = [(a, b) for a, b in graph.edges if b in rules and a.rpartition(".")[0] in folders]
    assert into == []
