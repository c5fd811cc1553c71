"""Names and numbers in a sentence."""

from __future__ import annotations

import pytest

from shuntwise.diagnostics.wording import listed, octaves, percent, rounded


@pytest.mark.parametrize(
    ("share", "text"), [(0.05, "5 %"), (0.0724, "7.2 %"), (0.996, "100 %"), (1.25, "120 %"), (18.6, "1900 %")]
)
def test_a_share_is_never_a_power_of_ten(share: float, text: str) -> None:
    assert percent(share) == text


def test_numbers_and_octaves() -> None:
    assert [rounded(value, 3) for value in (0, 0.02468, 12345.0)] == ["0", "0.0247", "12300"]
    assert [octaves(count) for count in (1.0, 1.04, 1.5, 0.25)] == [
        "1 octave",
        "1 octave",
        "1.5 octaves",
        "0.25 octaves",
    ]
    assert [listed(words) for words in ([], ["a"], ["a", "b"], ["a", "b", "c"])] == ["", "a", "a and b", "a, b and c"]
