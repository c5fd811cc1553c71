"""The preview's page in a browser: what stands in it after which save, and how soon (printed, not judged)."""

from __future__ import annotations

import http.client
import os
import re
import shutil
import signal
import statistics
import subprocess
import sys
import time
from collections.abc import Iterator
from pathlib import Path
from urllib.parse import urlsplit

import pytest
from playwright.sync_api import Browser, Page

from browser import looks

ROOT = Path(__file__).parents[2]
SHOWCASE = ROOT / "examples/13-harbour-stage.shunt"
SAVES = 7
PICTURES = ("schematic.svg", "response.svg", "impedance.svg")

WATCH = """
import signal, sys
from shuntwise.cli.main import main
signal.signal(signal.SIGINT, signal.default_int_handler)  # a shell that runs tests in the background has it ignored
sys.exit(main(sys.argv[1:]))
"""

LOADED = """(names) => names.every((name) => {
  const image = document.getElementById(name);
  return image.complete && image.naturalWidth > 0 && !image.hidden;
})"""

NOTE_TIMES = """() => {
  window.times = {};
  for (const image of document.images) {
    image.addEventListener("load", () => { window.times[image.id] = Date.now(); });
  }
}"""


@pytest.fixture
def file(tmp_path: Path) -> Path:
    return Path(shutil.copy(SHOWCASE, tmp_path / "box.shunt"))


@pytest.fixture
def address(file: Path) -> Iterator[str]:
    process = subprocess.Popen(
        [sys.executable, "-c", WATCH, "watch", str(file), "--no-browser"],
        stdout=subprocess.PIPE,
        text=True,
        env={**os.environ, "PYTHONPATH": str(ROOT / "compiler")},
    )
    assert process.stdout is not None
    found = re.search(r"http://\S+/", process.stdout.readline())
    assert found is not None
    yield found.group()
    process.send_signal(signal.SIGINT)
    assert process.wait(20) == 0


@pytest.fixture(params=["light", "dark"])
def page(browser: Browser, address: str, request: pytest.FixtureRequest) -> Iterator[Page]:
    """With all pictures; at the end nothing has been said on the console, nor asked for elsewhere."""
    with browser.new_context(color_scheme=request.param) as context:
        opened, said, asked = context.new_page(), [], []
        opened.on("console", lambda message: said.append(f"{message.text} {message.location}"))
        opened.on("pageerror", lambda error: said.append(str(error)))
        opened.on("request", lambda sent: asked.append(sent.url))
        opened.goto(address)
        opened.wait_for_function(LOADED, arg=list(PICTURES))
        yield opened
        assert said == [] and all(url.startswith(address) for url in asked)


def test_it_can_be_read_by_everybody(page: Page) -> None:
    assert page.locator("h1").inner_text() == page.title() == "Harbour stage side fill"
    assert page.locator("#findings").inner_text() == "no findings\n"
    assert looks.accused(page) == []
    assert looks.pale(page) == []
    stops = looks.by_keyboard(page)
    assert [stop["number"] for stop in stops] == looks.controls(page) != []
    assert all(stop["seen"] and stop["drawn"] and stop["contrast"] >= looks.NO_TEXT for stop in stops)
    for width in (320, 360):
        page.set_viewport_size({"width": width, "height": 740})
        assert looks.beyond(page) == []


def test_what_is_saved_comes_into_the_page(page: Page, file: Path, capsys: pytest.CaptureFixture[str]) -> None:
    page.evaluate(NOTE_TIMES)
    text = file.read_text(encoding="utf-8")
    assert "coil L1 2.2 mH" in text
    soon: dict[str, list[float]] = {name: [] for name in PICTURES}
    for number in range(SAVES):
        time.sleep(0.5)  # let it come to rest, so that this save is the only thing to do
        before = {name: page.get_attribute(f"[id='{name}']", "src") for name in PICTURES}
        page.evaluate("() => { window.times = {} }")
        saved = time.time()
        file.write_text(text.replace("coil L1 2.2 mH", f"coil L1 2.{number + 3} mH"), encoding="utf-8")
        page.wait_for_function("(names) => names.every((name) => name in window.times)", arg=list(PICTURES))
        assert all(page.get_attribute(f"[id='{name}']", "src") != before[name] for name in PICTURES)
        for name, when in page.evaluate("() => window.times").items():
            soon[name].append(when / 1e3 - saved)
        assert page.locator("#state").inner_text() == "up to date"
    with capsys.disabled():
        told = ", ".join(f"{name} {statistics.median(times) * 1e3:.0f} ms" for name, times in soon.items())
        print(f"\nfrom a save of the showcase to its picture in the page, median of {SAVES}: {told}")


def test_the_last_good_pictures_stay_while_the_text_is_broken(page: Page, file: Path) -> None:
    text = file.read_text(encoding="utf-8")
    before = {name: page.get_attribute(f"[id='{name}']", "src") for name in PICTURES}
    file.write_text(text + "coil {\n", encoding="utf-8")
    page.wait_for_selector(".old")
    assert before == {name: page.get_attribute(f"[id='{name}']", "src") for name in PICTURES}
    assert page.evaluate(LOADED, list(PICTURES)) and page.locator("img.old").count() == len(PICTURES)
    findings = page.locator("#findings").inner_text()
    assert "error" in findings and "coil {" in findings and "^" in findings  # with its excerpt
    assert page.locator("figcaption:visible").all_inner_texts() == ["of an earlier text"] * len(PICTURES)
    assert "earlier text" in page.locator("#state").inner_text()
    assert looks.accused(page) == [] and looks.pale(page) == []
    file.write_text(text, encoding="utf-8")
    page.wait_for_function("() => document.querySelectorAll('.old').length === 0")
    assert page.locator("#state").inner_text() == "up to date"


def test_who_comes_by_another_name_is_refused(address: str) -> None:
    """As a page of a stranger's would, whose name leads to this computer."""
    parts = urlsplit(address)
    for host, status in ((parts.netloc, 200), (f"stranger.example:{parts.port}", 403)):
        connection = http.client.HTTPConnection("127.0.0.1", parts.port or 0, timeout=10)
        connection.request("GET", parts.path, headers={"Host": host})
        assert connection.getresponse().status == status
        connection.close()
