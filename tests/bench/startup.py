"""How long `shuntwise check` of one example takes, cold, beside importing two libraries as a yardstick.

The package is built as a wheel and installed into a fresh folder first, so that the figure is a user's. Run:
python tests/bench/startup.py [--json]
"""

from __future__ import annotations

import argparse
import json
import os
import statistics
import subprocess
import sys
import tempfile
import time
from pathlib import Path

ROOT = Path(__file__).parents[2]
EXAMPLE = ROOT / "examples" / "07-market-horn.shunt"
ROUNDS = 15

PARTS = {
    "python alone": "pass",
    "import lark": "import lark",
    "import networkx": "import networkx",
    "import numpy": "import numpy",
    "import lark, networkx (the yardstick)": "import lark, networkx",
    "import the parser": "import shuntwise.syntax.parser",
    "import the language": "import shuntwise.model.resolve",
    "import the solver": "import shuntwise.response.solve",
    "import the rules": "import shuntwise.checks.registry",
    "import all passes": "import shuntwise.workspace",
    "check one example": "import sys; from shuntwise.cli.main import main; sys.exit(main(['check', sys.argv[1]]))",
}


def installed(folder: Path) -> dict[str, str]:
    """Install a wheel of the project into `folder`; the environment in which to run it."""
    subprocess.run(
        [sys.executable, "-m", "pip", "install", "--quiet", "--no-deps", "--target", str(folder), str(ROOT)], check=True
    )
    environment = {key: value for key, value in os.environ.items() if key != "PYTHONDONTWRITEBYTECODE"}
    return {**environment, "PYTHONPATH": str(folder)}


def measure() -> dict[str, float]:
    """Median whole-process milliseconds of each part, all in turn in one run."""
    times: dict[str, list[float]] = {name: [] for name in PARTS}
    with tempfile.TemporaryDirectory() as name:
        environment = installed(Path(name))
        for round_number in range(ROUNDS + 1):
            for part, code in PARTS.items():
                begin = time.perf_counter()
                subprocess.run(
                    [sys.executable, "-c", code, str(EXAMPLE)],
                    env=environment,
                    cwd=name,
                    check=True,
                    stdout=subprocess.DEVNULL,
                )
                if round_number:  # the first round fills the caches of bytecode
                    times[part].append((time.perf_counter() - begin) * 1e3)
    figures = {part: statistics.median(values) for part, values in times.items()}
    figures["ratio"] = figures["check one example"] / figures["import lark, networkx (the yardstick)"]
    return figures


def words(figures: dict[str, float]) -> str:
    """The figures as a table."""
    lines = ["cold start, median milliseconds of the whole process"]
    for name, value in figures.items():
        lines.append(f"  {name:42} {value:8.2f}" + ("   (at most 1.6)" if name == "ratio" else ""))
    return "\n".join(lines)


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--json", action="store_true")
    figures = measure()
    print(json.dumps(figures, indent=1) if parser.parse_args().json else words(figures))


if __name__ == "__main__":
    main()
