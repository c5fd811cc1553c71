"""What may be wrong with a soldered board: one row a fault, as plain values.

In: nothing. Out: `Fault`. Refuses to know what a fault does to a reading.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

Family = Literal[
    "open", "short", "value", "drift", "dried", "turns", "core", "exchanged", "doubled", "moved", "joint", "bridge",
    "jumper", "cut", "link", "reversed", "outputs", "driver", "dummies", "series", "source", "meter",
    "scatter",
]  # fmt: skip


@dataclass(frozen=True)
class Fault:
    """One fault. `size` is the range in which its size lies, evenly in the logarithm; (1, 1) where it has none.

    What the fields mean, by family:

    | family | owners | points | to | size |
    |---|---|---|---|---|
    | open | the part, driver or input | its lead that is off; () for a part of two terminals | | |
    | short | the part | the two terminals that are joined | | |
    | value | the part | () | | of its value; resistance of a coil with the root of it, of a capacitor inverse |
    | drift | the part | () | | as for value, a little outside its tolerance |
    | dried | an electrolytic capacitor | () | | of its capacitance; its series resistance is 20 times as much |
    | turns | a coil | () | | share k of L that a shorted turn takes: L (1 - k s/(s + w)), w/2 pi about 200 Hz |
    | core | a cored coil | () | | of its inductance |
    | exchanged | two parts of one kind | () | | |
    | doubled | the part, two side by side | () | | |
    | moved | the part, driver or input | its lead | a point of the net on which it lies | |
    | joint | the part, driver or input | its lead | | ohm in series with it |
    | bridge | () | a point of each of the two nets | | |
    | jumper | the wire's name on the board | the terminals that come apart from the rest of their net | | |
    | cut | the cut's name on the board | a point of each of the two nets that stay joined | | |
    | link | the link, fitted where it is to be left out, or the reverse | its two ends | | |
    | reversed | the driver | its two wires are exchanged | | |
    | outputs | two drivers, whose wires are exchanged | () | | |
    | driver | the driver, of another size | () | | of its impedance |
    | dummies | () | () | | of the stated ohm of all dummies |
    | series | () | () | | of the stated ohm of the series resistor |
    | source | () | () | | of the stated volts |
    | meter | () | () | | what it reads of the truth at its highest frequency; the error goes with the square |
    | scatter | () | () | | how much further than their tolerances the parts are from their values |

    A driver's points are its tags: its wires lie between these and its nets. The last six are the set-up's, or what the
    design says of its parts: no faults of the board.
    """

    family: Family
    owners: tuple[str, ...] = ()
    points: tuple[str, ...] = ()
    to: str = ""
    size: tuple[float, float] = (1.0, 1.0)

    @property
    def of_setup(self) -> bool:
        """Is it the set-up's, and not the board's?"""
        return self.family in ("driver", "dummies", "series", "source", "meter", "scatter")
