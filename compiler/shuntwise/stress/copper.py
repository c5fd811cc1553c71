"""Copper, and the coil that needs the least of it.

Facts of nature and of one shape, for whoever weighs a coil or asks how little resistance it can have. It refuses to
judge any.
"""

from __future__ import annotations

from shuntwise.model.conductors import RESISTIVITY_OHM_M

COPPER_OHM_M = RESISTIVITY_OHM_M["copper"]

COPPER_KG_PER_M3 = 8960.0

BROOKS_H_PER_M = 1.6994e-6
"""Of a coil with a square section of side c about a core of radius c, which gives most inductance for a length of
wire: L = 1.6994e-6 H/m a N^2 for the mean radius a = 1.5 c and N turns (H. B. Brooks, Design of standards of
inductance, Bureau of Standards J. Research 7, 289, 1931)."""
