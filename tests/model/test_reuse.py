"""Includes, networks, variants and tried values: what replaces what, and what is refused."""

from __future__ import annotations

from pathlib import Path

import pytest

from shuntwise.api import Compilation, check, load, load_text
from shuntwise.model.include import MOST_FILES
from shuntwise.workshop import IncludeRoot
from shuntwise.workspace import Workspace

PLAIN = """
driver woofer 8 ohm
coil L1 0.82 mH { dcr 0.3 ohm, 5 % }
leg woofer {
  input+ -- L1 -- woofer+
  woofer- -- return
}
"""


def names(compilation: Compilation) -> list[str]:
    """The findings of the language; what the other checks say of bare examples is not the matter here."""
    language = {
        "same-label-twice", "unknown-name", "unknown-word", "unit-wrong-kind", "unit-missing", "include-loop",
        "include-not-read", "included-twice", "network-loop", "parameter-missing", "misplaced-statement",
        "circular-value", "value-unclear", "too-many-parts", "coupling-impossible", "walked-twice",
    }  # fmt: skip
    return [finding.name for finding in compilation.findings if finding.name in language]


def value(compilation: Compilation, label: str) -> float:
    quantity = compilation.design.parts[label].value
    assert quantity is not None
    return quantity.value


# --- no consequences of consequences


def test_a_rating_that_could_not_be_read_is_not_missed_as_well() -> None:
    """`250` lacks its unit: one finding says so, and none says that the volts are missing."""
    text = (
        "amplifier 60 W into 8 ohm { least 4 ohm }\n"
        "driver tweeter 8 ohm { re 6.3 ohm, le 0.05 mH, fs 900 Hz, qms 2.4, qes 1.5, 40 W }\n"
        "capacitor C1 6.8 uF { 5 %, 250, film }\n"
        "leg tweeter {\n  input+ -- C1 -- tweeter+\n  tweeter- -- return\n}\n"
    )
    assert [finding.name for finding in load_text(text).findings] == ["unit-missing"]


# --- tried values


def test_a_tried_value_replaces_the_written_one() -> None:
    tried = load_text(PLAIN, settings=["L1=0.75mH", "L1.dcr=0.2 ohm"])
    assert value(tried, "L1") == 0.00075
    assert tried.design.parts["L1"].get("dcr") == 0.2


def test_a_tried_value_of_nothing_is_a_finding() -> None:
    assert names(load_text(PLAIN, settings=["L2=0.75mH"])) == ["unknown-name"]


def test_a_tried_value_of_the_wrong_kind_is_a_finding() -> None:
    assert names(load_text(PLAIN, settings=["L1=3 ohm"])) == ["unit-wrong-kind"]


def test_a_value_can_be_tried_through_a_let() -> None:
    text = PLAIN.replace("coil L1 0.82 mH", "let base = 0.82 mH\ncoil L1 base * 2")
    assert value(load_text(text, settings=["base=1mH"]), "L1") == 0.002


# --- variants


def variants(tmp_path: Path, text: str) -> dict[str | None, Compilation]:
    path = tmp_path / "box.shunt"
    path.write_text(text)
    return {compilation.design.variant: compilation for compilation in check(str(path))}


def test_a_variant_replaces_parts_values_and_wiring(tmp_path: Path) -> None:
    text = (
        PLAIN
        + """
variant soft "a resistor in front" {
  set L1 = 1.0 mH
  resistor R1 2.2 ohm { 20 W, 5 % }
  leg woofer {
    input+ -- R1 -- L1 -- woofer+
    woofer- -- return
  }
}
"""
    )
    found = variants(tmp_path, text)
    assert (value(found[None], "L1"), value(found["soft"], "L1")) == (0.00082, 0.001)
    assert "R1" not in found[None].design.parts
    assert found["soft"].circuit.edges["L1"].plus == "between L1 and R1"
    assert found["soft"].design.parts["L1"].get("dcr") == 0.3, "what the variant does not name stays"


def test_a_variant_turns_a_resistor_into_a_link(tmp_path: Path) -> None:
    text = PLAIN.replace("input+ -- L1", "input+ -- R1 -- L1") + "resistor R1 2.2 ohm\nvariant loud { link R1 }\n"
    found = variants(tmp_path, text)
    assert "R1" in found[None].circuit.edges
    assert "R1" not in found["loud"].circuit.edges
    assert found["loud"].circuit.edges["L1"].plus == "input+"


def test_omit_and_fit(tmp_path: Path) -> None:
    text = PLAIN.replace("woofer- --", "woofer+ -- C1 -- woofer-\n  woofer- --")
    text += "capacitor C1 10 uF\nomit C1\nvariant full { fit C1 }\n"
    found = variants(tmp_path, text)
    assert "C1" not in found[None].circuit.edges
    assert "C1" in found["full"].circuit.edges


PADDED = """
network pad (source, load, back) given loss, rated = 5 W {
  let K = 10^(loss / 20 dB)
  resistor Rs 8 ohm * (K - 1) / K { rated }
  resistor Rp 8 ohm / (K - 1) { rated }
  source -- Rs -- load
  load -- Rp -- back
}
let wanted = 2 mH
driver woofer 8 ohm { re 6 ohm }
amplifier 100 W into 8 ohm { least 4 ohm }
coil L1 1 mH { dcr 0.3 ohm }
coil L2 wanted
use pad as P1 { loss 4 dB }
leg woofer {
  input+ -- L1 -- L2 -- P1 -- woofer+
  P1.back -- return
  woofer- -- return
}
"""


def number(compilation: Compilation, target: str) -> float | None:
    """What a `set` can name, as it came out; None for a part left out."""
    design = compilation.design
    if target == "amplifier.least":
        assert design.amplifier is not None
        return design.amplifier.quantities["least"].value
    if target == "woofer.re":
        return design.drivers["woofer"].quantities["re"].value
    owner, _, attribute = target.rpartition(".")
    if attribute == "dcr":
        return design.parts[owner].get("dcr")
    return value(compilation, target) if design.parts[target].fitted else None


@pytest.mark.parametrize(
    ("outside", "inside", "target", "plain", "changed"),
    [
        # what the variant restates sets aside what was changed of it outside
        ("set L1 = 3 mH", "coil L1 2 mH", "L1", 3e-3, 2e-3),
        ("set L1.dcr = 0.4 ohm", "coil L1 2 mH { dcr 0.5 ohm }", "L1.dcr", 0.4, 0.5),
        ("omit L1", "coil L1 2 mH", "L1", None, 2e-3),
        ("set wanted = 3 mH", "let wanted = 4 mH", "L2", 3e-3, 4e-3),
        ("set woofer.re = 5 ohm", "driver woofer 8 ohm { re 7 ohm }", "woofer.re", 5, 7),
        ("set amplifier.least = 3 ohm", "amplifier 50 W into 8 ohm { least 6 ohm }", "amplifier.least", 3, 6),
        ("set P1.Rs = 1 ohm", "use pad as P1 { loss 20 dB }", "P1.Rs", 1, 7.2),
        ("set P1.loss = 40 dB", "use pad as P1 { loss 20 dB }", "P1.Rs", 7.92, 7.2),
        ("omit P1", "use pad as P1 { loss 20 dB }", "P1.Rs", None, 7.2),
        # its own changes then change what it restated, wherever they stand in it
        ("set L1 = 3 mH", "set L1 = 4 mH\ncoil L1 2 mH", "L1", 3e-3, 4e-3),
        ("omit P1.Rs", "fit P1", "P1.Rs", None, 2.95234),
        ("omit P1", "fit P1.Rs", "P1.Rs", None, 2.95234),
        ("omit P1", "fit P1.Rs", "P1.Rp", None, None),
        ("fit P1.Rs", "omit P1", "P1.Rs", 2.95234, None),
        # what it does not restate stays changed
        ("set L1 = 3 mH", "coil L2 2 mH", "L1", 3e-3, 3e-3),
        ("set L1 = 3 mH", "set L1.dcr = 1 ohm", "L1", 3e-3, 3e-3),
        ("set P1.loss = 20 dB", "set P1.Rp = 1 ohm", "P1.Rs", 7.2, 7.2),
        ("omit P1.Rp", "set P1.loss = 20 dB", "P1.Rp", None, None),
    ],
)
def test_what_a_variant_restates_sets_aside_what_changed_it_outside(
    tmp_path: Path, outside: str, inside: str, target: str, plain: float | None, changed: float | None
) -> None:
    found = variants(tmp_path, f"{PADDED}{outside}\nvariant other {{\n{inside}\n}}\n")
    assert names(found[None]) == names(found["other"]) == []
    assert number(found[None], target) == (None if plain is None else pytest.approx(plain, rel=1e-4))
    assert number(found["other"], target) == (None if changed is None else pytest.approx(changed, rel=1e-4))


def test_a_tried_value_comes_last(tmp_path: Path) -> None:
    path = tmp_path / "d.shunt"
    path.write_text(PADDED + "variant other {\ncoil L1 2 mH\nset L1 = 4 mH\n}\n")
    assert value(load(str(path), variant="other", settings=["L1=5mH", "P1.loss=20dB"]), "L1") == 5e-3
    assert value(load(str(path), variant="other", settings=["P1.loss=20dB"]), "P1.Rs") == pytest.approx(7.2)


def test_where_a_part_and_a_parameter_have_one_name_the_part_is_set() -> None:
    text = PADDED.replace("resistor Rp", "resistor rated").replace("-- Rp --", "-- rated --")
    assert value(load_text(text + "set P1.rated = 11 ohm\n"), "P1.rated") == 11


def test_a_parameter_that_is_not_there_is_named(tmp_path: Path) -> None:
    (finding,) = [f for f in load_text(PADDED + "set P1.los = 3 dB\n").findings if f.name == "unknown-name"]
    assert "`P1.loss`" in finding.help


def test_a_finding_of_a_variant_names_it(tmp_path: Path) -> None:
    found = variants(tmp_path, PLAIN + "variant odd { set L9 = 1 mH }\n")
    assert names(found[None]) == []
    (finding,) = [f for f in found["odd"].findings if f.name == "unknown-name"]
    assert finding.variant == "odd"


def test_an_expectation_of_a_variant_replaces_the_one_on_the_same(tmp_path: Path) -> None:
    text = PLAIN + "expect impedance above 4 ohm\nvariant low { expect impedance above 2 ohm }\n"
    found = variants(tmp_path, text)
    assert [e.clauses["above"].value for e in found[None].design.expectations] == [4]
    assert [e.clauses["above"].value for e in found["low"].design.expectations] == [2]


# --- networks

PAD = """
network pad (source, load, back) given loss, z = 8 ohm {
  let K = 10^(loss / 20 dB)
  resistor Rs z * (K - 1) / K { 20 W, 5 % }
  resistor Rp z / (K - 1) { 20 W, 5 % }
  source -- Rs -- load
  load -- Rp -- back
}
driver woofer 8 ohm
leg woofer {
  input+ -- P1 -- woofer+
  P1.back -- return
  woofer- -- return
}
"""


def test_a_network_is_put_in_with_its_parameters() -> None:
    """Rs = R (K - 1) / K, Rp = R / (K - 1) at 6 dB and 8 ohm: 3.9905 and 8.0381 ohm, the handbook's L-pad."""
    compilation = load_text(PAD + "use pad as P1 { loss 6 dB }\n")
    assert names(compilation) == []
    assert value(compilation, "P1.Rs") == pytest.approx(3.99050213098, rel=1e-11)
    assert value(compilation, "P1.Rp") == pytest.approx(8.03808190030, rel=1e-11)


def test_two_uses_of_a_network_share_nothing() -> None:
    text = PAD.replace("P1 -- woofer+", "P1 -- P2 -- woofer+").replace("P1.back --", "P2.back -- P1.back --")
    compilation = load_text(text + "use pad as P1 { loss 6 dB }\nuse pad as P2 { loss 3 dB, z 4 ohm }\n")
    assert names(compilation) == []
    assert value(compilation, "P1.Rs") != value(compilation, "P2.Rs")
    assert {"P1.Rs", "P2.Rs"} <= set(compilation.circuit.edges)


def test_a_part_of_a_network_can_be_set() -> None:
    compilation = load_text(PAD + "use pad as P1 { loss 6 dB }\nset P1.Rs = 4R7\nset P1.Rs.power = 5 W\n")
    assert names(compilation) == []
    assert value(compilation, "P1.Rs") == 4.7
    assert compilation.design.parts["P1.Rs"].get("power") == 5


@pytest.mark.parametrize(
    ("line", "expected"),
    [
        ("use pad as P1", ["parameter-missing"]),
        ("use pad as P1 { loss 6 dB, lots 3 }", ["unknown-word"]),
        ("use pda as P1 { loss 6 dB }", ["unknown-name"]),
        ("use pad as P1 { loss 6 }", ["unit-wrong-kind"]),
    ],
)
def test_wrong_uses(line: str, expected: list[str]) -> None:
    assert names(load_text(PAD + line + "\n")) == expected


def test_a_network_that_uses_itself_is_refused() -> None:
    text = "network a (x, y) {\n  use a as A1\n  x -- A1 -- y\n}\nuse a as A\n" + PLAIN
    assert "network-loop" in names(load_text(text))


def test_networks_that_multiply_are_refused(monkeypatch: pytest.MonkeyPatch) -> None:
    """Ten levels of networks that use the next one four times would be a million parts."""
    monkeypatch.setattr("shuntwise.model.uses.MOST_PARTS", 500)  # the real bound only takes longer
    text = "network n0 (x, y) {\n  resistor R 1 ohm\n  x -- R -- y\n}\n"
    for level in range(1, 11):
        uses = "".join(f"  use n{level - 1} as U{i}\n" for i in range(4))
        text += f"network n{level} (x, y) {{\n{uses}  x -- U0 -- U1 -- U2 -- U3 -- y\n}}\n"
    compilation = load_text(text + "use n10 as A\n" + PLAIN)
    assert "too-many-parts" in names(compilation)
    assert len(compilation.design.parts) < 600


# --- includes


def write(folder: Path, **files: str) -> None:
    for name, text in files.items():
        (folder / f"{name}.shunt").write_text(text)


def test_a_file_of_the_same_folder_is_included(tmp_path: Path) -> None:
    (tmp_path / "parts").mkdir()
    write(tmp_path, box='include "parts/drivers.shunt"\n' + PLAIN.replace("driver woofer 8 ohm\n", ""))
    write(tmp_path / "parts", drivers="driver woofer 8 ohm\n")
    assert names(load(str(tmp_path / "box.shunt"))) == []


def test_the_shipped_library_is_included(tmp_path: Path) -> None:
    write(tmp_path, box='include "zobel" from library\ninclude "lpda" from library\n' + PLAIN)
    compilation = load(str(tmp_path / "box.shunt"))
    assert names(compilation) == ["include-not-read"]
    assert "`lpad`" in compilation.findings[0].help


@pytest.mark.parametrize("path", ["../secret.shunt", "/etc/hostname", "a/../../secret.shunt", "C:\\x.shunt", ""])
def test_nothing_outside_the_folder_is_read(tmp_path: Path, path: str) -> None:
    (tmp_path / "box").mkdir()
    (tmp_path / "secret.shunt").write_text("coil SECRET 1 mH\n")
    write(tmp_path / "box", box=f'include "{path}"\n' + PLAIN)
    compilation = load(str(tmp_path / "box" / "box.shunt"))
    assert names(compilation) == ["include-not-read"]
    assert "SECRET" not in compilation.design.parts


def test_loops_of_includes_are_told_as_such(tmp_path: Path) -> None:
    write(tmp_path, a='include "b.shunt"\n' + PLAIN, b='include "c.shunt"\n', c='include "a.shunt"\n')
    compilation = load(str(tmp_path / "a.shunt"))
    (finding,) = [f for f in compilation.findings if f.name == "include-loop"]
    assert [Path(part.strip()).name for part in finding.why.removeprefix("the chain is ").split("->")] == [
        "a.shunt", "b.shunt", "c.shunt", "a.shunt",
    ]  # fmt: skip


def test_a_file_included_twice_is_told(tmp_path: Path) -> None:
    write(tmp_path, a='include "b.shunt"\ninclude "./b.shunt"\n' + PLAIN, b="resistor R7 3 ohm\n")
    assert names(load(str(tmp_path / "a.shunt"))) == ["included-twice"]


def test_too_many_files_are_refused(tmp_path: Path) -> None:
    lines = "".join(f'include "f{i}.shunt"\n' for i in range(MOST_FILES + 5))
    write(tmp_path, a=lines + PLAIN, **{f"f{i}": "# empty\n" for i in range(MOST_FILES + 5)})
    (finding,) = load(str(tmp_path / "a.shunt")).findings
    assert (finding.name, finding.span.text) == ("include-not-read", f'"f{MOST_FILES - 1}.shunt"')


@pytest.mark.parametrize("line", ['include "x{}.shunt"\n', 'driver d{} 8 ohm {{ role mid, measured "x{}.txt" }}\n'])
@pytest.mark.parametrize("up", ["", "../"])
def test_thousands_of_files_that_are_not_there_are_not_looked_for(
    tmp_path: Path, line: str, up: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    write(tmp_path, a="".join(line.replace('"x', f'"{up}x').format(i, i) for i in range(1000)))
    looked, resolve = [], IncludeRoot.resolve
    monkeypatch.setattr(IncludeRoot, "resolve", lambda *asked: looked.append(asked) or resolve(*asked))
    said = Workspace(str(tmp_path / "a.shunt")).said
    assert len(looked) <= MOST_FILES and len(said) == (2 if up else len(looked) + 1)


# --- arithmetic


@pytest.mark.parametrize(
    ("expression", "expected"),
    [
        ("8 ohm / (2 * pi * 2.4 kHz)", 8 / (2 * 3.141592653589793 * 2400)),
        ("0.4 mH + 420 uH", 0.00082),
        ("2 * 0.4 mH - 0.1 mH * 2", 0.0006),
        ("1m0", 0.001),
        ("(0.1 mH)", 0.0001),
        ("2^3 * 0.1 mH", 0.0008),
    ],
)
def test_arithmetic_with_units(expression: str, expected: float) -> None:
    compilation = load_text(PLAIN.replace("0.82 mH", expression))
    assert names(compilation) == []
    assert value(compilation, "L1") == pytest.approx(expected, rel=1e-15)


@pytest.mark.parametrize(
    ("expression", "expected"),
    [
        ("8 ohm + 1 mH", ["unit-wrong-kind"]),
        ("8 ohm / (1 - 1)", ["value-unclear"]),
        ("missing * 2", ["unknown-name"]),
        ("2^(1 ohm) * 1 mH", ["unit-wrong-kind"]),
        ("10^9999 * 1 mH", ["value-unclear"]),
        ("L1", ["value-unclear"]),
        ("1u0 * 2", ["value-unclear"]),
    ],
)
def test_arithmetic_that_cannot_be(expression: str, expected: list[str]) -> None:
    assert names(load_text(PLAIN.replace("0.82 mH", expression))) == expected


def test_values_in_a_circle_are_told() -> None:
    text = "let a = b * 2\nlet b = c\nlet c = a\n" + PLAIN.replace("0.82 mH", "a * 1 mH")
    assert names(load_text(text)) == ["circular-value"]
