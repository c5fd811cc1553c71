"""Measured tables: every way of writing one that is plain gives the same numbers, the rest gives a finding."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest

from drivers.designs import free_air, one_driver, table_text, vented_box
from shuntwise.api import check
from shuntwise.model.design import ImpedanceTable
from shuntwise.model.measured import FEWEST_POINTS, read_table
from shuntwise.model.table_rows import MOST_POINTS
from shuntwise.source import Source

FREQ_HZ = np.geomspace(20, 20000, 40).round(2)
S = 2j * np.pi * FREQ_HZ
OHM = 5.8 + 0.0155 * S**0.69 + free_air(S, 5.8, 42, 4.2, 0.46)
ROWS = [(f, m, p) for f, m, p in zip(FREQ_HZ, np.abs(OHM).round(5), np.degrees(np.angle(OHM)).round(5), strict=True)]


def written(pattern: str, header: str = "") -> str:
    """The table with each row by a pattern; `f`, `k`, `m`, `p`, `r` are Hz, kHz, ohm, degree, radian."""
    rows = [
        pattern.format(f=f"{f:.2f}", k=f"{f / 1000:.5f}", m=f"{m:.5f}", p=f"{p:.5f}", r=f"{np.radians(p):.8f}")
        for f, m, p in ROWS
    ]
    return header + "\n".join(rows) + "\n"


def read(text: str, name: str = "t.txt") -> ImpedanceTable:
    table, said = read_table(Source(name, text))
    assert said == ()
    assert table is not None
    return table


def complaint(text: str, name: str = "t.txt") -> tuple[str, str, int, str]:
    """Name, headline, line and marked text of the one finding."""
    table, said = read_table(Source(name, text))
    assert table is None
    (finding,) = said
    return finding.name, finding.headline, finding.span.line, finding.span.text


PLAIN = [
    written("{f} {m} {p}"),
    written("  {f}\t{m}\t{p}  "),
    written("{f},{m},{p}"),
    written("{f}, {m}, {p}"),
    written("{f} ,{m} ,{p}"),
    written("{f};{m};{p}"),
    written("{f} ; {m} ; {p}").replace("\n", "\r\n"),
    written("{f} {m} {p}", "# a comment\n! another\n* and another\n; and one\n// and one\n\n"),
    written("{f} {m} {p}", "Frequency (Hz)  Magnitude (ohm)  Phase (degree)\n"),
    written("{f}\t{m}\t{p}", "Freq [Hz]\tImpedance [Ω]\tPhase [°]\n"),
    written("{f} {m} {p}", "* made in the yard\n* Freq(Hz) Z(Ohm) Phase(deg)\n"),
    written("{f} {m} {p}", "# impedance of the sample, phase and frequency as read\n"),
    written("{k},{m},{p}", "frequency (kHz),impedance magnitude (ohm),impedance phase (deg)\n"),
    written("{k};{m};{r}", "frequency kHz;modulus ohm;phase rad\n"),
    written("{r},{f},7,{m}", "phase (rad), frequency (Hz), level, |Z| (ohm)\n"),
]


@pytest.mark.parametrize("text", PLAIN, ids=range(len(PLAIN)))
def test_plain_table_is_read(text: str) -> None:
    table = read(text)
    assert table.freq_hz == pytest.approx(FREQ_HZ, rel=1e-9)
    assert np.array(table.ohm) == pytest.approx(OHM, rel=1e-4)


@pytest.mark.parametrize(
    ("text", "headline", "line", "marked"),
    [
        (written("{f} {m} {p}").replace("\n", "\n100 nan 3\n", 1), "the magnitude `nan` is not a number", 2, "nan"),
        ("20 7 3\n1e999 5 3\n", "a frequency of inf hertz cannot be", 2, "1e999 5 3"),
        ("20 -7 3\n", "a magnitude of -7 ohm cannot be", 1, "20 -7 3"),
        ("0 7 3\n", "a frequency of 0 hertz cannot be", 1, "0 7 3"),
        ("20 7.1\n", "this row has 2 columns, but 3 are expected", 1, "20 7.1"),
        ("20 7,1 3\n", "a decimal comma stands in the table", 1, "7,1"),
        ("20,5;7,1;3\n", "a decimal comma stands in the table", 1, "20,5"),
        ("20,5,7,1,3,0\n", "this row has 6 columns, but 3 are expected", 1, "20,5,7,1,3,0"),
        ("20 7.1 3\n20 7.2 4\n", "the frequency does not rise here: 20 Hz, then 20 Hz", 2, "20 7.2 4"),
        ("20 7.1 3\nthe end\n", "this line of the table is not numbers", 2, "the end"),
        ("some prose\n20 7 3\n", "the frequency is not named in the line that names the columns", 1, "some prose"),
        ("freq mag mag phase\n", "the magnitude is named more than once in the line that names the columns", 1,
         "freq mag mag phase"),
        ("freq (Hz), mag (dB), phase (deg)\n", "`db` is no unit of a magnitude here", 1, "mag (dB)"),
        ("# freq (Hz), mag (dB), phase (deg)\n20, 17, 3\n", "`db` is no unit of a magnitude here", 1, "mag (dB)"),
        ("20 7.1 3\n25 7.3 4\n", "the table has 2 points from 10 Hz to 24 kHz", 1, "20 7.1 3"),
        ("", "the table has 0 points from 10 Hz to 24 kHz", 1, ""),
        (written("{k} {m} {p}"), "the table ends at 20 Hz", 40, "20.00000 54.07829 56.64782"),
    ],
)  # fmt: skip
def test_table_that_is_not_plain_is_a_finding_at_its_place(text: str, headline: str, line: int, marked: str) -> None:
    assert complaint(text) == ("measured-malformed", headline, line, marked)


@pytest.mark.parametrize(
    ("text", "headline"),
    [
        (table_text(FREQ_HZ, -OHM), "a resistance below zero was measured at 40 of 40 points"),
        (table_text(FREQ_HZ, OHM * np.exp(-S * 50e-6)), None),
        (
            table_text(FREQ_HZ, np.conj(OHM)),
            "the phase has the opposite sign of what the slope of the magnitude asks for",
        ),
        (written("{f} {m} {r}"), "the phase is far too small for the slope of the magnitude"),
        (written("{f} {m} 0"), "the phase is far too small for the slope of the magnitude"),
    ],
)
def test_impedance_that_no_driver_has_is_a_finding(text: str, headline: str | None) -> None:
    """Exchanged leads, a delay of 50 microseconds, a turned sign, radians, no phase at all."""
    name, said, *_ = complaint(text)
    assert name == "measured-not-physical"
    assert headline is None or said == headline


@pytest.mark.parametrize(
    "ohm",
    [
        OHM,
        5.8 + 0.0155 * S**0.69 + vented_box(S, 5.8, 42, 4.2, 0.46, 1.1, 45, 7),
        3.4 + 0.0031 * S**0.72 + free_air(S, 3.4, 780, 2.6, 1.4),
        8 + 0 * S,
        8 + 0.0003 * S,
        5.8 + 1 / (S * 40e-6),
    ],
    ids=["woofer", "vented", "tweeter", "resistor", "coil", "with a capacitor in series"],
)
def test_impedance_of_real_parts_is_never_called_impossible(ohm: np.ndarray) -> None:
    noise = np.random.default_rng(5).normal(size=(2, len(ohm)))
    for scatter in (0.0, 0.01):
        read(table_text(FREQ_HZ, ohm * (1 + scatter * (noise[0] + 1j * noise[1]))))


# --- Touchstone


def touchstone(form: str, parameter: str, unit: str = "Hz", reference: float = 50.0) -> str:
    scale = {"Hz": 1, "kHz": 1e3, "MHz": 1e6, "GHz": 1e9}[unit]
    value = {"S": (OHM - reference) / (OHM + reference), "Z": OHM / reference, "Y": reference / OHM}[parameter]
    degree = np.degrees(np.angle(value))
    first, second = {
        "RI": (value.real, value.imag),
        "MA": (np.abs(value), degree),
        "DB": (20 * np.log10(np.abs(value)), degree),
    }[form]
    rows = zip(FREQ_HZ / scale, first, second, strict=True)
    text = "".join(f"{f:.12g} {a:.14g} {b:.14g} ! a remark\n" for f, a, b in rows)
    return f"! one driver\n# {unit} {parameter} {form} R {reference:g}\n{text}"


@pytest.mark.parametrize("form", ["RI", "MA", "DB"])
@pytest.mark.parametrize("parameter", ["S", "Y", "Z"])
@pytest.mark.parametrize(("unit", "reference"), [("Hz", 50.0), ("kHz", 8.0), ("MHz", 50.0), ("GHz", 75.0)])
def test_touchstone_of_every_form_is_read(form: str, parameter: str, unit: str, reference: float) -> None:
    """Touchstone File Format Specification, revision 1.1, IBIS Open Forum, 2002: Y and Z are normalised."""
    for name in ("driver.s1p", "driver.txt"):
        table = read(touchstone(form, parameter, unit, reference), name)
        assert table.freq_hz == pytest.approx(FREQ_HZ, rel=1e-9)
        assert np.array(table.ohm) == pytest.approx(OHM, rel=1e-9)


@pytest.mark.parametrize("form", ["RI", "MA", "DB"])
@pytest.mark.parametrize("parameter", ["S", "Z"])
def test_touchstone_is_read_as_scikit_rf_reads_it(form: str, parameter: str, tmp_path: Path) -> None:
    skrf = pytest.importorskip("skrf", reason="scikit-rf is not installed (pip install scikit-rf)")
    path = tmp_path / "driver.s1p"
    path.write_text(touchstone(form, parameter, "kHz", 8.0), encoding="utf-8")
    theirs = skrf.Network(str(path))
    table = read(path.read_text(encoding="utf-8"), "driver.s1p")
    assert np.array(table.freq_hz) == pytest.approx(theirs.f, rel=1e-12)
    assert np.array(table.ohm) == pytest.approx(theirs.z[:, 0, 0], rel=1e-9)


def test_touchstone_without_option_line_is_in_gigahertz() -> None:
    """The defaults of the standard: GHz S MA R 50; a driver is far below its band."""
    rows = "".join(f"{f / 1e9:.12g} {abs(g):.12g} {np.degrees(np.angle(g)):.12g}\n"
                   for f, g in zip(FREQ_HZ, (OHM - 50) / (OHM + 50), strict=True))  # fmt: skip
    assert np.array(read(rows, "driver.s1p").ohm) == pytest.approx(OHM, rel=1e-6)


@pytest.mark.parametrize(
    ("text", "headline"),
    [
        ("[Version] 2.0\n", "this is a Touchstone file of version 2"),
        ("# Hz H MA R 50\n1 2 3\n", "`H` in the option line is not understood"),
        ("# Hz S MA R\n1 2 3\n", "`R` in the option line is not understood"),
        ("# Hz S MA R 50\n20 0.1 2 0.1 3 0.1 4 0.1 5\n", "this row has 9 columns; a one-port file has 3"),
        ("# Hz S RI R 50\n20 1 0\n", "this row stands for no finite impedance"),
        ("# Hz Z RI R 50\n20 0 0\n", "a magnitude of 0 ohm cannot be"),
        ("# Hz S DB R 50\n20 1e9 0\n", "this row stands for no finite impedance"),
        ("# Hz S RI R 50\n20 1e308 1e308\n", None),
        ("# Hz Z RI R 50\n20 1e308 1e308\n", None),
        ("# Hz Z RI R 1\n20 1e308 1e308\n", None),
        ("# Hz S MA R 50\n20 0.5 1e999\n", "this row stands for no finite impedance"),
        ("# Hz Y MA R 50\n20 1e-320 0\n", None),
        ("# Hz S MA R 50\n20 0.5 1e308\n", None),
    ],
)
def test_touchstone_that_is_no_impedance_is_a_finding(text: str, headline: str | None) -> None:
    name, said, *_ = complaint(text, "driver.s1p")
    assert name == "measured-malformed"
    assert headline is None or said == headline


# --- files of strangers


def design(folder: Path, named: str) -> Path:
    path = folder / "box.shunt"
    path.write_text(
        f'driver woofer 8 ohm {{ measured "{named}" }}\nleg woofer {{\n  input+ -- woofer+\n  woofer- -- return\n}}\n',
        encoding="utf-8",
    )
    return path


def found(path: Path) -> list[tuple[str, str]]:
    return [(f.name, f.headline) for f in check(str(path))[0].findings]


def test_table_beside_the_design_and_below_is_read(tmp_path: Path) -> None:
    (tmp_path / "tables").mkdir()
    for name in ("t.txt", "tables/t.txt"):
        (tmp_path / name).write_text(written("{f} {m} {p}"), encoding="utf-8")
        assert found(design(tmp_path, name)) == []


@pytest.mark.parametrize(
    "named", ["../t.txt", "/etc/passwd", "a/../../t.txt", "C:t.txt", "a\\t.txt", " ", "none.txt", "."]
)
def test_table_elsewhere_is_not_read(named: str, tmp_path: Path) -> None:
    (tmp_path / "t.txt").write_text(written("{f} {m} {p}"), encoding="utf-8")
    folder = tmp_path / "design"
    folder.mkdir()
    assert [name for name, _ in found(design(folder, named))] == ["measured-not-read"]


def test_link_that_leads_out_is_not_followed(tmp_path: Path) -> None:
    (tmp_path / "t.txt").write_text(written("{f} {m} {p}"), encoding="utf-8")
    folder = tmp_path / "design"
    folder.mkdir()
    (folder / "t.txt").symlink_to(tmp_path / "t.txt")
    ((name, headline),) = found(design(folder, "t.txt"))
    assert name == "measured-not-read"
    assert "symbolic link" in headline


@pytest.mark.parametrize(
    ("content", "name"),
    [
        (bytes(range(256)) * 10, "measured-not-read"),
        (b"\x00" * 1000, "measured-not-read"),
        ("20 7 3\n".encode("utf-16"), "measured-not-read"),
        (b"1 2 3\n" * 400_000, "measured-not-read"),
        (b"\x1b[31m 2 3\n", "measured-malformed"),
        (b"9" * 500_000, "measured-malformed"),
        (b"1 " + b"9" * 500_000 + b"x", "measured-malformed"),
        (b"1e5," * 200_000, "measured-malformed"),
        (b"(" * 300_000, "measured-malformed"),
        (b"[Version] " * 30_000, "measured-malformed"),
        ("\u202e20 7 3\n".encode(), "measured-malformed"),
    ],
    ids=[
        "binary",
        "zeros",
        "UTF-16",
        "huge",
        "escape codes",
        "digits",
        "digits and a letter",
        "one row",
        "brackets",
        "keywords",
        "direction",
    ],
)
def test_hostile_file_gives_one_finding(content: bytes, name: str, tmp_path: Path) -> None:
    for table in ("t.txt", "t.s1p"):
        (tmp_path / table).write_bytes(content)
        assert [n for n, _ in found(design(tmp_path, table))] == [name]


def test_table_has_fewest_and_most_points() -> None:
    freq_hz = np.geomspace(20, 20000, MOST_POINTS + 1)
    rows = table_text(freq_hz, 8 + 0j * freq_hz).splitlines()
    read("\n".join(rows[:-1]))
    assert "more than" in complaint("\n".join(rows))[1]
    few = [rows[at] for at in np.linspace(0, len(rows) - 1, FEWEST_POINTS).astype(int)]
    read("\n".join(few))
    assert f"the table has {FEWEST_POINTS - 1} points" in complaint("\n".join(few[1:]))[1]


def test_table_is_read_through_the_loader_only() -> None:
    """Without a folder to read from, a table is refused as an include is."""
    compilation = one_driver('measured "t.txt"')
    assert [(f.name, f.span.text) for f in compilation.findings] == [("measured-not-read", '"t.txt"')]
