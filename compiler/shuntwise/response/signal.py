"""What an amplifier gives, and what a network bears of it: volts, amperes and watts from phasors at 1 V.

In: an amplifier's rating and programme, curves over frequency for 1 V. Out: a `Signal`, which reads them. It refuses to
know what any part is rated for.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np

from shuntwise.response.cases import greatest
from shuntwise.response.programme import STEADY, power_shares
from shuntwise.response.tape import Real


@dataclass(frozen=True, eq=False)
class Signal:
    """What the amplifier gives: a sine of `sine_v`, or a programme of `programme_v` (V r.m.s.).

    The programme's peaks are `crest` times its r.m.s. value. `shares` are its power by frequency (Hz), (F,) each; None
    is a steady sine at the worst frequency.
    """

    programme_name: str
    sine_v: float
    programme_v: float
    crest: float
    freq_hz: Real
    shares: Real | None

    @property
    def peak_v(self) -> float:
        """The greatest voltage that the amplifier ever gives."""
        return float(self.sine_v * np.sqrt(2))

    def at(self, freq_hz: Real) -> Signal:
        """The same signal for another sweep."""
        shares = None if self.shares is None else power_shares(self.programme_name, freq_hz)
        return replace(self, freq_hz=freq_hz, shares=shares)

    def sine(self, per_volt: Real) -> Real:
        """The greatest r.m.s. value over frequency with the full sine, (...); `per_volt` (..., F), for 1 V."""
        return np.asarray(self.sine_v * greatest(per_volt, self.freq_hz))

    def programme(self, per_volt: Real) -> Real:
        """The r.m.s. value with the programme, (...); `per_volt` (..., F), for 1 V at each frequency."""
        if self.shares is None:
            return np.asarray(self.programme_v * greatest(per_volt, self.freq_hz))
        return np.asarray(self.programme_v * np.sqrt(per_volt**2 @ self.shares))

    def heat(self, per_square_volt: Real) -> Real:
        """The power with the programme (W), (...); `per_square_volt` (..., F) is the power for 1 V."""
        return np.asarray(self.programme(np.sqrt(per_square_volt)) ** 2)


def amplifier_signal(power_w: float, load_ohm: float, programme: str, crest: float, freq_hz: Real) -> Signal:
    """The signal of an amplifier of a rated power into a rated load.

    Its sine is U = sqrt(P R) r.m.s., its greatest instantaneous voltage sqrt(2) U. A programme driven until its
    peaks just reach that voltage has the r.m.s. value sqrt(2) U / crest. Crest factor 2 is that of the clipped
    programme signal of the IEC 60268 series (1.8 to 2.2: IEC 60268-7:2010, clause 8.3.2): the amplifier then
    gives half its rated power, all day. A steady sine has its own crest factor.
    """
    sine_v = float(np.sqrt(power_w * load_ohm))
    peak_v = float(np.sqrt(2) * sine_v)
    if programme == STEADY:
        return Signal(programme, sine_v, sine_v, float(np.sqrt(2)), freq_hz, None)
    return Signal(programme, sine_v, peak_v / crest, crest, freq_hz, power_shares(programme, freq_hz))
