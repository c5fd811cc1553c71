"""Binders for the tests of its parts: a design that tries whatever a stranger may try, and the side fill."""

from __future__ import annotations

from functools import cache

from documents.designs import EXAMPLES, lowered
from shuntwise.documents.binder import chapters, front
from shuntwise.documents.flow import Place, flow
from shuntwise.documents.html import as_html
from shuntwise.documents.material import Material
from shuntwise.documents.page import Behind, Picture, Printing, blocks
from shuntwise.documents.sheet import Sheet
from shuntwise.network.sweep import Sweep
from shuntwise.workspace import Workspace

LONG = "woofer_" + "_".join(["of_a_name_that_never_ends"] * 4)[:92]

HOSTILE = f"""\
design "<script>alert(1)</script></title><svg onload=x()> (Tj) ET Q \\ =HYPERLINK(1) & שלום عرب é́́́ 日本"
amplifier 100 W into 8 ohm {{ least 6.5 ohm, marked 8 ohm }}
connector rear "=cmd|' /C calc'!A0" {{ 1+ input+, 1- input- }}
driver {LONG} 8 ohm {{ re 6 ohm, 100 W, role woofer }}
driver tweeter 8 ohm {{ re 6 ohm, 30 W }}
coil L1 0.5 mH {{ 5 %, dcr 0.3 ohm, price 3.5, note "=1+1" }}
coil L2 0.5 mH {{ 5 %, dcr 0.3 ohm, price 3.5, mass 90 g, note "@SUM(A1)<img src=x onerror=y>" }}
capacitor C1 5 uF {{ 5 %, 250 V, note "</td></table><script>z</script>" }}
capacitor C2 5 uF {{ 5 %, 100 V }}
leg {LONG} {{
  input+ -- L1 -- L2 -- {LONG}+
  {LONG}- -- return
}}
leg tweeter {{
  input+ -- (C1 | C2) -- tweeter-
  tweeter+ -- return
}}
allow load-too-low because "</p><script>q</script>"
"""


@cache
def hostile(boards: int = 1, date: str = "") -> Material:
    return Workspace.of_text(HOSTILE, "box.shunt").material(printing=Printing("a4", boards, date))


@cache
def side_fill() -> Material:
    """The showcase example, without its checks, which would take most of the time."""
    (path,) = [path for path in EXAMPLES if path.name.startswith("13")]
    made = lowered(path)[0]
    return Material(made.design, made.circuit, made.lowered, Sweep(20.0, 20e3, 100), path.stem, "0badcafe")


def sheets(material: Material, paper: str = "a4") -> tuple[tuple[Sheet, ...], tuple[Place, ...]]:
    return flow(chapters(material), front(material), paper)


def page(material: Material) -> str:
    return as_html(chapters(material), front(material))


def count_of(material: Material, *kinds: type) -> int:
    """How many blocks or sheets of some kinds a binder has."""
    return sum(isinstance(block, kinds) for chapter in chapters(material) for block in blocks(chapter.content))


PICTURES = (Picture, Sheet)
FOLDED = (Behind,)
