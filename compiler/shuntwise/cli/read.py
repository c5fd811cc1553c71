"""`shuntwise read`: the circuit in plain words, leg by leg."""

from __future__ import annotations

import argparse
import sys

from shuntwise.cli.main import CLEAN, FINDINGS
from shuntwise.cli.reading import compile_file, show


def run(options: argparse.Namespace) -> int:
    from shuntwise.documents.read_aloud import read_aloud

    compilation = compile_file(options)
    sys.stdout.write(read_aloud(compilation.circuit, compilation.design.network_of))
    show(compilation.findings)
    return FINDINGS if compilation.failed else CLEAN
