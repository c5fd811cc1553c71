"""The binder's page, as `build` writes it, opened from its file in a browser."""

from __future__ import annotations

import os
import subprocess
import sys
from collections import Counter
from pathlib import Path

import pytest
from playwright.sync_api import Browser, BrowserContext, Page

from browser import looks
from documents.binders import HOSTILE

ROOT = Path(__file__).parents[2]
DESIGNS = ("13-harbour-stage", "16-village-hall", "17-cinema-sub", "hostile")
SCHEMES = ("light", "dark")


@pytest.fixture(scope="session")
def pages(tmp_path_factory: pytest.TempPathFactory) -> dict[str, str]:
    """By design the address of its page."""
    folder = tmp_path_factory.mktemp("binders")
    (folder / "hostile.shunt").write_text(HOSTILE, encoding="utf-8")
    found, environment = {}, {**os.environ, "PYTHONPATH": str(ROOT / "compiler")}
    for name in DESIGNS:
        design = next((ROOT / "examples").glob(f"{name}.shunt"), folder / f"{name}.shunt")
        command = [sys.executable, "-m", "shuntwise", "build", str(design), "--bench", "-o", str(folder / name)]
        subprocess.run(command, capture_output=True, check=True, env=environment)
        found[name] = (folder / name / f"{design.stem}.html").as_uri()
    return found


@pytest.fixture(params=DESIGNS)
def address(request: pytest.FixtureRequest, pages: dict[str, str]) -> str:
    return pages[request.param]


def opened(context: BrowserContext, address: str) -> Page:
    page = context.new_page()
    page.goto(address)
    return page


@pytest.mark.parametrize("scripts", [True, False])
def test_it_opens_from_its_file_and_asks_for_nothing(browser: Browser, address: str, scripts: bool) -> None:
    with browser.new_context(java_script_enabled=scripts) as context:
        page, said, asked = context.new_page(), [], []
        page.on("console", lambda message: said.append(message.text))
        page.on("pageerror", lambda error: said.append(str(error)))
        page.on("dialog", lambda dialog: said.append(dialog.message))
        page.on("request", lambda request: asked.append(request.url))
        page.goto(address, wait_until="networkidle")
        assert said == [] and asked == [address]
        assert page.locator("h1").inner_text() and page.locator("h2").count() >= 6
        assert page.locator("script").count() == 0


@pytest.mark.parametrize(("scheme", "width"), [("light", 1280), ("dark", 1280), ("light", 360)])
def test_axe_finds_nothing(browser: Browser, address: str, scheme: str, width: int) -> None:
    with browser.new_context(color_scheme=scheme, viewport={"width": width, "height": 900}) as context:
        page = opened(context, address)
        page.evaluate("() => document.querySelectorAll('details').forEach((one) => { one.open = true })")
        assert looks.accused(page) == []


@pytest.mark.parametrize("scheme", SCHEMES)
def test_contrast_is_enough_in_text_and_drawings(browser: Browser, address: str, scheme: str) -> None:
    with browser.new_context(color_scheme=scheme) as context:
        page = opened(context, address)
        assert looks.pale(page) == []
        assert looks.faint(page) == set()
        grounds = page.evaluate("() => getComputedStyle(document.documentElement).backgroundColor")
        assert grounds == {"light": "rgb(255, 255, 255)", "dark": "rgb(22, 22, 22)"}[scheme]


@pytest.mark.parametrize("scheme", SCHEMES)
def test_the_keyboard_reaches_everything_and_shows_where_it_is(browser: Browser, address: str, scheme: str) -> None:
    with browser.new_context(color_scheme=scheme) as context:
        page = opened(context, address)
        stops = looks.by_keyboard(page)
        assert [stop["number"] for stop in stops] == looks.controls(page)  # in the order in which it is read
        assert [stop for stop in stops if not (stop["seen"] and stop["drawn"])] == []
        assert [stop for stop in stops if stop["contrast"] < looks.NO_TEXT] == []


def test_keys_do_what_is_told(browser: Browser, pages: dict[str, str]) -> None:
    with browser.new_context() as context:
        page = opened(context, pages["13-harbour-stage"])
        page.keyboard.press("Tab")
        page.keyboard.press("Enter")
        assert page.evaluate("() => document.activeElement.id") == "content"
        page.locator("summary").first.focus()
        page.keyboard.press("Enter")
        assert page.locator("details[open] table").first.is_visible()
        link = page.locator("nav a").last
        link.focus()
        page.keyboard.press("Enter")
        page.wait_for_function("() => document.querySelector(':target').getBoundingClientRect().top < innerHeight")


@pytest.mark.parametrize("width", [320, 360, 768])
def test_nothing_stands_out_of_a_narrow_window(browser: Browser, address: str, width: int) -> None:
    """320 px is what WCAG 2.1, 1.4.10 asks for."""
    with browser.new_context(viewport={"width": width, "height": 740}) as context:
        page = opened(context, address)
        page.evaluate("() => document.querySelectorAll('details').forEach((one) => { one.open = true })")
        assert looks.beyond(page) == []


@pytest.mark.parametrize(("paper", "width_mm"), [("A4", 210 - 28), ("Letter", 215.9 - 28)])
def test_it_prints_with_every_table(
    browser: Browser, address: str, tmp_path: Path, paper: str, width_mm: float
) -> None:
    """Nothing that is printed is cut off at the right, and each word of every table is on the paper."""
    file = tmp_path / "printed.pdf"
    with browser.new_context(viewport={"width": int(width_mm / 25.4 * 96), "height": 1000}) as context:
        page = opened(context, address)
        page.evaluate("() => document.querySelectorAll('details').forEach((one) => { one.open = true })")
        page.pdf(path=file, format=paper, margin=dict.fromkeys(
            ("top", "right", "bottom", "left"), "14mm"))  # fmt: skip
        page.emulate_media(media="print")
        cut = page.evaluate("""() => [...document.querySelectorAll(".wide, svg")]
          .filter((one) => one.scrollWidth > one.clientWidth + 1
                        || one.getBoundingClientRect().right > document.documentElement.clientWidth + 0.5)
          .map((one) => one.textContent.slice(0, 60))""")
        label = page.locator("#label svg").bounding_box()
        told = " ".join(page.locator("table").all_inner_texts()).split()
        size_mm = page.get_attribute("#label svg", "width")
    assert cut == []
    assert label is not None and f"{label['width'] * 25.4 / 96:.1f}mm" == f"{float(size_mm[:-2]):.1f}mm"  # true size
    printed = subprocess.run(["pdftotext", "-raw", str(file), "-"], capture_output=True, text=True, check=True).stdout
    assert len(told) > 100
    letters = "".join(printed.split())
    missing = [word for word in Counter(told) if word.isascii() and word not in letters]
    assert missing == []
