"""The parts list: equal parts together, counts and sums by hand, and a CSV in which nothing is a formula."""

from __future__ import annotations

import csv
import io

from documents.binders import hostile
from documents.designs import one
from shuntwise.documents.page import Table
from shuntwise.documents.parts_list import as_csv, pages, parts_list

BOX = """\
driver woofer 8 ohm
capacitor C1 10 uF { 5 %, 250 V, film, price 4.20 }
capacitor C2 10 uF { 5 %, 250 V, film, price 4.20, mass 20 g, note "from the old box" }
capacitor C3 10 uF { 5 %, 400 V, film, price 6 }
capacitor C4 10 uF { 5 %, 250 V, film, price 4.25 }
capacitor C5 4.75 uF { 5 %, 250 V, film }
resistor R1 3.3 ohm
resistor R2 3.3 ohm
coil L1 1 mH { dcr 0.3 ohm, wire 1.2 mm, price 10 }
link K1 { length 40 cm, wire 1.5 mm }
link K2 { length 60 cm, wire 1.5 mm }
leg woofer {
  input+ -- L1 -- (R1 | R2) -- K1 -- woofer+
  woofer+ -- (C1 | C2 | C3 | C4 | C5) -- woofer-
  woofer- -- K2 -- return
}
omit R2
choice level {
  position full { fit K1 }
  position low { fit K2 }
}
"""


def test_equal_parts_stand_together_and_others_apart() -> None:
    """By value, rating, price and length of a link; not by mass or notes. R2 is left out; K2 has its place."""
    lines = {line.labels: line for line in parts_list(one(BOX).design)}
    assert [*lines] == [("L1",), ("C5",), ("C1", "C2"), ("C3",), ("C4",), ("R1",), ("K1",), ("K2",)]
    assert lines[("C5",)].value == "4.75 uF" and lines[("C1", "C2")].ratings == "250 V"
    assert lines[("L1",)].more == "dcr 0.3 ohm, wire 1.2 mm" and lines[("C3",)].what == "film capacitor"


def test_counts_and_sums_by_hand() -> None:
    """Three boards: 2 x 4.20 + 6 + 4.25 + 10 = 28.65, three times 85.95."""
    (table, without), left_out, notes = pages(one(BOX).design, 3)
    assert isinstance(table, Table) and table.heads[:3] == ("Parts", "a board", "3 boards")
    rows = {row[0]: row for row in table.rows}
    assert rows["C1, C2"][1:3] == ("2", "6") and rows["C1, C2"][-2:] == ("4.20", "25.20")
    assert rows["Together"][1:3] == ("9", "27") and rows["Together"][-1] == "85.95"
    assert "C5, R1, K1 and K2" in without.text
    assert left_out[1].entries == ("R2: a 3.3 ohm resistor, not fitted",)
    assert notes[1].entries == ("C2: from the old box",)


def test_no_price_no_column() -> None:
    ((table,), *_) = pages(one("driver woofer 8 ohm\nresistor R1 2 ohm\nleg woofer {\n  input+ -- R1 -- woofer+\n"
                               "  woofer- -- return\n}\n").design)  # fmt: skip
    assert table.heads[-1] == "more" and table.rows[-1][0] == "Together"


def test_csv_says_the_same_and_no_cell_is_a_formula() -> None:
    records = list(csv.DictReader(io.StringIO(as_csv(hostile(12, "2026-11-30").design, 12))))
    assert (
        records[0]["parts"] == "L1, L2" and records[0]["together"] == "24" and records[0]["price together"] == "84.00"
    )
    assert records[0]["notes"] == "'=1+1; @SUM(A1)<img src=x onerror=y>"
    assert all(not value.startswith(("=", "+", "-", "@", "\t", "\r")) for row in records for value in row.values())
    assert as_csv(one("driver woofer 8 ohm\n").design).count("\r\n") == 1
