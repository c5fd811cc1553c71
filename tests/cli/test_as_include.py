"""Files that designs include, checked by themselves."""

from __future__ import annotations

from pathlib import Path

import pytest

from shuntwise.cli.main import main

SOUND = {
    "limits": "limit load-too-low 0.9\nlimit resistor-hot 3\n",
    "parts": "coil L1 0.82 mH { dcr 0.28 ohm }\nresistor R1 4.7 ohm\n",
    "network": "network pad (a, b) given ohms {\n  resistor Rs ohms\n  a -- Rs -- b\n}\n",
    "waivers": 'allow resistor-hot on R1 because "bolted to the panel"\nomit K1\n',
}
WRONG = {
    "decimal-comma": "capacitor C1 6,8 uF\n",
    "unit-missing": "resistor R1 4.7\n",
    "unknown-finding": "limit load-too-lou 0.9\n",
    "label-kind-clash": "coil C1 0.82 mH\n",
    "tolerance-wide": "coil L1 0.82 mH { dcr 0.28 ohm, 50 % }\n",
}


@pytest.mark.parametrize("text", SOUND.values(), ids=SOUND.keys())
def test_nothing_is_asked_that_only_a_whole_design_has(
    text: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    file = tmp_path / "stock.shunt"
    file.write_text(text)
    assert main(["check", "--as-include", str(file)]) == 0
    assert capsys.readouterr().out == "1 include checked, nothing found\n"
    assert main(["check", str(file)]) == 1  # as a design it lacks everything


@pytest.mark.parametrize(("name", "text"), WRONG.items(), ids=WRONG.keys())
def test_what_is_wrong_in_it_is_told(name: str, text: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    file = tmp_path / "stock.shunt"
    file.write_text(text)
    main(["check", "--as-include", str(file)])
    assert f"[{name}]" in capsys.readouterr().out
