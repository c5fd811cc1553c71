"""The solver against numbers from outside: exact check circuits, textbook alignments, pads, traps, drivers.

Each test names its source; citations were not checked against the printed page unless the reference tables say so.
"""

import re
import tomllib

import numpy as np
import pytest

from response.circuits import REFERENCE, check_circuits, driver_lines, network, table
from shuntwise.response.solve import solve

# The tables print 12 to 15 digits; the solver rounds at about 1e-15 a step.
TIGHT = 1e-12


@pytest.mark.parametrize("name", ["N1", "N2", "N3", "N4", "N5", "N6"])
def test_check_circuits_have_their_exact_node_voltages(name: str) -> None:
    """Every node of the circuits solved symbolically with lcapy 1.26 in exact rationals, printed to 15 digits."""
    rows = [row for row in table("10_node_voltages.csv") if row["network"] == name]
    freq_hz = sorted({float(row["frequency (Hz)"]) for row in rows})
    response = solve(check_circuits()[name], freq_hz)
    for row in rows:
        exact = complex(float(row["real part (V for a 1 V source)"]), float(row["imaginary part (V for a 1 V source)"]))
        found = response.voltage(row["node"])[freq_hz.index(float(row["frequency (Hz)"]))]
        assert abs(found - exact) < TIGHT
    assert response.fallback_points == 0
    assert response.residual < 1e-12


ALIGNMENTS = sorted(
    {
        (row["alignment"], row["order"], row["frequency f (Hz)"], row["load R (ohm)"])
        for row in table("03_two_way_components.csv")
    }
)


@pytest.mark.parametrize(("alignment", "order", "f", "load"), ALIGNMENTS)
def test_two_way_alignments_respond_as_their_polynomials(alignment: str, order: str, f: str, load: str) -> None:
    """Butterworth, Linkwitz-Riley and Bessel pairs at f/4 to 4f, sections, sum, difference and input impedance.

    G. L. Matthaei, L. Young, E. M. T. Jones, Microwave Filters, 1964, singly terminated prototypes; S. H. Linkwitz,
    J. Audio Eng. Soc. 24(1), 1976; R. H. Small, J. Audio Eng. Soc. 19(1), 1971.
    """
    lines = ["V1 in 0", f"Rw low-pass 0 {load}", f"Rt high-pass 0 {load}"]
    for section in ("low-pass", "high-pass"):
        parts = [
            row
            for row in table("03_two_way_components.csv")
            if (row["alignment"], row["order"], row["frequency f (Hz)"]) == (alignment, order, f)
            and row["section"] == section
        ]
        at = "in"
        series_left = sum(row["place"] == "series" for row in parts)
        for row in parts:
            to = "0"
            if row["place"] == "series":
                series_left -= 1
                to = section if series_left == 0 else f"{section}{series_left}"
            lines.append(f"{row['part']}{section[0]} {at} {to} {row['value (SI)']}")
            at = at if to == "0" else to
    drivers = ["woofer low-pass 0", "tweeter high-pass 0", "reversed 0 high-pass"]
    rows = [r for r in table("03_two_way_response.csv") if (r["alignment"], r["order"]) == (alignment, order)]
    assert len(rows) == 25
    ratios = sorted({float(row["frequency ratio to f (dimensionless)"]) for row in rows})
    response = solve(network(lines, drivers), [ratio * float(f) for ratio in ratios])
    low, high = response.driver_voltage("woofer"), response.driver_voltage("tweeter")
    found = {
        "low-pass": low,
        "high-pass": high,
        "sum (same polarity)": low + high,
        "difference (high-pass reversed)": low + response.driver_voltage("reversed"),
        "input impedance / R of both sections in parallel": response.impedance("V1") / float(load),
    }
    for row in rows:
        exact = complex(float(row["real part (dimensionless)"]), float(row["imaginary part (dimensionless)"]))
        at_ratio = ratios.index(float(row["frequency ratio to f (dimensionless)"]))
        # The part values are printed to 12 digits.
        assert abs(found[row["quantity"]][at_ratio] - exact) < 2e-11


@pytest.mark.parametrize("row", table("04_l_pad.csv"), ids=lambda row: row["attenuation (dB)"])
def test_l_pads_keep_the_load_and_share_the_power(row: dict[str, str]) -> None:
    """Rs = R (K - 1)/K, Rp = R/(K - 1), K = 10^(dB/20): Reference Data for Radio Engineers, attenuators."""
    numbers = [float(value) for value in row.values()]
    _, load, rs, rp, input_ohm, ratio, *shares = numbers
    pad = network(["V1 in 0", f"Rs in out {rs!r}", f"Rp out 0 {rp!r}", f"R out 0 {load!r}"], ["driver out 0"])
    response = solve(pad, [1000.0])
    assert response.impedance("V1")[0] == pytest.approx(input_ohm, rel=1e-11)
    assert response.driver_voltage("driver")[0] == pytest.approx(ratio, rel=1e-11)
    total = sum(response.dissipation(part)[0] for part in ("Rs", "Rp", "R"))
    for part, share in zip(("Rs", "Rp", "R"), shares, strict=True):
        assert response.dissipation(part)[0] / total == pytest.approx(share, rel=1e-10)


TRAPS = sorted({row["network (source resistance 0 ohm unless Rs is given)"] for row in table("04_trap_response.csv")})


@pytest.mark.parametrize("name", TRAPS)
def test_traps_respond_as_calculated(name: str) -> None:
    """A parallel R-L-C in series with the load and a series R-L-C across it, by circuit theory in 30 digits."""
    given = {key: float(number) for key, number in re.findall(r"(\w+)=([\d.e-]+)", name)}
    farad = 1 / ((2 * np.pi * given["f0"]) ** 2 * given["L"])
    if name.startswith("parallel"):
        lines = ["V1 in 0", f"R in out {given['Rt']}", f"L in out {given['L']}", f"C in out {farad!r}"]
    else:
        lines = ["V1 in 0", f"Rs in out {given['Rs']}", f"L out a {given['L']}", f"C a b {farad!r}"]
        lines.append(f"R b 0 {given['Rt']}")
    rows = [row for row in table("04_trap_response.csv") if name in row.values()]
    response = solve(network([*lines, f"RL out 0 {given['RL']}"]), [float(row["frequency (Hz)"]) for row in rows])
    for row, found in zip(rows, response.voltage("out"), strict=True):
        exact = complex(
            float(row["real part of load/source voltage (dimensionless)"]),
            float(row["imaginary part (dimensionless)"]),
        )
        assert abs(found - exact) < TIGHT


def given_driver(text: str) -> dict[str, float]:
    return {key: float(number) for key, number in re.findall(r"(\w+)=([\d.e-]+)", text)}


def test_zobel_makes_a_voice_coil_resistive() -> None:
    """R = Re and C = Le/Re^2 across Re + s Le: O. J. Zobel, Bell Syst. Tech. J. 7(3), 1928 (from memory)."""
    rows = [r for r in table("04_compensation_networks.csv") if r["network"].startswith("series R-C across")]
    for rz, cz in zip(rows[::2], rows[1::2], strict=True):
        given = given_driver(rz["given"])
        lines = ["V1 in 0", f"Re in a {given['Re']!r}", f"Le a 0 {given['Le']!r}"]
        lines += [f"Rz in z {rz['value']}", f"Cz z 0 {cz['value']}"]
        impedance = solve(network(lines), np.geomspace(10, 40e3, 50)).impedance("V1")
        assert np.abs(impedance / given["Re"] - 1).max() < 1e-11


def test_full_dual_network_makes_a_driver_resistive() -> None:
    """Voice coil and resonance both compensated: W. M. Leach, J. Audio Eng. Soc. 52(4), 2004."""
    rows = [r for r in table("04_compensation_networks.csv") if r["network"].startswith("full dual")]
    given = given_driver(rows[0]["given"])
    part = {row["result"]: row["value"] for row in rows}
    lines = ["V1 in 0", *driver_lines("w", "in", given["Re"], given["Le"], given["fs"], given["Qms"], given["Qes"])]
    lines += [f"Rs in a {part['R series']}", f"C1 a 0 {part['C1']}"]
    lines += [f"R a b {part['R']}", f"L b c {part['L']}", f"C c 0 {part['C']}"]
    impedance = solve(network(lines), np.geomspace(10, 40e3, 50)).impedance("V1")
    assert np.abs(impedance / given["Re"] - 1).max() < 1e-10


@pytest.mark.parametrize("key", ["driver_A", "driver_B"])
def test_driver_impedance_follows_its_formula(key: str) -> None:
    """Re + s Le + Res (p/Qms)/(1 + p/Qms + p^2): Thiele 1971, Small 1972; 12 frequencies, 12 digits."""
    driver = tomllib.loads((REFERENCE / "08_driver_parameters.toml").read_text(encoding="utf-8"))[key]
    rows = [
        row
        for row in table("08_driver_impedance.csv")
        if row["driver"] == driver["name"] and row["voice-coil model"] == "Re + s Le"
    ]
    lines = driver_lines("d", "in", driver["Re_ohm"], driver["Le_H"], driver["fs_Hz"], driver["Qms"], driver["Qes"])
    response = solve(network(["V1 in 0", *lines]), [float(row["frequency (Hz)"]) for row in rows])
    for row, found in zip(rows, response.impedance("V1"), strict=True):
        exact = complex(float(row["real part (ohm)"]), float(row["imaginary part (ohm)"]))
        assert abs(found / exact - 1) < 1e-11


def test_programme_network_shapes_noise_as_published() -> None:
    """The passive ladder of IEC 60268-1:1985 Figure 2, and the band levels of its Table II with their tolerance."""
    lines = ["V1 in 0", "R1 in a 430", "C1 a b 2.2e-6", "R2 b 0 3300", "C2 b 0 91e-9"]
    lines += ["R3 b c 330", "C3 c d 2.2e-6", "R4 d 0 3300", "C4 d 0 68e-9", "C5 d out 0.47e-6", "R5 out 0 10e3"]
    rows = table("08_iec60268_1_programme_signal.csv")
    nominal_hz = np.array([float(row["nominal one-third-octave frequency (Hz)"]) for row in rows])
    response = solve(network(lines), nominal_hz)
    for row, found in zip(rows, response.voltage("out"), strict=True):
        exact = complex(
            float(row["Figure 2 network, real part of output/e.m.f. at the nominal frequency (dimensionless)"]),
            float(row["Figure 2 network, imaginary part (dimensionless)"]),
        )
        assert abs(found - exact) < TIGHT
    # Pink noise has the same power in every one-third octave, so a band's level is the mean of |H|^2 in log f.
    centres = 1000 * 10 ** ((np.arange(len(rows)) - 17) / 10)
    inside = centres[:, None] * 10 ** np.linspace(-0.05, 0.05, 41)
    power = np.abs(solve(network(lines), inside.ravel()).voltage("out").reshape(inside.shape)) ** 2
    band_db = 10 * np.log10(power.mean(axis=1))
    wanted_db = np.array([float(row["Table II relative level (dB)"]) for row in rows])
    tolerance_db = np.array([float(row["Table II tolerance plus and minus (dB)"]) for row in rows])
    slack = (band_db - wanted_db)[:, None] - np.linspace(-8, 0, 801)
    assert (np.abs(slack) <= tolerance_db[:, None]).all(axis=0).any()
