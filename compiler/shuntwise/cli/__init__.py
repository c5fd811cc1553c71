"""The command line: files, flags, colour and exit codes. The only code that reads or writes anything."""

from shuntwise.cli.main import main

__all__ = ["main"]
