"""What the verdict says in words, on verdicts made by hand."""

from __future__ import annotations

from dataclasses import replace

import pytest

from shuntwise.bench.faults import Fault
from shuntwise.bench.verdict import Answer, Proposal, SheetLine, Suspected, Verdict
from shuntwise.documents.aligned import as_text
from shuntwise.documents.bench_verdict import NOT_TESTED, as_read, next_reading, share, told, with_readings
from shuntwise.model.box import OPEN, Reading, Taken

AT_T = SheetLine(Reading("resistance", "t+", "t-", "drivers off"), 2.8, 2.5, 3.2)
AT_W = SheetLine(Reading("volts", "w+", "w-", "dummies on", 2000.0, "input"), 0.669, 0.629, 0.709)
OPEN_L2 = Suspected(
    Fault("open", ("L2",)), "L2 is open", 0.873, ("R1 is open",), ("under L2",), "Lift one end", ("no treble",)
)
SHORT = Suspected(Fault("short", ("C2",)), "C2 is shorted", 0.1, size="2 ohm")


def text(verdict: Verdict) -> str:
    return " ".join(as_text(told(verdict)).split())


def test_passed_tells_what_was_not_tested_and_where_rates_come_from() -> None:
    said = text(Verdict("passed", 0.99))
    assert said.startswith("Passed") and "simulated boards" in said
    assert all(words in said for words in NOT_TESTED)


def test_good_so_far_is_no_pass() -> None:
    said = text(Verdict("good so far", 0.9, missing=(AT_T, AT_W)))
    assert "not passed" in said and "2 readings are missing, first: resistance at t, drivers off." in said


def test_suspects_have_all_that_is_known_of_them() -> None:
    said = text(Verdict("fault", 0.0, (OPEN_L2, SHORT)))
    for words in ("1. L2 is open (87 %)", "To every reading the same: R1 is open.", "Where to look: under L2.",
                  "To be sure: Lift one end.", "What it does: no treble.", "2. C2 is shorted, 2 ohm (10 %)",
                  "off before anything is moved"):  # fmt: skip
        assert words in said, words


def test_two_faults_and_the_set_up() -> None:
    said = text(Verdict("no single fault", 0.0, (OPEN_L2,), (OPEN_L2, SHORT)))
    assert "No single fault" in said and "L2 is open and C2 is shorted, 2 ohm" in said
    assert "1. L2 is open" in said and "%" not in said, "what does not explain the readings has no share"
    assert "Nor do two together" in text(Verdict("no single fault", 0.0))
    assert "Is the set-up right?" in text(Verdict("set-up", 0.0, (SHORT,)))
    scatter = replace(SHORT, fault=Fault("scatter", size=(1.3, 2.2)))
    assert "Are the parts what is stated?" in text(Verdict("set-up", 0.0, (scatter,)))


def test_readings_outside_their_windows_are_marked() -> None:
    taken = [Taken(AT_T.reading, OPEN), Taken(AT_W.reading, 0.1)]
    rows = as_text([as_read(taken, [AT_T, AT_W])]).splitlines()[1:]
    assert rows[0].split()[-1] == "HIGH" and " open " in rows[0]
    assert rows[1].split()[-1] == "LOW" and "volts at w, dummies on, 2 kHz" in rows[1]
    assert as_read([Taken(AT_T.reading, 2.5)], [AT_T])[0].rows[0][-1] == ""  # type: ignore[union-attr]


def test_of_two_inputs_it_is_told_which_was_fed() -> None:
    """In the verdict and in the readings below it."""
    verdict = Verdict("good so far", 0.9, missing=(AT_W,))
    said = as_text(with_readings(verdict, [Taken(AT_W.reading, 0.67)], [AT_W], None, 2))
    assert said.count("volts at w, dummies on, into input, 2 kHz") == 2


def test_the_next_reading_tells_what_each_answer_would_mean() -> None:
    proposal = Proposal(AT_T, (Answer(0.0, 2.2, "R2 is wrong", 0.5), Answer(4900.0, 5100.0, "L2 is open", 0.998)))
    said = " ".join(as_text([next_reading(proposal)]).split())
    assert "Anywhere else" not in said
    more = Proposal(AT_T, (*proposal.answers, Answer(2.3, 900.0, "nothing is wrong", 0.001)))
    told_more = as_text([next_reading(more)])
    assert "nothing is wrong" not in told_more and "Anywhere else" in told_more
    assert "Read next: resistance at t, drivers off" in said and "On a sound board 2.8 ohm (2.5 ohm to 3.2 ohm)" in said
    assert "0 ohm 2.2 ohm R2 is wrong 50 %" in said and "open open L2 is open over 99 %" in said


@pytest.mark.parametrize(
    ("value", "words"), [(0.5, "50 %"), (0.9951, "over 99 %"), (0.004, "under 1 %"), (1, "over 99 %")]
)
def test_no_share_is_certainty(value: float, words: str) -> None:
    assert share(value) == words
