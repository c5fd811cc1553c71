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

_SAID = {"schematic": "the schematic", "response": "the levels", "impedance": "the impedance"}


def page(pictures: Sequence[str], nonce: str) -> str:
    """The page for pictures of these file names; its script and style bear the `nonce` that the policy names."""
    figures = "\n".join(
        f'<figure><img id="{escape(name)}" alt="{_SAID.get(name.partition(".")[0], name)}"></figure>'
        for name in pictures
    )
    return _PAGE.replace("@FIGURES@", figures).replace("@NONCE@", escape(nonce))


_PAGE = """<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Shuntwise</title>
<style nonce="@NONCE@">
:root { color-scheme: light dark; font: 16px/1.4 "DejaVu Sans", sans-serif; }
body { margin: 1rem auto; max-width: 75rem; padding: 0 1rem; }
pre { overflow-x: auto; border-left: 0.3rem solid #5a5a5a; padding: 0.5rem 1rem; }
figure { margin: 1rem 0; }
img { max-width: 100%; background: #fff; border: 1px solid #5a5a5a; }
img[hidden] { display: none; }
img.old { opacity: 0.4; }
</style>
</head>
<body>
<h1 id="title">...</h1>
<p id="state" role="status">waiting for the first look</p>
<main>
@FIGURES@
<h2>Findings</h2>
<pre id="findings" tabindex="0"></pre>
</main>
<script nonce="@NONCE@">
const at = (id) => document.getElementById(id);
const events = new EventSource("events");
events.onmessage = (event) => {
  const view = JSON.parse(event.data);
  document.title = view.title;
  at("title").textContent = view.title;
  at("findings").textContent = view.findings;
  at("state").textContent = view.old.length ? "pictures that are pale belong to an earlier text" : "up to date";
  for (const image of document.images) {
    const there = view.pictures[image.id];
    image.hidden = there === undefined;
    if (there !== undefined && image.dataset.mark !== there) {
      image.src = image.id + "?" + there;
      image.dataset.mark = there;
    }
    image.classList.toggle("old", view.old.includes(image.id));
  }
};
events.onerror = () => { at("state").textContent = "the preview has ended, or is not reached"; };
</script>
</body>
</html>
"""
