"""`shuntwise watch`: show a design while it is written, anew after every save."""

from __future__ import annotations

import argparse
import os
import sys
from contextlib import suppress
from pathlib import Path
from typing import TYPE_CHECKING

from shuntwise.cli.main import CLEAN, Refused
from shuntwise.cli.output import put_folder
from shuntwise.cli.reading import require_variant
from shuntwise.diagnostics.terminal import visible
from shuntwise.documents.page import Printing
from shuntwise.loading import Unreadable
from shuntwise.workspace import Workspace

if TYPE_CHECKING:
    from shuntwise.preview.view import View


def run(options: argparse.Namespace) -> int:
    """Until it is ended by Ctrl-C. Without a screen to open a page on, the pictures are written into a folder."""
    with suppress(KeyboardInterrupt):
        _run(options)
    return CLEAN


def _run(options: argparse.Namespace) -> None:
    from shuntwise.preview.view import follow

    try:
        work = Workspace(options.file, causes=False)
    except Unreadable as error:
        raise Refused(str(error), error.help) from None
    require_variant(work, options.variant)
    printing = Printing(ratings=options.ratings)
    if options.output or not (options.no_browser or _has_screen()):
        folder = Path(options.output or f"{Path(options.file).stem}-watch")
        print(
            visible(f"pictures of {options.file} are written into {folder} after each save; Ctrl-C ends it"), flush=True
        )
        follow(work, options.variant, _Writer(folder).show, printing)
    from shuntwise.preview.server import Preview

    try:
        preview = Preview()
    except OSError as error:
        raise Refused(f"no page can be served: {(error.strerror or str(error)).lower()}", "use -o FOLDER") from None
    print(visible(f"{options.file} is shown at {preview.address}; Ctrl-C ends it"), flush=True)
    if not options.no_browser:
        import webbrowser

        webbrowser.open(preview.address)
    try:
        follow(work, options.variant, preview.show, printing)
    finally:
        preview.close()


def _has_screen() -> bool:
    return sys.platform in ("darwin", "win32") or any(os.environ.get(name) for name in ("DISPLAY", "WAYLAND_DISPLAY"))


class _Writer:
    """Lays the pictures of each view into a folder."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder

    def show(self, view: View) -> None:
        files = {name: content for name, content in view.pictures.items() if name not in view.old}
        put_folder({**files, "findings.txt": view.findings.encode()}, self.folder)
