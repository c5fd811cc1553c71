"""The label: its true size, what it says, and that it stays within its edge whatever there is to say."""

from __future__ import annotations

from documents.binders import hostile, side_fill
from documents.test_flow import box
from shuntwise.documents.box_label import BAR, HEIGHT, WIDTH, box_label
from shuntwise.documents.material import Material
from shuntwise.documents.page import Picture
from shuntwise.documents.sheet import Stroke, Text
from shuntwise.workspace import Workspace


def label(material: Material) -> tuple[Picture, list[Text]]:
    made = box_label(material.circuit, material.figures, material.stress, title=material.title, mark=material.mark)
    texts = [mark for mark in made.drawn.marks if isinstance(mark, Text)]
    for text in texts:
        left, top, right, bottom = box(text)
        assert left >= 0 and top >= 0 and right <= WIDTH and bottom <= made.height
    within = sorted((text for text in texts if text.y < HEIGHT), key=lambda text: text.y)
    assert all(box(text)[3] <= HEIGHT for text in within)
    return made, texts


def test_what_the_side_fill_says() -> None:
    """Least impedance and crossings as in its summary; two drivers must not be unplugged; the mid is turned round."""
    made, texts = label(side_fill())
    told = [text.text for text in texts]
    for words in ("Harbour stage side fill", "Do not run with woofer or mid unplugged.", "least 3.59 ohm at 248 Hz",
                  "450 W into 4 ohm", "457 Hz, woofer and mid", "3.13 kHz, mid and tweeter",
                  "mid turned round: minus is the fed end", "Serial number"):  # fmt: skip
        assert words in told
        assert words == "Serial number" or words == told[0] or words.rstrip(".") in made.drawn.said


def test_the_label_has_its_size_and_the_bar_its_length() -> None:
    made, _ = label(side_fill())
    frame, *others = [mark for mark in made.drawn.marks if isinstance(mark, Stroke)]
    assert frame.points == ((0, 0), (WIDTH, 0), (WIDTH, HEIGHT), (0, HEIGHT)) and frame.closed
    bar = next(mark for mark in others if mark.points[0][1] == mark.points[1][1] and mark.points[0][1] > HEIGHT)
    assert bar.points[1][0] - bar.points[0][0] == BAR == 50.0


def test_nothing_goes_over_the_edge() -> None:
    _, texts = label(hostile(12, "2026-11-30"))
    assert any("nominal 8 ohm, least" in text.text for text in texts)
    names = [f"connector_{number}_{'x' * 60}" for number in range(14)]
    pins = "\n".join(f"connector {name} {{ 1+ input+, 1- input- }}" for name in names)
    many = f'design "{"W" * 300}"\n{pins}\ndriver woofer 8 ohm\n'
    many += "leg woofer {\n  input+ -- woofer+\n  woofer- -- return\n}\n"
    made, texts = label(Workspace.of_text(many).material())
    assert any("the rest stands in the binder" in text.text for text in texts)
    assert all(name in made.drawn.said for name in names)
