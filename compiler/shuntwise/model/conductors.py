"""What the conductors of cables and coils are made of: a fact of nature for every layer above, and nothing else."""

RESISTIVITY_OHM_M = {"copper": 1.7241e-8, "copper-clad aluminium": 2.74e-8}
"""At 20 C: annealed copper, IEC 60028:1925, second-hand; copper-clad aluminium of 10 % copper by volume, which has 63 %
of the conductivity of copper (ASTM B566, from memory).
"""
