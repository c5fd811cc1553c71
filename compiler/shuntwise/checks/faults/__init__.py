"""Whose fault it is: every oddity of the circuit's graph given to exactly one rule.

One slip of the author shows in many ways: a driver with one lead also has no way back, and hangs like a
dead twig. The modules here find the slips in this order, and what an earlier one explains a later one
does not see:

1. lost or unknown text: its nets are in doubt, and nothing is said of what is missing there;
2. things that stand in no walk (`ends`);
3. open ends, where nothing else arrives (`ends`); two ends that one missing wire would join are one fault,
   and a missing walk is told of at what stands in no walk, not at all that it left open (`pairing`);
4. shorts: inputs, posts, drivers, then parts; what only an earlier short joins is not seen (`shorts`);
5. edges that carry no current for none of these reasons (`dead`).

`account` takes these steps. The rules in `checks.wiring` word what it found, one rule for each kind.
"""
