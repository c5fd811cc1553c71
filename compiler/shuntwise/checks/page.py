"""A rule's docstring -> its page, and the page as text.

In: a module that holds a rule. Out: a `Page`, and what `explain` prints or the reference in grammar/
shows. Refuses to know which rules there are.

The docstring is plain prose of fixed shape: a title; `What it finds:`, `Why it matters:`; one or more `Bad:`
examples (those behind the first are headed `or:`), in which a line of `^` marks what the finding
points at; `Good:` examples likewise, without marks; `When to ignore it:`. A line `=== NAME` in an example
begins a file that lies beside the design; on its first line it names what is checked, such as a box's own file.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from textwrap import dedent, fill, indent
from types import ModuleType

from shuntwise import units as u
from shuntwise.checks.registry import PAGES, RULES
from shuntwise.checks.rule import Bound, Rule
from shuntwise.diagnostics.sarif import RuleText
from shuntwise.source import Source, Span

_SHAPE = re.compile(
    r"(?P<title>[^\n]+\.)\n\n"
    r"What it finds: (?P<finds>.+?)\n\n"
    r"Why it matters: (?P<why>.+?)\n\n"
    r"Bad:\n(?P<bad>.+?)\n\n"
    r"Good:\n(?P<good>.+?)\n\n"
    r"When to ignore it: (?P<ignore>.+?)\n*",
    re.DOTALL,
)
_MARK = re.compile(r" *\^+ *")
_ANOTHER = re.compile(r"\n\nor:\n")
_FILE = "=== "


@dataclass(frozen=True)
class Example:
    """A design, or a box's own file: as shown, and in `source` without its mark; `files` lie beside it.

    `marked` is in any of them.
    """

    shown: str
    source: Source
    files: tuple[Source, ...]
    marked: Span | None


@dataclass(frozen=True)
class Page:
    """What a builder may want to know of a finding. `bound` is None where no limit can be set."""

    title: str
    finds: str
    why: str
    bad: tuple[Example, ...]
    good: tuple[Example, ...]
    ignore: str
    bound: str | None


def page_of(name: str) -> Page:
    """The page of a registered finding."""
    return read_page(PAGES[name])


def read_page(module: ModuleType) -> Page:
    """Read a rule module's docstring; ValueError if it has not the shape of a page."""
    match = _SHAPE.fullmatch((module.__doc__ or "").strip())
    if match is None:
        raise ValueError(f"the docstring of {module.__name__} has not the shape of a page")
    bad, good = (tuple(_example(block) for block in _ANOTHER.split(match[kind])) for kind in ("bad", "good"))
    bound = _bound(module.RULE.name, module.RULE.bound)
    title, finds, why, ignore = (_flow(match[kind]) for kind in ("title", "finds", "why", "ignore"))
    return Page(title, finds, why, bad, good, ignore, bound)


def _flow(text: str) -> str:
    """Paragraphs, each on one line."""
    flowing = "\n\n".join(" ".join(paragraph.split()) for paragraph in text.split("\n\n"))
    return flowing[0].upper() + flowing[1:]


def _bound(name: str, bound: Bound | None) -> str | None:
    return f"limit {name} {u.write(bound.default, bound.dimension)}" if bound is not None else None


def _example(block: str) -> Example:
    shown = dedent(block).strip("\n")
    names, texts = ["example.shunt"], [""]
    mark: tuple[int, int, int] | None = None
    for number, line in enumerate(shown.split("\n")):
        if number == 0 and line.startswith(_FILE):
            names[0] = line.removeprefix(_FILE)
        elif line.startswith(_FILE):
            names.append(line.removeprefix(_FILE))
            texts.append("")
        elif _MARK.fullmatch(line):
            begin = texts[-1].rfind("\n", 0, -1) + 1
            mark = len(texts) - 1, begin + line.index("^"), begin + line.rindex("^") + 1
        else:
            texts[-1] += line + "\n"
    sources = [Source(name, text) for name, text in zip(names, texts, strict=True)]
    return Example(shown, sources[0], tuple(sources[1:]), Span(sources[mark[0]], *mark[1:]) if mark else None)


def rule_texts() -> tuple[RuleText, ...]:
    """What every finding says of itself, for reports that carry it with them."""
    pages = {name: page_of(name) for name in PAGES}
    return tuple(
        RuleText(name, RULES[name].severity, page.title, f"{page.finds} {page.why}", render(page, RULES[name]))
        for name, page in pages.items()
    )


def render(page: Page, rule: Rule) -> str:
    """The page for a terminal, as `explain` prints it."""
    parts = [
        f"{rule.name} ({rule.severity})",
        page.title,
        f"What it finds\n{_wrapped(page.finds)}",
        f"Why it matters\n{_wrapped(page.why)}",
        *(f"Bad\n{indent(example.shown, '    ')}" for example in page.bad),
        *(f"Good\n{indent(example.shown, '    ')}" for example in page.good),
        f"When to ignore it\n{_wrapped(page.ignore)}",
        _wrapped(_handling(page, rule)),
    ]
    return "\n\n".join(parts)


def _wrapped(text: str) -> str:
    return "\n\n".join(fill(paragraph, 88, break_on_hyphens=False) for paragraph in text.split("\n\n"))


def render_markdown(page: Page, rule: Rule) -> str:
    """The page as a section of the reference."""
    parts = [
        f"### {rule.name}",
        f"**{page.title}** Severity: {rule.severity}.",
        f"*What it finds.* {page.finds}",
        f"*Why it matters.* {page.why}",
        *(f"Bad:\n\n```text\n{example.shown}\n```" for example in page.bad),
        *(f"Good:\n\n```text\n{example.shown}\n```" for example in page.good),
        f"*When to ignore it.* {page.ignore}",
        _handling(page, rule),
    ]
    return "\n\n".join(parts) + "\n"


def _handling(page: Page, rule: Rule) -> str:
    """How to set its limit and how to waive it."""
    said = []
    if page.bound:
        said.append(f"Its limit is set by a line such as `{page.bound}`, which is what it is by default.")
    if rule.check is not None:
        said.append(f'To let one pass: `allow {rule.name} on NAME because "..."`.')
    else:
        said.append("It cannot be waived: what it marks must be mended.")
    return " ".join(said)
