"""`shuntwise bench`: what a board must read on the bench, what is wrong with one that does not, what to read next.

Exit status: 0 where nothing is wrong with the board (or nothing was read), 1 where something is.
"""

from __future__ import annotations

import argparse
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING, Any

from shuntwise.cli.main import CLEAN, FINDINGS
from shuntwise.cli.on_bench import SOUND, Subject, of, read, should_be
from shuntwise.cli.output import as_json, put_folder, screen
from shuntwise.cli.progress import progress
from shuntwise.cli.reading import status
from shuntwise.diagnostics.terminal import visible
from shuntwise.documents.page import Chapter, Front, Group, Heading, Paragraph
from shuntwise.files import safe_stem
from shuntwise.model.box import Box, Taken

if TYPE_CHECKING:
    from shuntwise.bench.verdict import BenchSheet, Proposal, SheetLine, Suspected, Verdict


def run(options: argparse.Namespace) -> int:
    if options.ask:
        from shuntwise.cli.asking import ask

        return ask(options)
    subject = of(options)
    if subject is None:
        return FINDINGS
    with progress("working out what every fault does to every reading"):
        told = _told(subject, options)
    written = _write(subject, told, options) if options.output else ""
    with screen(f"the files are in {options.output}" if written else "send it to a file, or make room where it goes"):
        print(
            as_json({"box": subject.box.name if subject.box is not None else None, **_plain(told, subject.inputs)})
            if options.json
            else _text(subject, told),
            end="\n" if options.json else "",
        )
        if written and not options.json:
            print(f"\n{written}")
    wrong = told.verdict is not None and told.verdict.outcome not in SOUND
    return max(status(subject.compilation), FINDINGS if wrong else CLEAN)


# --- what is told


@dataclass(frozen=True)
class Told:
    """`beside` are what the readings of the box should be, in their order. Of a design alone there is its sheet."""

    sheet: BenchSheet
    taken: tuple[Taken, ...] = ()
    beside: tuple[SheetLine, ...] = ()
    sister: Box | None = None
    verdict: Verdict | None = None
    proposal: Proposal | None = None
    proposed: bool = False


def _told(subject: Subject, options: argparse.Namespace) -> Told:
    bench, box = subject.bench, subject.box
    taken = read(box)
    return Told(
        sheet=bench.sheet,
        taken=taken,
        beside=should_be(bench, taken),
        sister=box.yardstick if box is not None else None,
        verdict=bench.judge(taken) if box is not None else None,
        proposal=bench.propose(taken) if options.next else None,
        proposed=options.next,
    )


def verdict_groups(told: Told, inputs: int) -> list[Group]:
    """The verdict, the readings beside what they should be, and what to read next."""
    from shuntwise.documents import bench_verdict

    groups: list[Group] = []
    if told.verdict is not None:
        groups += bench_verdict.with_readings(told.verdict, told.taken, told.beside, told.sister, inputs)
    if told.proposed:
        found = told.proposal
        groups.append(bench_verdict.next_reading(found, inputs) if found else (Paragraph(bench_verdict.NOTHING_NEXT),))
    return groups


def _text(subject: Subject, told: Told, *, with_sheet: bool = False) -> str:
    """The verdict and what to read next; the sheet where there is neither, or if it is wanted with them."""
    from shuntwise.documents.aligned import as_text
    from shuntwise.documents.bench_sheet import content

    groups = verdict_groups(told, subject.inputs)
    if with_sheet or not groups:
        groups = [*content(subject.material.circuit, subject.instruments, told.sheet, drawn=False), *groups]
    return as_text([(Heading(subject.title),), *groups])


def _write(subject: Subject, told: Told, options: argparse.Namespace) -> str:
    """Sheet and verdict as PDF, page and text in a folder."""
    from shuntwise.documents.bench_sheet import content
    from shuntwise.documents.binder import BENCH, front
    from shuntwise.documents.flow import flow
    from shuntwise.documents.html import as_html
    from shuntwise.documents.pdf import as_pdf

    material = subject.material
    sheet = tuple(group for group in content(material.circuit, subject.instruments, told.sheet) if group)
    verdict = tuple(verdict_groups(told, subject.inputs))
    chapters = [Chapter("bench", BENCH, sheet), *([Chapter("verdict", "Verdict", verdict)] if verdict else [])]
    bears: Front = front(material)
    sheets, places = flow(chapters, bears, options.paper)
    name = f"{safe_stem(material.stem)}-bench"
    files = {
        f"{name}.pdf": as_pdf(sheets, material.title, places, ""),
        f"{name}.html": as_html(chapters, bears).encode(),
        f"{name}.txt": _text(subject, told, with_sheet=True).encode(),
    }
    put_folder(files, Path(options.output))
    return visible(f"written to {options.output}: {', '.join(sorted(files))}")


# --- as plain values


def _plain(told: Told, inputs: int) -> dict[str, Any]:
    sheet, verdict = told.sheet, told.verdict
    return {
        "sheet": {
            "lines": [_line(line) for line in sheet.lines],
            "dangers": sheet.dangers,
            "together": sheet.together,
            "most_v": sheet.most_v,
            "series_w": sheet.series_w,
            "dummy_w": sheet.dummy_w,
            "fault_a": sheet.fault_a,
            "fault_w": sheet.fault_w,
        },
        "readings": [
            {**_line(line), "read": one.value, "within": line.allows(one.value)}
            for one, line in zip(told.taken, told.beside, strict=True)
        ],
        "verdict": None
        if verdict is None
        else {
            "outcome": verdict.outcome,
            "sound": verdict.sound,
            "suspects": [_suspect(one) for one in verdict.suspects],
            "pair": [_suspect(one) for one in verdict.pair] if verdict.pair else None,
            "missing": [line.reading.words(inputs) for line in verdict.missing],
        },
        "next": None
        if told.proposal is None
        else {
            **_line(told.proposal.line),
            "answers": [
                {"from": one.low, "to": one.high, "title": one.title, "share": one.share}
                for one in told.proposal.answers
            ],
        },
    }


def _line(line: SheetLine) -> dict[str, Any]:
    """Ohm, volt and hertz; null is an open circuit, and no input for a resistance."""
    reading = line.reading
    return {
        "quantity": reading.quantity,
        "plus": reading.plus,
        "minus": reading.minus,
        "loads": reading.loads,
        "into": reading.fed or None,
        "freq_hz": reading.freq_hz or None,
        "expected": line.expected,
        "low": line.low,
        "high": line.high,
    }


def _suspect(one: Suspected) -> dict[str, Any]:
    return {
        "family": one.fault.family,
        "owners": one.fault.owners,
        "points": one.fault.points,
        "to": one.fault.to or None,
        "title": one.title,
        "size": one.size or None,
        "share": one.share,
        "same": one.same,
        "where": one.where,
        "proof": one.proof,
        "effects": one.effects,
    }
