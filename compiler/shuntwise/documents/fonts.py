"""The font that all sheets are set in, read once: what measures texts and what a PDF takes its letters from are one.

In: bold or not. Out: the font as reportlab reads it. It is the one that the plotting library ships, so that plots, PDF
and pages look alike; it is looked up without loading that library. Refuses to know a text.
"""

from __future__ import annotations

import sys
from functools import cache
from importlib.util import find_spec
from pathlib import Path
from types import ModuleType
from typing import Any

NAMES = {False: "Regular", True: "Bold"}

_SETTINGS_OF_OTHERS = ("reportlab_mods", "reportlab_settings")
"""Modules that the library would import from anywhere on Python's path, or from the home folder."""


@cache
def font(*, bold: bool = False) -> Any:
    """The font: `face.charWidths` are by character the advances in thousandths of the size.

    Raises FileNotFoundError where the plotting library has moved it.
    """
    load_reportlab()
    from reportlab.pdfbase.ttfonts import TTFont

    return TTFont(NAMES[bold], str(_font_file("DejaVuSans-Bold.ttf" if bold else "DejaVuSans.ttf")))


@cache
def load_reportlab() -> None:
    """Import reportlab without any settings but its own."""
    before = {name: sys.modules.get(name) for name in _SETTINGS_OF_OTHERS}
    sys.modules.update({name: ModuleType(name) for name in _SETTINGS_OF_OTHERS})
    try:
        from reportlab import rl_config
        from reportlab.pdfbase import ttfonts  # noqa: F401
    finally:
        for name, module in before.items():
            del sys.modules[name]
            if module is not None:
                sys.modules[name] = module
    rl_config.useA85 = 0


def _font_file(name: str) -> Path:
    spec = find_spec("matplotlib")
    folders = spec.submodule_search_locations if spec is not None else None
    for folder in folders or ():
        path = Path(folder, "mpl-data", "fonts", "ttf", name)
        if path.is_file():
            return path
    raise FileNotFoundError(name)
