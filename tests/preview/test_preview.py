"""The preview: what is shown after which save, who is answered, and how it ends."""

from __future__ import annotations

import http.client
import json
import os
import re
import signal
import subprocess
import sys
import time
from collections.abc import Iterator
from pathlib import Path

import pytest

from shuntwise.documents.page import Printing
from shuntwise.preview import view as view_module
from shuntwise.preview.changes import stamps
from shuntwise.preview.page import page
from shuntwise.preview.server import Preview
from shuntwise.preview.view import View, views
from shuntwise.workspace import Workspace

DESIGN = """
driver woofer 8 ohm
coil L1 0.82 mH
leg woofer {
  input+ -- L1 -- woofer+
  woofer- -- return
}
"""
ROOT = Path(__file__).parents[2]


@pytest.fixture
def file(tmp_path: Path) -> Path:
    path = tmp_path / "box.shunt"
    path.write_text(DESIGN, encoding="utf-8")
    return path


@pytest.fixture
def preview() -> Iterator[Preview]:
    made = Preview()
    yield made
    made.close()


def asked(preview: Preview, path: str, host: str | None = None) -> tuple[int, str, dict[str, str]]:
    connection = http.client.HTTPConnection("127.0.0.1", preview.port, timeout=10)
    connection.request("GET", path, headers={"Host": host or f"127.0.0.1:{preview.port}"})
    answer = connection.getresponse()
    found = answer.status, answer.read().decode(), dict(answer.getheaders())
    connection.close()
    return found


# --- views


def test_pictures_of_a_broken_text_stay_and_are_told_to_be_old(file: Path) -> None:
    work = Workspace(str(file), causes=False)
    shown = list(views(work, View()))
    assert [set(view.pictures) >= {"response.svg", "impedance.svg"} for view in shown] == [False, True]
    assert not shown[-1].old and all(b"<svg" in picture[:200] for picture in shown[-1].pictures.values())
    file.write_text(DESIGN + "coil {\n", encoding="utf-8")
    (broken,) = views(work, shown[-1])
    assert broken.pictures == shown[-1].pictures and broken.old == {"schematic.svg", "response.svg", "impedance.svg"}
    assert "[syntax-error]" in broken.findings and "coil {" in broken.findings  # with its excerpt
    file.unlink()
    (gone,) = views(work, broken)
    assert gone.old == frozenset(gone.pictures) and "box.shunt" in gone.findings


def test_plots_are_not_begun_for_a_text_that_is_old_already(file: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    assert len(list(views(Workspace(str(file), causes=False), View(), newer=lambda: True))) == 1
    monkeypatch.setattr(view_module, "SOLVED", ())
    assert len(list(views(Workspace(str(file), causes=False), View()))) == 2


def test_a_variant_that_is_gone_is_told(file: Path) -> None:
    file.write_text(DESIGN + "variant soft { set L1 = 1 mH }\n", encoding="utf-8")
    work = Workspace(str(file), causes=False)
    file.write_text(DESIGN, encoding="utf-8")
    (view,) = views(work, View(), "soft")
    assert "no variant called `soft`" in view.findings


def test_ratings_are_shown_if_they_are_asked_for(file: Path) -> None:
    file.write_text(DESIGN.replace("0.82 mH", "0.82 mH { 12 A }"), encoding="utf-8")
    for ratings in (False, True):
        first = next(views(Workspace(str(file), causes=False), View(), printing=Printing(ratings=ratings)))
        assert (b">12 A</text>" in first.pictures["schematic.svg"]) == ratings


def test_every_way_of_saving_is_seen(tmp_path: Path, file: Path) -> None:
    """Written in place, replaced by another file, and a file that comes where none was."""
    later = tmp_path / "parts.shunt"
    names = [str(file), str(later)]
    seen = [stamps(names)]
    file.write_text(DESIGN + "\n", encoding="utf-8")
    seen.append(stamps(names))
    fresh = tmp_path / "new"
    fresh.write_text(DESIGN + "\n", encoding="utf-8")
    os.replace(fresh, file)  # noqa: PTH105 - as an editor does it
    seen.append(stamps(names))
    later.write_text("", encoding="utf-8")
    seen.append(stamps(names))
    assert all(one != other for at, one in enumerate(seen) for other in seen[at + 1 :])


# --- the page


def test_only_who_knows_the_path_is_answered(preview: Preview) -> None:
    preview.show(View(1, "box", "", {"a.svg": b"<svg/>"}))
    inside = f"/{preview.key}/"
    assert asked(preview, inside)[0] == 200 and asked(preview, f"{inside}a.svg")[:2] == (200, "<svg/>")
    assert len(preview.key) >= 20
    for path in ("/", "/a.svg", f"/{preview.key[:-1]}/", f"/{preview.key}", f"{inside}../a.svg", f"{inside}b.svg"):
        assert asked(preview, path)[0] == 404, path
    for host in ("evil.example", f"evil.example:{preview.port}", "127.0.0.1", f"127.0.0.1:{preview.port + 1}"):
        assert asked(preview, inside, host)[0] == 403, host


def test_the_page_runs_its_own_script_only(preview: Preview) -> None:
    _, text, headers = asked(preview, f"/{preview.key}/")
    policy = headers["Content-Security-Policy"]
    (nonce,) = set(re.findall(r"nonce-([\w-]+)", policy))
    assert policy.startswith("default-src 'none'") and "unsafe" not in policy
    assert text.count("<script") == text.count(f'<script nonce="{nonce}">') == 1
    assert not re.search(r"\son\w+=|https?:|innerHTML", text)
    assert headers["Cache-Control"] == "no-store" and asked(preview, f"/{preview.key}/")[1] != text
    assert "&lt;b&gt;" in page(["<b>.svg"], "n")


def test_events_tell_the_newest_view(preview: Preview) -> None:
    preview.show(View(1, "box", "an <b>error</b>", {"a.svg": b"<svg/>"}, frozenset({"a.svg"})))
    connection = http.client.HTTPConnection("127.0.0.1", preview.port, timeout=10)
    connection.request("GET", f"/{preview.key}/events")
    events = connection.getresponse()

    def following() -> dict[str, object]:
        while not (line := events.readline()).startswith(b"data: "):
            assert line
        told: dict[str, object] = json.loads(line[6:])
        return told

    first = following()
    assert (first["title"], first["findings"], first["old"]) == ("box", "an <b>error</b>", ["a.svg"])
    preview.show(View(2, "box", "", {"a.svg": b"<svg />"}))
    second = following()
    assert second["pictures"] != first["pictures"] and second["old"] == []
    connection.close()


# --- the command


STARTED = """
import signal, sys
from shuntwise.cli.main import main
signal.signal(signal.SIGINT, signal.default_int_handler)  # a shell that runs tests in the background has it ignored
sys.exit(main(sys.argv[1:]))
"""


def started(*arguments: str, **environment: str) -> subprocess.Popen[str]:
    known = {name: value for name, value in os.environ.items() if name not in ("DISPLAY", "WAYLAND_DISPLAY")}
    return subprocess.Popen(
        [sys.executable, "-c", STARTED, "watch", *arguments],
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        text=True,
        env={**known, "PYTHONPATH": str(ROOT / "compiler"), **environment},
    )


def ended(process: subprocess.Popen[str]) -> tuple[int, str]:
    process.send_signal(signal.SIGINT)
    _, said = process.communicate(timeout=20)
    return process.returncode, said


def test_without_a_screen_pictures_are_written_and_ctrl_c_ends_it(file: Path, tmp_path: Path) -> None:
    folder = tmp_path / "pictures"
    process = started(str(file), "-o", str(folder))
    assert process.stdout is not None and "pictures of" in process.stdout.readline()
    until = time.monotonic() + 30
    while not (folder / "response.svg").exists() and time.monotonic() < until:
        time.sleep(0.1)
    assert (folder / "response.svg").read_bytes().startswith(b"<?xml")
    assert ended(process) == (0, "")


def test_the_address_is_told_and_is_on_this_computer_only(file: Path) -> None:
    process = started(str(file), "--no-browser")
    assert process.stdout is not None
    assert re.search(r"at http://127\.0\.0\.1:\d+/[\w-]{20,}/;", process.stdout.readline())
    assert ended(process) == (0, "")


def test_a_file_that_is_not_there(tmp_path: Path) -> None:
    process = started(str(tmp_path / "none.shunt"))
    _, said = process.communicate(timeout=20)
    assert process.returncode == 2 and "none.shunt" in said and "Traceback" not in said


def test_a_file_that_was_missing_and_comes_is_read(tmp_path: Path, file: Path) -> None:
    file.write_text(DESIGN.replace("coil L1 0.82 mH", 'include "parts.shunt"'), encoding="utf-8")
    work = Workspace(str(file), causes=False)
    assert not view_module._reads_otherwise(work)
    (tmp_path / "parts.shunt").write_text("coil L1 0.82 mH\n", encoding="utf-8")
    assert view_module._reads_otherwise(work) and not work.said
