"""`shuntwise read`: the circuit in plain words, leg by leg."""

from __future__ import annotations

import argparse
import sys

from shuntwise.cli.output import as_json
from shuntwise.cli.reading import open_design, show, status


def run(options: argparse.Namespace) -> int:
    from shuntwise.documents.catalogue import render
    from shuntwise.documents.read_aloud import paragraphs

    work = open_design(options)
    compilation = work.compilation(options.variant, options.settings)
    material = work.material(None, options.variant, options.settings)
    if options.json:
        told = paragraphs(material.circuit, material.design.network_of, material.fits)
        print(as_json({"variant": options.variant, "paragraphs": told}))
    else:
        sys.stdout.write(render("read-back.txt", material))
    show(compilation.findings)
    return status(compilation)
