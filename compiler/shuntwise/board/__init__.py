"""What a board's copper joins.

`plane` knows convex shapes, `copper` what a layout has of it, `touching` which pieces are one, `islands` tells holes
and tags by them. Refuses to know the circuit's nets.
"""
