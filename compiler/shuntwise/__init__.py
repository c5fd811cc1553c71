"""Shuntwise: a compiler for hand-built passive loudspeaker crossovers."""

__version__ = "0.1.0"
