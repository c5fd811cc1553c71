"""`shuntwise completion`: the completion script for a shell."""

from __future__ import annotations

import argparse

import shtab

from shuntwise.cli.main import CLEAN, parser


def run(options: argparse.Namespace) -> int:
    print(shtab.complete(parser(), shell=options.shell))
    return CLEAN
