"""`shuntwise COMMAND ...`: the options of every command, and what becomes of its exit status.

0: clean. 1: findings of severity error (or solvers that disagree, a board at fault). 2: wrong usage, or a file or
program that is not there. 3: a fault of shuntwise itself. A traceback is shown only when SHUNTWISE_TRACEBACK is set.
"""

from __future__ import annotations

import argparse
import codecs
import errno
import gc
import io
import os
import sys
from collections.abc import Callable, Sequence
from contextlib import suppress
from importlib import import_module

from shuntwise import LANGUAGE, __version__

COMMANDS: dict[str, str] = {
    "build": "check a design, and write its netlist, response table and plots into a folder",
    "check": "look for mistakes in designs, and in boxes' own files",
    "netlist": "write a SPICE netlist",
    "response": "print what reaches each driver, and the impedance, over frequency",
    "spread": "say how far builds differ within the tolerances of their parts",
    "crosscheck": "compare the built-in solver with a SPICE simulator",
    "read": "read a circuit aloud, for proof-reading against a schematic",
    "bench": "say what a board must read on the bench, and what is wrong with one that reads otherwise",
    "watch": "show a design while it is written, anew after every save",
    "explain": "say what a finding means and what to do",
    "completion": "print the completion script for a shell",
}

CLEAN, FINDINGS, USAGE, FAULT = 0, 1, 2, 3


class Faulty(Exception):
    """What a command was given has errors, which have been shown. Exit status 1."""


class Refused(Exception):
    """A command cannot go on: what is wrong, and what to do. Exit status 2."""

    def __init__(self, message: str, help: str = "") -> None:
        super().__init__(message)
        self.help = help


def parser() -> argparse.ArgumentParser:
    """The whole command line. Building it imports nothing heavy."""
    top = argparse.ArgumentParser(
        prog="shuntwise",
        description="Compile the text of a passive crossover: check it, emit a SPICE netlist, solve it.",
        epilog="Example: shuntwise build examples/13-harbour-stage.shunt",
    )
    top.add_argument("--version", action="version", version=f"shuntwise {__version__}, language {LANGUAGE}")
    commands = top.add_subparsers(dest="command", metavar="COMMAND", required=True)

    def command(name: str, example: str) -> argparse.ArgumentParser:
        return commands.add_parser(
            name,
            help=COMMANDS[name],
            description=COMMANDS[name][0].upper() + COMMANDS[name][1:] + ".",
            epilog=f"Example: {example}",
        )

    build = command("build", "shuntwise build wedge.shunt -o wedge-out")
    _design(build)
    _box(build)
    _without_layout(build)
    _sweep(build)
    _below(build, "the plot of levels")
    build.add_argument("--boards", type=int, default=1, metavar="N", help="count parts for so many boards as well (1)")
    build.add_argument("--paper", choices=("a4", "letter"), default="a4", help="paper of the binder (a4)")
    build.add_argument("--date", default="", metavar="DATE", help="date that the binder bears, such as 2026-11-30")
    build.add_argument("--bench", action="store_true", help="put the sheet for the bench into the binder")
    build.add_argument("--ratings", action="store_true", help="write ratings beside the parts of the schematic")
    build.add_argument("-o", "--output", metavar="FOLDER", help="folder to write (FILE's name with -out if not given)")
    _json(build)

    check = command("check", "shuntwise check wedge.shunt boxes/ --fix")
    check.add_argument(
        "paths", nargs="+", metavar="PATH", help="files of designs (*.shunt) and boxes (*.box), or folders"
    )
    _variant(check)
    _box(check)
    check.add_argument("--fix", action="store_true", help="apply the fixes that are safe, then check again")
    check.add_argument("--repair", action="store_true", help="also apply the repairs of layouts, then check again")
    check.add_argument("--as-include", action="store_true", help="check a file of parts, networks or limits by itself")
    check.add_argument("--unrun", action="store_true", help="name each check that could not run")
    form = check.add_mutually_exclusive_group()
    form.add_argument("--json", action="store_true", help="print the findings as JSON")
    form.add_argument("--sarif", action="store_true", help="print the findings as SARIF 2.1.0")
    form.add_argument("--annotations", action="store_true", help="print lines that code hosts show beside the text")

    netlist = command("netlist", "shuntwise netlist wedge.shunt | tee wedge.cir")
    _design(netlist)
    _box(netlist)
    _without_layout(netlist)
    _sweep(netlist)
    netlist.add_argument(
        "--subcircuit",
        action="store_true",
        help="the crossover and each driver as subcircuits, for a larger simulation",
    )
    _output(netlist)

    response = command("response", "shuntwise response wedge.shunt --from 200 --to 8000 --per-decade 12")
    _design(response)
    _box(response)
    _without_layout(response)
    _sweep(response, per_decade=6)
    forms = response.add_mutually_exclusive_group()
    forms.add_argument("--csv", action="store_true", help="print comma-separated values")
    forms.add_argument("--json", action="store_true", help="print JSON")
    response.add_argument("--plot", metavar="FILE", help="also draw the levels into this file, .svg or .png")
    _below(response, "that plot")
    _output(response)

    spread = command("spread", "shuntwise spread wedge.shunt --builds 2000 -o wedge-spread")
    _design(spread)
    _box(spread)
    _without_layout(spread)
    spread.add_argument("--builds", type=int, default=10_000, metavar="N", help="random builds to solve (10000)")
    spread.add_argument("--seed", type=int, default=1, metavar="S", help="the same seed draws the same builds (1)")
    spread.add_argument(
        "--distribution",
        choices=("uniform", "normal"),
        default="uniform",
        help="of values within a tolerance: all as likely, or normal with the tolerance as three standard deviations",
    )
    spread.add_argument("-o", "--output", metavar="FOLDER", help="also write report, bands and plots into this folder")
    _json(spread)

    crosscheck = command("crosscheck", "shuntwise crosscheck wedge.shunt --engine gnucap")
    _design(crosscheck)
    _without_layout(crosscheck)
    _sweep(crosscheck)
    crosscheck.add_argument("--engine", choices=("ngspice", "gnucap"), default="ngspice", help="the simulator to run")
    crosscheck.add_argument(
        "--bound", type=float, metavar="RATIO", help="another bound for the deviation; needs --because"
    )
    crosscheck.add_argument("--because", metavar="REASON", help="why another bound is right")
    _json(crosscheck)

    read = command("read", "shuntwise read wedge.shunt")
    _design(read)
    _json(read)

    bench = command("bench", "shuntwise bench wedge.shunt wedge-7.box --ask")
    _design(bench)
    bench.add_argument("readings", nargs="?", metavar="BOX", help="the file of a box (*.box), with what it read")
    bench.add_argument("--next", action="store_true", help="say which reading tells most now")
    bench.add_argument("--ask", action="store_true", help="ask for reading after reading, and keep them in BOX")
    bench.add_argument("--paper", choices=("a4", "letter"), default="a4", help="paper of the sheet (a4)")
    bench.add_argument("-o", "--output", metavar="FOLDER", help="also write the sheet into this folder, to print")
    _json(bench)

    watch = command("watch", "shuntwise watch wedge.shunt")
    watch.add_argument("file", metavar="FILE", help="the design")
    _variant(watch)
    watch.add_argument("--no-browser", action="store_true", help="print the page's address, and open no browser")
    watch.add_argument("--ratings", action="store_true", help="write ratings beside the parts of the schematic")
    watch.add_argument("-o", "--output", metavar="FOLDER", help="write the pictures into this folder instead")

    explain = command("explain", "shuntwise explain loose-node")
    explain.add_argument("name", nargs="?", metavar="NAME", help="the finding's name; without it all are listed")
    _json(explain)

    completion = command(
        "completion", "shuntwise completion bash > ~/.local/share/bash-completion/completions/shuntwise"
    )
    completion.add_argument("shell", choices=("bash", "zsh", "tcsh"))
    return top


def _design(command: argparse.ArgumentParser) -> None:
    command.add_argument("file", metavar="FILE", help="the design")
    _variant(command)


def _box(command: argparse.ArgumentParser) -> None:
    command.add_argument("--box", metavar="FILE", help="take variant and measured parts of a box from its own file")


def _without_layout(command: argparse.ArgumentParser) -> None:
    command.add_argument(
        "--without-layout", action="store_true", help="leave out the resistance of the wires of a box that is laid out"
    )


def _variant(command: argparse.ArgumentParser) -> None:
    command.add_argument("--variant", metavar="NAME", help="take this variant of the design")
    command.add_argument(
        "--set",
        action="append",
        default=[],
        metavar="NAME=VALUE",
        dest="settings",
        help="try a value, such as L1=0.75mH",
    )


def _sweep(command: argparse.ArgumentParser, per_decade: int = 100) -> None:
    command.add_argument(
        "--from", dest="from_hz", default="20 Hz", metavar="FREQUENCY", help="lowest frequency (20 Hz)"
    )
    command.add_argument("--to", dest="to_hz", default="20 kHz", metavar="FREQUENCY", help="highest frequency (20 kHz)")
    command.add_argument(
        "--per-decade", type=int, default=per_decade, metavar="N", help=f"points to a factor of ten ({per_decade})"
    )


def _below(command: argparse.ArgumentParser, plot: str) -> None:
    for name in ("phase", "group delay"):
        option = "--" + name.replace(" ", "-")
        command.add_argument(
            option, action="append_const", const=name, dest="below", default=[], help=f"draw the {name} into {plot}"
        )


def _output(command: argparse.ArgumentParser) -> None:
    command.add_argument("-o", "--output", metavar="FILE", help="write to this file instead of the screen")


def _json(command: argparse.ArgumentParser) -> None:
    command.add_argument("--json", action="store_true", help="print JSON")


def main(arguments: Sequence[str] | None = None) -> int:
    """Run one command and return the exit status."""
    ready_streams()
    options = parser().parse_args(arguments)
    # The solver uses no matrix library; threads that one would start and never need make every start slower.
    os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")
    # A command lives for a moment: looking for cycles in the thousands of objects that imports make is time lost.
    gc.set_threshold(100_000, 50, 50)
    try:
        run: Callable[[argparse.Namespace], int] = import_module(f"shuntwise.cli.{options.command}").run
        status = run(options)
        sys.stdout.flush()
        return status
    except Faulty:
        return FINDINGS
    except Refused as refusal:
        complain(str(refusal), refusal.help)
        return USAGE
    except BrokenPipeError:
        drop_output()  # whoever reads it has had enough; nothing more can be said to them
        return CLEAN
    except KeyboardInterrupt:
        complain("interrupted", "")
        return 130
    except OSError as error:
        if error.filename is not None:
            return _fault(error)
        drop_output()  # files of the user's are read and written elsewhere, so this was the screen
        complain(
            f"the output cannot be written: {(error.strerror or str(error)).lower()}",
            "send it to a file, or make room where it goes",
        )
        return USAGE
    except Exception as fault:
        return _fault(fault)


def _fault(fault: Exception) -> int:
    """The last line of defence: our bug, told without a traceback."""
    if os.environ.get("SHUNTWISE_TRACEBACK"):
        raise fault
    complain(*told_fault(fault))
    return FAULT


def told_fault(fault: Exception) -> tuple[str, str]:
    """A bug of ours in words, and what to do."""
    return (
        f"a fault in shuntwise itself: {type(fault).__name__}: {str(fault)[:200]}",
        "please report it with the design that causes it (SHUNTWISE_TRACEBACK=1 shows where)",
    )


def complain(message: str, help_text: str) -> None:
    """A message and its remedy on the error output, as far as that can be reached."""
    from shuntwise.diagnostics.terminal import visible

    with suppress(OSError):
        print(f"shuntwise: {visible(message)}", file=sys.stderr)
        if help_text:
            print(f"  {visible(help_text)}", file=sys.stderr)


# --- the screen


class _Closed(io.TextIOBase):
    """The output of a process that was started without one."""

    def write(self, text: str) -> int:
        raise OSError(errno.EBADF, os.strerror(errno.EBADF))


_PLAIN = {"Ω": "ohm", "µ": "u", "μ": "u", "−": "-", "–": "-", "→": "->", "·": "*", "×": "x", "°": " deg"}


def _in_plain_letters(error: UnicodeError) -> tuple[str, int]:
    """What is sent for characters that the screen's encoding lacks: the units in letters, the rest as `?`."""
    assert isinstance(error, UnicodeEncodeError)
    return "".join(_PLAIN.get(char, "?") for char in error.object[error.start : error.end]), error.end


def ready_streams() -> None:
    """Make sure that whatever is printed can be sent, or fails as what it is."""
    codecs.register_error("plain-letters", _in_plain_letters)
    if sys.stdout is None:
        os.open(os.devnull, os.O_WRONLY)  # so that no file that is opened later takes the screen's number
        sys.stdout = _Closed()
    if sys.stderr is None:
        sys.stderr = open(os.devnull, "w", encoding="utf-8")  # noqa: PTH123, SIM115 - for the life of the process
    for stream in (sys.stdout, sys.stderr):
        if isinstance(stream, io.TextIOWrapper):
            stream.reconfigure(errors="plain-letters")


def drop_output() -> None:
    """Send what is still to be printed nowhere, so that the end of the process does not fail over it."""
    with suppress(OSError, ValueError, AttributeError):
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
