"""How long the sheets of the showcase take, warm, and a save in a preview, beside one solution of its table."""

from __future__ import annotations

import shutil
import tempfile
import time
from collections.abc import Callable
from pathlib import Path
from statistics import median
from typing import Any

from shuntwise.documents.catalogue import DOCUMENTS
from shuntwise.documents.schematic.draw import schematic_sheets
from shuntwise.preview.view import View, views
from shuntwise.workspace import Workspace

SHOWCASE = Path(__file__).parents[2] / "examples" / "13-harbour-stage.shunt"
GOALS_S = {"schematic": 0.020, "pdf": 0.5, "save to schematic": 0.3, "save to plots": 1.0}
"""What was promised, on a quiet machine."""


def measure(times: int = 9) -> dict[str, Any]:
    """Medians in seconds. A save is read, compiled and drawn as a preview does it, without the 50 ms of looking."""
    work = Workspace(str(SHOWCASE))
    material = work.material()
    documents = {document.name: document for document in DOCUMENTS}
    documents["*.pdf"].content(material)  # libraries, fonts, what is solved
    found = {
        "solution": _median(lambda: material.solver.solve(material.response.freq_hz), times),
        "schematic": _median(lambda: schematic_sheets(material.circuit), times),
        "pdf": _median(lambda: documents["*.pdf"].content(material), times),
    }
    quick, whole = _saves(times)
    return {**found, "save to schematic": quick, "save to plots": whole}


def _median(run: Callable[[], object], times: int) -> float:
    spent = []
    for _ in range(times):
        start = time.perf_counter()
        run()
        spent.append(time.perf_counter() - start)
    return median(spent)


def _saves(times: int) -> tuple[float, float]:
    with tempfile.TemporaryDirectory() as folder:
        file = Path(folder, SHOWCASE.name)
        shutil.copy(SHOWCASE, file)
        text = file.read_text(encoding="utf-8")
        work, view = Workspace(str(file), causes=False), View()
        quick, whole = [], []
        for turn in range(times):
            file.write_text(f"{text}\n# {turn}\n", encoding="utf-8")
            start = time.perf_counter()
            for number, shown in enumerate(views(work, view)):
                view = shown
                (quick, whole)[number].append(time.perf_counter() - start)
        return median(quick), median(whole)


def words(figures: dict[str, Any]) -> str:
    lines = ["sheets of the showcase, warm (beside one solution of its table)"]
    for name, seconds in figures.items():
        goal = f", asked {1000 * GOALS_S[name]:.0f} ms" if name in GOALS_S else ""
        lines.append(f"  {name:<18} {1000 * seconds:7.1f} ms  {seconds / figures['solution']:6.1f} times{goal}")
    return "\n".join(lines) + "\n"
