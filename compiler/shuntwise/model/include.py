"""SyntaxTree -> Collected: included files read and put in place of their `include` lines, data files beside them.

In: a tree and a loader (the only way to other texts). Out: all entries in one list, the texts of the data
files that drivers name, findings on what could not be read, and what was lost in any of the files. Refuses
to know what an entry means, or what a data file says.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field, replace

from shuntwise.diagnostics.diagnostic import Diagnostic, Label
from shuntwise.model import findings
from shuntwise.model.kinds import DRIVER
from shuntwise.source import Source, Span
from shuntwise.syntax import tree as t
from shuntwise.syntax.parser import parse

MOST_FILES = 64
"""A design is one box: more files than this is a mistake or mischief."""


@dataclass(frozen=True)
class Loaded:
    """A text that was found. `key` is the same for the same file by whatever path it was named."""

    source: Source
    key: str


@dataclass(frozen=True)
class NotLoaded:
    """A text that may not or cannot be read: what is wrong, and what to do.

    `one_for_all`: the remedy is done once for all texts of which the same is said, so they make one finding.
    """

    reason: str
    help: str
    one_for_all: bool = False


Loader = Callable[[str, Source, bool], Loaded | NotLoaded]
"""(path as written, the including source, from the shipped library?) -> what was found."""


def nothing_to_include(path: str, source: Source, library: bool) -> NotLoaded:
    """The loader for texts that stand alone."""
    return NotLoaded("there is no folder to include from", "compile the design from a file")


@dataclass(frozen=True)
class Collected:
    """`attached` are the data files that were read, by the source that names them and the name as written."""

    source: Source
    entries: tuple[t.Entry, ...]
    lost: tuple[t.Lost, ...]
    sources: tuple[Source, ...]
    attached: Mapping[tuple[Source, str], Source] = field(default_factory=dict)


def include(tree: t.SyntaxTree, load: Loader, key: str = "") -> tuple[Collected, tuple[Diagnostic, ...]]:
    """Replace every `include` by the entries of the file; a file that includes itself is a finding."""
    gathering = _Gathering(load)
    gathering.take(tree, key, ())
    return (
        Collected(
            tree.source,
            tuple(gathering.entries),
            tuple(gathering.lost),
            tuple(gathering.sources),
            gathering.attached,
        ),
        tuple(gathering.diagnostics),
    )


class _Gathering:
    def __init__(self, load: Loader) -> None:
        self.load = load
        self.entries: list[t.Entry] = []
        self.lost: list[t.Lost] = []
        self.sources: list[Source] = []
        self.diagnostics: list[Diagnostic] = []
        self.asked = 0
        self.tables_missing = 0
        self.told: dict[tuple[str, str, str], int] = {}
        self.taken: dict[str, Span] = {}
        self.attached: dict[tuple[Source, str], Source] = {}
        self.data_files: dict[str, Source] = {}

    def take(self, tree: t.SyntaxTree, key: str, chain: tuple[tuple[str, str], ...]) -> None:
        chain = (*chain, (key, tree.source.name))
        self.sources.append(tree.source)
        self.lost.extend(tree.lost)
        for entry in tree.entries:
            if isinstance(entry, t.Include):
                self.follow(entry, tree.source, chain)
            else:
                self.entries.append(entry)
                self.attach(entry)

    def follow(self, entry: t.Include, source: Source, chain: tuple[tuple[str, str], ...]) -> None:
        at = entry.path.span
        self.asked += 1
        if self.asked >= MOST_FILES:  # with the design itself; thousands of lines must not look at the disk each
            if self.asked == MOST_FILES:
                self.lost.append(t.Lost(frozenset(), at, whole_file=True))
                self.say(
                    findings.error(
                        "include-not-read",
                        at,
                        f"more than {MOST_FILES} files are included",
                        help="a design is one box; put less into it",
                    )
                )
            return
        found = self.load(entry.path.value, source, entry.library)
        if isinstance(found, NotLoaded):
            # What the file would have declared is missing now: its own names cannot be known.
            self.lost.append(t.Lost(frozenset(), at, whole_file=True))
            said = f"`{entry.path.value}` is not included: {found.reason}"
            self.say_not_read(found, findings.error("include-not-read", at, said, label="named here", help=found.help))
            return
        keys = [key for key, _ in chain]
        if found.key in keys:
            names = [name for _, name in chain[keys.index(found.key) :]]
            circle = " -> ".join([*names, found.source.name])
            self.say(
                findings.error(
                    "include-loop",
                    at,
                    f"`{entry.path.value}` includes itself in the end",
                    label="closes the circle",
                    help="take this include out, or move what both files need into a third",
                    why=f"the chain is {circle}",
                )
            )
            return
        if found.key in self.taken:
            self.say(
                findings.error(
                    "included-twice",
                    at,
                    f"`{entry.path.value}` is included twice",
                    label="again",
                    places=(Label(self.taken[found.key], "first here"),),
                    help="once is enough, wherever it stands: remove one of the two lines",
                )
            )
            return
        self.taken[found.key] = at
        tree, form = parse(found.source)
        self.diagnostics.extend(form)
        self.take(tree, found.key, chain)

    def attach(self, entry: t.Entry) -> None:
        """Read the data files that a driver names, also one inside a variant."""
        for inner in getattr(entry, "entries", ()):
            self.attach(inner)
        if isinstance(entry, t.DriverDecl):
            for item in entry.items:
                if isinstance(item.value, t.Text) and item.key is not None and item.key.text in DRIVER.files:
                    self.attach_file(item.value)

    def attach_file(self, named: t.Text) -> None:
        wanted = (named.span.source, named.value)
        if wanted in self.attached:
            return
        too_many = NotLoaded(
            f"more than {MOST_FILES} data files are named", "a design is one box; put less into it", True
        )
        found: Loaded | NotLoaded = too_many  # without another look at the disk
        if self.tables_missing < MOST_FILES:
            found = self.load(named.value, named.span.source, False)
        if isinstance(found, Loaded) and found.key not in self.data_files and len(self.data_files) >= MOST_FILES:
            found = too_many
        if isinstance(found, NotLoaded):
            self.tables_missing += 1
            said = f"the table `{named.value}` is not read: {found.reason}"
            self.say_not_read(
                found, findings.error("measured-not-read", named.span, said, label="named here", help=found.help)
            )
            return
        self.attached[wanted] = self.data_files.setdefault(found.key, found.source)

    def say_not_read(self, found: NotLoaded, finding: Diagnostic) -> None:
        """Files that one remedy brings in are one finding, at the first of them."""
        same = (finding.name, found.reason, found.help)
        if found.one_for_all and same in self.told:
            number = self.told[same]
            first = self.diagnostics[number]
            if len(first.places) < MOST_FILES:
                self.diagnostics[number] = replace(first, places=(*first.places, Label(finding.span, "nor is this")))
            return
        self.told[same] = len(self.diagnostics)
        self.say(finding)

    def say(self, finding: Diagnostic) -> None:
        self.diagnostics.append(finding)
