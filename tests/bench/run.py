"""The speed table: everything that the project promises, as ratios taken side by side in one run.

python tests/bench/run.py [--json]
"""

from __future__ import annotations

import argparse
import json
import sys
from pathlib import Path

sys.path[:0] = [str(Path(__file__).parents[2] / "compiler"), str(Path(__file__).parents[1])]

from bench import boards, faults, growth, ladders, sheets, solver, startup


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--json", action="store_true")
    figures = {
        "solver": solver.figures(),
        "start": startup.measure(),
        "ladders": ladders.measure(),
        "growth": growth.measure(),
        "sheets": sheets.measure(),
        "boards": boards.measure(),
        "faults": faults.measure(),
    }
    if parser.parse_args().json:
        print(json.dumps(figures, indent=1))
        return
    print(solver.words(figures["solver"]))
    print(startup.words(figures["start"]))
    print(ladders.words(figures["ladders"]))
    print(growth.words(figures["growth"]))
    print(sheets.words(figures["sheets"]))
    print(boards.words(figures["boards"]))
    print(faults.words(figures["faults"]))


if __name__ == "__main__":
    main()
