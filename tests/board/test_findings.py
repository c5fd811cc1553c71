"""What is said of layouts: wrong versions of one, each with the right repair, which cures when it is applied."""

from __future__ import annotations

from pathlib import Path

import pytest

from shuntwise.cli.main import main
from shuntwise.diagnostics.diagnostic import Diagnostic
from shuntwise.workspace import Workspace

EXAMPLES = Path(__file__).parents[2] / "examples"
HORN = EXAMPLES / "07-market-horn.shunt"

WRONG = {
    "a lead one hole further": (
        ("start into north_east 1", "start into rail_east 2"),
        "lead-misplaced",
        "move `L2`'s lead from `rail_east 2` to `north_east 1`",
    ),
    "a wire on the wrong side of the cut": (
        ("lead out h4 to tweeter+", "lead out h3 to tweeter+"),
        "lead-misplaced",
        "move the wire to `tweeter+` from `h3` to ",
    ),
    "a jumper forgotten": (
        ("  jumper rail_west 5 -- rail_east 1 { wire 1.2 mm, sleeved }\n", ""),
        "net-not-joined",
        "jumper `rail_west 5` to `rail_east 1`",
    ),
    "a jumper that ends elsewhere": (
        ("jumper rail_west 5 -- rail_east 1", "jumper rail_west 5 -- h2"),
        "lead-misplaced",
        "move the end of the jumper from `h2` to `rail_east ",
    ),
    "a cut forgotten": (
        ("  cut from 185:82 mm to 185:116 mm { width 2 mm }", ""),
        "nets-joined",
        "cut ",
    ),
    "a cut too short": (
        ("cut from 185:82 mm to 185:116 mm", "cut from 185:82 mm to 185:112 mm"),
        "nets-joined",
        "cut ",
    ),
    "a cut too many": (
        ("  jumper rail_west 5", "  cut from 150:4 mm to 150:32 mm\n  jumper rail_west 5"),
        "net-not-joined",
        "leave out the cut from 150:4 mm to 150:32 mm",
    ),
    "the wires to a driver exchanged": (
        ("lug to woofer+", "lug to woofer-", "rail_west 2 to woofer-", "rail_west 2 to woofer+"),
        "leads-reversed",
        "exchange the wires to `woofer+` and `woofer-`",
    ),
    "two parts exchanged": (
        ("place C1 at", "place XX at", "place R2 at", "place C1 at", "place XX at", "place R2 at"),
        "leads-exchanged",
        "exchange `C1` and `R2`",
    ),
    "a hole off the copper": (
        ("drill h3 1.3 mm at 178:90 mm in north_east", "drill h3 1.3 mm at 178:75 mm"),
        "lead-off-copper",
        "move `C2`'s lead from `h3` to ",
    ),
    "a wire forgotten": (
        ("  lead out rail_east 4 to tweeter- { length 400 mm, wire 1.1 mm }\n", ""),
        "nothing-leads-to-pad",
        "lead out ",
    ),
}


def changed(changes: tuple[str, ...]) -> str:
    text = HORN.read_text(encoding="utf-8")
    for old, new in zip(changes[::2], changes[1::2], strict=True):
        assert text.count(old) == 1, old
        text = text.replace(old, new)
    return text


def found(file: Path) -> list[Diagnostic]:
    return [finding for compilation in Workspace(str(file)).compilations for finding in compilation.findings]


@pytest.mark.parametrize("wrong", WRONG)
def test_a_wrong_layout_names_the_right_repair_and_is_cured_by_it(
    wrong: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    changes, name, remedy = WRONG[wrong]
    file = tmp_path / "horn.shunt"
    file.write_text(changed(changes), encoding="utf-8")
    (finding,) = found(file)
    assert finding.name == name and remedy in finding.help
    assert main(["check", "--repair", str(file)]) == 0
    assert found(file) == [] and "fixed: " in capsys.readouterr().err


@pytest.mark.parametrize(
    ("example", "old", "new", "name", "remedy"),
    [
        (
            "04-dance-column",
            "  bus lower 8 to lower 12 { wire 1.4 mm }\n",
            "",
            "net-not-joined",
            "bus `lower 8` to `lower 1",
        ),
        ("16-village-hall", "out into horn-", "out into low 5", "lead-misplaced", "from `low 5` to `horn-`"),
    ],
)
def test_a_bus_comes_back_and_a_lead_to_a_pad(
    example: str, old: str, new: str, name: str, remedy: str, tmp_path: Path
) -> None:
    text = (EXAMPLES / f"{example}.shunt").read_text(encoding="utf-8")
    assert text.count(old) == 1
    file = tmp_path / "board.shunt"
    file.write_text(text.replace(old, new), encoding="utf-8")
    told = {finding.name: finding for finding in found(file)}
    assert remedy in told[name].help
    assert main(["check", "--repair", str(file)]) in (0, 1)
    assert name not in {finding.name for finding in found(file)}


def test_only_repair_writes_into_a_layout(tmp_path: Path) -> None:
    file = tmp_path / "horn.shunt"
    text = changed(WRONG["a jumper forgotten"][0])
    file.write_text(text, encoding="utf-8")
    assert main(["check", "--fix", str(file)]) == 1
    assert file.read_text(encoding="utf-8") == text


def test_a_part_that_is_not_placed_is_told_where_its_leads_may_go(tmp_path: Path) -> None:
    file = tmp_path / "horn.shunt"
    line = "  place C1 at 26:57 mm { axis 90 deg, leads into north_west 1 and rail_west 1 }\n"
    file.write_text(changed((line, "")), encoding="utf-8")
    (finding,) = found(file)
    assert finding.name == "part-not-placed" and "`north_west 1`" in finding.help and "`rail_west 1`" in finding.help


def test_numbers_count_the_wires_in_unless_they_are_passed_over(tmp_path: Path) -> None:
    """The same as the text without its layout."""
    plain = tmp_path / "plain.shunt"
    text = HORN.read_text(encoding="utf-8")
    plain.write_text(text[: text.index("layout on")] + text[text.rindex("\n}\n") + 3 :], encoding="utf-8")
    laid, over, without = (
        Workspace(str(HORN)).material(),
        Workspace(str(HORN), on_boards=False).material(),
        Workspace(str(plain)).material(),
    )
    assert over.network.elements == without.network.elements
    assert laid.mark != over.mark
    straps = [element for element in laid.network.elements if element.part.startswith("board ")]
    assert len(straps) == 8 and all(1e-4 < strap.value < 0.02 for strap in straps)
    levels = [column.values for made in (laid, over) for column in made.columns if column.quantity == "level"]
    apart = max(abs(one - other).max() for one, other in zip(levels[:2], levels[2:], strict=True))
    assert 0.001 < apart < 0.1
