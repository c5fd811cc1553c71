"""What a board's copper joins.

`plane` knows convex shapes, `copper` what a layout has of it, `touching` which pieces are one, `islands` tells holes
and tags by them; `cutting` and `drilling` say where an island may be cut or have one more hole, `mirror` whether a
board can be told from its mirror image. Refuses to know the circuit's nets.
"""
