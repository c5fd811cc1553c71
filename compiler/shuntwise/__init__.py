"""Shuntwise: a compiler for hand-built passive loudspeaker crossovers."""

__version__ = "0.1.0"

LANGUAGE = 2
"""The version of the language that is read: grammar/CHANGES.md. It grows with each change that a design can see."""
