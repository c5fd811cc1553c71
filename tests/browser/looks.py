"""How a page in a browser is to who reads it: contrast, what scrolls, what the keyboard reaches, what axe says.

Contrast is that of WCAG 2.1 (relative luminance as defined there): text 4.5, large text and what is no text 3
(success criteria 1.4.3 and 1.4.11). axe-core's rules are those of its pinned version.
"""

from __future__ import annotations

from pathlib import Path
from typing import Any

from playwright.sync_api import Page

from shuntwise.documents.plot_page import PALE, PALER, ZERO

AXE = Path(__file__).parent / "node_modules/axe-core/axe.min.js"

TEXT, NO_TEXT = 4.5, 3.0

_CONTRAST = """
const canvas = document.createElement("canvas").getContext("2d", {willReadFrequently: true});
const rgba = (colour) => {
  canvas.clearRect(0, 0, 1, 1);
  canvas.fillStyle = colour;
  canvas.fillRect(0, 0, 1, 1);
  return canvas.getImageData(0, 0, 1, 1).data;
};
const luminance = (colour) => {
  const parts = [...rgba(colour)].slice(0, 3).map((c) => c / 255);
  const linear = parts.map((c) => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4));
  return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2];
};
const ground = (element) => {
  for (let at = element; at; at = at.parentElement) {
    const colour = getComputedStyle(at).backgroundColor;
    if (rgba(colour)[3] > 0) return colour;
  }
  return "white";
};
const contrast = (one, other) => {
  const [less, more] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (more + 0.05) / (less + 0.05);
};
"""

_TEXTS = (
    "() => {"
    + _CONTRAST
    + """
  const found = [];
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  while (walker.nextNode()) {
    const text = walker.currentNode.data.trim(), element = walker.currentNode.parentElement;
    if (!text || !element.checkVisibility() || ["STYLE", "SCRIPT", "title", "desc"].includes(element.tagName)) continue;
    const style = getComputedStyle(element);
    const ink = element instanceof SVGElement ? style.fill : style.color;
    found.push([text.slice(0, 40), contrast(ink, ground(element))]);
  }
  return found;
}"""
)

_LINES = (
    "() => {"
    + _CONTRAST
    + """
  return [...document.querySelectorAll("svg path")].filter((path) => getComputedStyle(path).stroke !== "none")
    .map((path) => [getComputedStyle(path).stroke, contrast(getComputedStyle(path).stroke, ground(path))]);
}"""
)

_FOCUS = (
    "() => {"
    + _CONTRAST
    + """
  const element = document.activeElement;
  if (!element || element === document.body) return null;
  const style = getComputedStyle(element), box = element.getBoundingClientRect();
  const there = [...document.querySelectorAll("*")].indexOf(element);
  const seen = box.bottom > 0 && box.top < innerHeight && box.right > 0 && box.left < innerWidth && box.width > 0;
  const drawn = style.outlineStyle !== "none" && parseFloat(style.outlineWidth) >= 2;
  return {number: there, told: element.outerHTML.slice(0, 80), seen, drawn,
          contrast: contrast(style.outlineColor, ground(element.parentElement))};
}"""
)

_CONTROLS = """() => {
  const all = [...document.querySelectorAll("*")];
  return all.map((element, number) => [element, number])
    .filter(([element]) => element.matches("a[href], button, input, select, textarea, summary, [tabindex='0']"))
    .filter(([element]) => element.checkVisibility()).map(([, number]) => number);
}"""

_BEYOND = """() => {
  const inside = (element) => {
    for (let at = element.parentElement; at; at = at.parentElement) {
      if (at.tabIndex >= 0 && ["auto", "scroll"].includes(getComputedStyle(at).overflowX)) return true;
    }
    return false;
  };
  const width = document.documentElement.clientWidth;
  return [...document.querySelectorAll("body, body *")]
    .filter((element) => !(element instanceof SVGElement) || element.tagName === "svg")
    .filter((element) => element.getBoundingClientRect().right > width + 0.5 && !inside(element))
    .map((element) => element.outerHTML.slice(0, 120));
}"""


def accused(page: Page) -> list[dict[str, Any]]:
    """What axe finds, of every impact: rule, impact and the first places."""
    if not page.evaluate("() => 'axe' in window"):
        page.evaluate(AXE.read_text(encoding="utf-8"))  # by the devtools, which a page's policy does not bind
    violations = page.evaluate("async () => (await axe.run(document, {resultTypes: ['violations']})).violations")
    return [
        {"rule": one["id"], "impact": one["impact"], "at": [node["html"][:100] for node in one["nodes"][:3]]}
        for one in violations
    ]


def pale(page: Page) -> list[tuple[str, float]]:
    """Texts, those of drawings too, whose contrast with what they stand on is too low; all that is not hidden."""
    texts = page.evaluate(_TEXTS)
    assert texts
    return [(text, ratio) for text, ratio in texts if ratio < TEXT]


def faint(page: Page) -> set[tuple[str, float]]:
    """Lines of drawings whose contrast is too low, the grid's aside: whoever does not see it loses nothing, as its
    numbers stand at the edges.
    """
    grid = {f"rgb({', '.join(str(part) for part in bytes.fromhex(colour[1:]))})" for colour in (PALE, PALER, ZERO)}
    return {(colour, ratio) for colour, ratio in page.evaluate(_LINES) if ratio < NO_TEXT and colour not in grid}


def beyond(page: Page) -> list[str]:
    """What stands out to the right of the window, other than within what scrolls and has the keyboard's focus."""
    found: list[str] = page.evaluate(_BEYOND)
    over = page.evaluate("() => document.scrollingElement.scrollWidth - document.documentElement.clientWidth")
    return [*found, *([f"the page scrolls by {over}"] if over > 0 else [])]


def controls(page: Page) -> list[int]:
    """The places among all elements of those that do something or scroll."""
    found: list[int] = page.evaluate(_CONTROLS)
    return found


def by_keyboard(page: Page, most: int = 500) -> list[dict[str, Any]]:
    """What the tabulator reaches, in order, until it leaves the page."""
    stops: list[dict[str, Any]] = []
    for _ in range(most):
        page.keyboard.press("Tab")
        stop = page.evaluate(_FOCUS)
        if stop is None or (stops and stop["number"] == stops[0]["number"]):
            return stops
        stops.append(stop)
    raise AssertionError("the tabulator does not leave the page")
