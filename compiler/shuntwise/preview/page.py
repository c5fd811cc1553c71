"""The page on which a preview is looked at.

In: nothing but names. Out: HTML with one short script, which puts in what the server tells: texts as text, pictures as
images, so that nothing of a design is ever read as a page.
"""

from __future__ import annotations

from collections.abc import Sequence
from html import escape

POLICY = (
    "default-src 'none'; img-src 'self'; connect-src 'self'; script-src 'nonce-{nonce}'; style-src 'nonce-{nonce}'; "
    "base-uri 'none'; form-action 'none'; frame-ancestors 'none'"
)

ICON = "icon.svg"
ICON_SVG = (
    '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 16 16"><path d="M1 8h3l1-4 2 8 2-8 2 8 1-4h3" fill="none" '
    'stroke="#0072b2" stroke-width="1.5" stroke-linejoin="round"/></svg>'
)
"""The page's icon, a resistor: a browser asks for one, and says on its console if there is none."""

_SAID = {"schematic": "the schematic", "response": "the levels", "impedance": "the impedance"}


def page(pictures: Sequence[str], nonce: str) -> str:
    """The page for pictures of these file names; its script and style bear the `nonce` that the policy names."""
    figures = "\n".join(
        f'<figure tabindex="0" aria-label="{said}"><img id="{escape(name)}" alt="{said}">'
        "<figcaption hidden>of an earlier text</figcaption></figure>"
        for name in pictures
        for said in [escape(_SAID.get(name.partition(".")[0], name))]
    )
    return _PAGE.replace("@FIGURES@", figures).replace("@NONCE@", escape(nonce)).replace("@ICON@", ICON)


_PAGE = """<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Shuntwise</title>
<link rel="icon" href="@ICON@">
<style nonce="@NONCE@">
:root { color-scheme: light dark; --ink: #1a1a1a; --grey: #5a5a5a; --paper: #fff; --focus: #0a4f8f }
@media (prefers-color-scheme: dark) { :root { --ink: #ececec; --grey: #b4b4b4; --paper: #161616; --focus: #8ec5ff } }
html { background: var(--paper); color: var(--ink); font: 1rem/1.4 "DejaVu Sans", sans-serif }
body { margin: 1rem auto; max-width: 75rem; padding: 0 1rem }
:focus-visible { outline: 3px solid var(--focus); outline-offset: 2px }
h1 { overflow-wrap: anywhere }
pre { border-left: 0.3rem solid var(--grey); overflow-x: auto; padding: 0.5rem 1rem }
figure { margin: 1rem 0; overflow-x: auto }
img { border: 1px solid var(--grey); max-width: 100% }
img[hidden], figure:has(img[hidden]) { display: none }
img.old { border: 3px dashed var(--grey); opacity: 0.6 }
@media (max-width: 40rem) { img { min-width: 36rem } }
</style>
</head>
<body>
<header>
<h1 id="title">...</h1>
<p id="state" role="status">waiting for the first look</p>
</header>
<main>
@FIGURES@
<h2 id="found">Findings</h2>
<pre id="findings" tabindex="0" role="group" aria-labelledby="found"></pre>
</main>
<script nonce="@NONCE@">
const at = (id) => document.getElementById(id);
const events = new EventSource("events");
events.onmessage = (event) => {
  const view = JSON.parse(event.data);
  document.title = view.title;
  at("title").textContent = view.title;
  at("findings").textContent = view.findings;
  at("state").textContent = view.old.length ? "pictures with dashed edges are of an earlier text" : "up to date";
  for (const image of document.images) {
    const there = view.pictures[image.id];
    image.hidden = there === undefined;
    if (there !== undefined && image.dataset.mark !== there) {
      image.src = image.id + "?" + there;
      image.dataset.mark = there;
    }
    const old = view.old.includes(image.id);
    image.classList.toggle("old", old);
    image.nextElementSibling.hidden = !old;
  }
};
events.onerror = () => { at("state").textContent = "the preview has ended, or is not reached"; };
</script>
</body>
</html>
"""
