"""What the commands share: designs read and compiled, sweeps read, findings shown."""

from __future__ import annotations

import argparse
import os
import sys
from collections.abc import Iterable, Iterator, Sequence
from contextlib import contextmanager, suppress
from pathlib import Path

from shuntwise.checks.registry import FAMILY_OF
from shuntwise.cli.main import CLEAN, FINDINGS, Faulty, Refused
from shuntwise.diagnostics.diagnostic import Diagnostic, NotChecked, Severity
from shuntwise.loading import Unreadable, read_box, read_design
from shuntwise.model.box import Box
from shuntwise.model.variants import split
from shuntwise.network.network import Network
from shuntwise.network.sweep import Sweep
from shuntwise.pipeline import Compilation
from shuntwise.settings import SettingUnclear, read_frequency, read_settings, settings_of
from shuntwise.syntax.words import nearest
from shuntwise.workspace import Workspace

BOX_ENDING = ".box"


@contextmanager
def refusing() -> Iterator[None]:
    """What cannot be read ends the command with a message and exit status 2."""
    try:
        yield
    except (Unreadable, SettingUnclear) as error:
        raise Refused(str(error), error.help) from None


def open_design(options: argparse.Namespace) -> Workspace:
    """The design file of a command, whose variant and tried values can be had.

    With `--box` the box's variant and measured parts are put into the options, before the tried values. Raises Faulty
    where its file has errors.
    """
    with refusing():
        work = Workspace(options.file, on_boards=not getattr(options, "without_layout", False))
        read_settings(options.settings)
    require_variant(work, options.variant)
    if getattr(options, "box", None):
        with refusing():
            found = read_box(options.box, of=options.file)
        show(found.findings)
        if found.failed or found.box is None:
            raise Faulty
        put_box(options, found.box)
    return work


def put_box(options: argparse.Namespace, box: Box) -> None:
    """Put variant and measured parts of a box into the options of a command; what was typed goes over its parts."""
    if options.variant is not None and split(options.variant) != split(box.variant):
        words = f"of the variant `{box.variant}`" if box.variant else "of the design itself, not of a variant"
        raise Refused(f"the box is {words}", "leave --variant out, or name the file of another box")
    options.variant, options.settings = box.variant, [*settings_of(box), *options.settings]
    options.box_name = box.name


def name_of_box(options: argparse.Namespace) -> str:
    """What the box is called that `open_design` has taken; empty without one."""
    return str(getattr(options, "box_name", ""))


def require_variant(work: Workspace, name: str | None) -> None:
    """Refuse a variant that the design does not have."""
    if name is not None and not work.has(name):
        words = name.split("+")
        own = [one for one in work.variants if one.startswith(f"{name}.")]
        if all(word in work.variants for word in words):
            raise Refused(f"`{name}` names one thing twice", "one variant, and one position of each choice")
        if own:
            raise Refused(f"`{name}` is a choice, not a variant", f"name its position: {', '.join(own)}")
        close = nearest(name, work.variants)
        known = "it has " + ", ".join(work.variants) if work.variants else "it has none"
        help_text = f"a similar one exists: {close}" if close else known
        raise Refused(f"the design has no variant called `{name}`", help_text)


def compile_file(options: argparse.Namespace) -> Compilation:
    """One design file, one variant, all passes."""
    return open_design(options).compilation(options.variant, options.settings)


def design_files(paths: Iterable[str]) -> Iterator[str]:
    """The files of designs and boxes that the paths name; a folder stands for the *.box files in it and below, and
    the *.shunt files that no other of them includes.
    """
    for path in paths:
        if not os.path.isdir(path):  # noqa: PTH112 - Path.is_dir raises where a name is too long
            yield path
            continue
        root = Path(os.path.realpath(path))
        designs, boxes = (_below(Path(path), root, pattern) for pattern in ("*.shunt", f"*{BOX_ENDING}"))
        if not designs and not boxes:
            raise Refused(f"the folder `{path}` holds no design", "design files end in .shunt, those of boxes in .box")
        yield from _not_included(designs)
        yield from boxes


def _below(folder: Path, root: Path, pattern: str) -> list[str]:
    return sorted(str(file) for file in folder.rglob(pattern) if file.is_file() and _inside(file, root))


def _not_included(files: list[str]) -> Iterator[str]:
    """Those that are a design of their own; of files that include one another in a circle each is."""
    included: dict[str, set[str]] = {}
    for file in files:
        included[os.path.realpath(file)] = set()
        with suppress(Exception):  # what is wrong with the file is told when it is checked
            collected, _ = read_design(file)
            included[os.path.realpath(file)] = {source.file for source in collected.sources}
    for file in files:
        real = os.path.realpath(file)
        if not any(real in beside and other not in included[real] for other, beside in included.items()):
            yield file


def _inside(file: Path, root: Path) -> bool:
    """Links that lead out of the folder are not followed."""
    return Path(os.path.realpath(file)).is_relative_to(root)


def read_sweep(options: argparse.Namespace) -> Sweep:
    """The frequencies that the options ask for."""
    with refusing():
        from_hz, to_hz = read_frequency(options.from_hz), read_frequency(options.to_hz)
    if options.per_decade > 10_000:
        raise Refused("--per-decade is above 10000", "100 show every detail of a crossover")
    try:
        return Sweep(from_hz, to_hz, options.per_decade)
    except ValueError as error:
        raise Refused(str(error), "for example --from 20 --to 20kHz --per-decade 24") from None


def show(
    findings: Sequence[Diagnostic],
    not_checked: Sequence[NotChecked] = (),
    *,
    to_stderr: bool = True,
    unrun: bool = False,
) -> None:
    """Print findings for a person: colour on a terminal only, as wide as the terminal.

    `unrun`: name the checks that could not run one by one.
    """
    if not findings and not not_checked:
        return
    import shutil

    from shuntwise.diagnostics.text import render_text

    stream = sys.stderr if to_stderr else sys.stdout
    colour = stream.isatty() and "NO_COLOR" not in os.environ and os.environ.get("TERM") != "dumb"
    width = shutil.get_terminal_size((100, 24)).columns if stream.isatty() else 100
    print(render_text(findings, not_checked, width=min(width, 120), colour=colour, unrun=unrun), file=stream, end="")


def require_network(compilation: Compilation) -> bool:
    """Show what was found; true if the text and the wiring are sound, so that there is something to solve.

    Errors in the numbers (a rating too low, an expectation unmet) do not stop a command that shows numbers.
    """
    sound = isinstance(compilation.lowered, Network) and not any(map(_blocks, compilation.findings))
    show(compilation.findings, () if sound else compilation.not_checked)
    return sound


def _blocks(finding: Diagnostic) -> bool:
    return finding.severity is Severity.ERROR and FAMILY_OF[finding.name] in ("language", "wiring", "drivers")


def status(compilation: Compilation) -> int:
    """The exit status of a command that has done its job: its findings still count."""
    return FINDINGS if compilation.failed else CLEAN
