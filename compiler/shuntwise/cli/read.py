"""`shuntwise read`: the circuit in plain words, leg by leg."""

from __future__ import annotations

import argparse
import sys

from shuntwise.cli.reading import open_design, show, status


def run(options: argparse.Namespace) -> int:
    from shuntwise.documents.catalogue import render

    work = open_design(options)
    compilation = work.compilation(options.variant, options.settings)
    sys.stdout.write(render("read-back.txt", work.material(None, options.variant, options.settings)))
    show(compilation.findings)
    return status(compilation)
