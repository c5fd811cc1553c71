"""Do the tests bite? `python tests/mutations/run.py [--seed N] [--count N] [--module FOLDER] [--jobs N] [--json]`

Makes single-line mutations in the numerical folders, each in a copy of the tree, runs the tests chosen for its folder,
and stops at the first that fails. A mutant that no test notices survives. Those of accepted.toml, which change nothing
that anybody could notice, are counted apart, each with its reason. `--again FILE:LINE` judges only those of a sample
that change such a line, as often as it is given.
"""

from __future__ import annotations

import argparse
import json
import os
import random
import shutil
import subprocess
import sys
import tempfile
import tomllib
from collections import Counter
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass
from pathlib import Path
from queue import Queue

ROOT = Path(__file__).parents[2]
sys.path[:0] = [str(ROOT / "tests")]

from mutations.mutants import Mutant, mutants

SOURCES = ROOT / "compiler" / "shuntwise"
GAPS, MESHES, RATINGS = "mutations", "property/test_random_networks.py", "rules/test_ratings.py"
TESTS = {
    "response": ("response", GAPS, "figures/test_nominal.py", "stress", "rules/test_load.py", "tolerance", MESHES),
    "network": ("network", GAPS, "lowering", "drivers", "netlist", "model", "engines", "stress", RATINGS, MESHES),
    "figures": (GAPS, "figures", "tolerance", "documents", "rules"),
    "stress": (GAPS, "stress", "rules/test_load.py", RATINGS, "rules/test_pages.py", "documents"),
    "tolerance": (GAPS, "tolerance", "rules/test_values.py", "rules/test_pages.py", "figures/test_one_owner.py"),
}
"""The folders that are mutated, and where their tests are, the quick ones first."""

MOST_SECONDS = 240
"""A mutant whose tests run longer than this is noticed: it hangs."""


@dataclass(frozen=True)
class Site:
    folder: str
    path: Path
    mutant: Mutant

    @property
    def name(self) -> str:
        return str(self.path.relative_to(SOURCES))

    def words(self) -> str:
        return f"{self.name}:{self.mutant.line}\n  - {self.mutant.before.strip()}\n  + {self.mutant.after.strip()}"


def sites(folders: list[str]) -> list[Site]:
    return [
        Site(folder, path, mutant)
        for folder in folders
        for path in sorted((SOURCES / folder).glob("*.py"))
        for mutant in mutants(path.read_text(encoding="utf-8"))
    ]


def accepted() -> dict[tuple[str, str, str], str]:
    """Why a mutant may survive, by file, line before and line after (without indentation)."""
    with (Path(__file__).parent / "accepted.toml").open("rb") as file:
        rows = tomllib.load(file).get("mutant", [])
    return {(row["file"], row["before"], row["after"]): row["reason"] for row in rows}


def noticed(site: Site, tree: Path) -> bool:
    """Does some test fail in a copy of the tree in which the mutation is made?"""
    target = tree / "compiler" / "shuntwise" / site.path.relative_to(SOURCES)
    sound = target.read_text(encoding="utf-8")
    lines = sound.split("\n")
    lines[site.mutant.line - 1] = site.mutant.after
    target.write_text("\n".join(lines), encoding="utf-8")
    tests = [str(tree / "tests" / name) for name in TESTS[site.folder] if (tree / "tests" / name).exists()]
    environment = {**os.environ, "PYTHONPATH": str(tree / "compiler"), "PYTHONDONTWRITEBYTECODE": "1"}
    command = [sys.executable, "-m", "pytest", "-x", "-q", "-p", "no:cacheprovider", "-p", "no:xdist", *tests]
    try:
        done = subprocess.run(
            command, cwd=tree, env=environment, capture_output=True, timeout=MOST_SECONDS, check=False
        )
    except subprocess.TimeoutExpired:
        return True
    finally:
        target.write_text(sound, encoding="utf-8")
    return done.returncode != 0


def copy_tree(into: Path) -> Path:
    for name in ("compiler", "tests", "examples", "grammar"):
        shutil.copytree(ROOT / name, into / name, ignore=shutil.ignore_patterns("__pycache__"))
    for file in (*ROOT.glob("*.md"), ROOT / "pyproject.toml"):
        shutil.copy(file, into)
    return into


def main() -> int:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--count", type=int, default=200)
    parser.add_argument("--module", action="append", choices=list(TESTS), help="only this folder")
    parser.add_argument("--jobs", type=int, default=os.cpu_count() or 1)
    parser.add_argument("--again", action="append", metavar="FILE:LINE", help="only those of the sample on such a line")
    parser.add_argument("--json", action="store_true")
    options = parser.parse_args()
    every = sites(options.module or list(TESTS))
    chosen = random.Random(options.seed).sample(every, min(options.count, len(every)))
    if options.again:
        chosen = [site for site in chosen if f"{site.name}:{site.mutant.line}" in options.again]
    reasons = accepted()
    counts: Counter[str] = Counter()
    survivors: list[Site] = []
    with tempfile.TemporaryDirectory() as folder, ThreadPoolExecutor(options.jobs) as pool:
        trees: Queue[Path] = Queue()
        for number in range(options.jobs):
            trees.put(copy_tree(Path(folder) / str(number)))

        def judge(site: Site) -> tuple[Site, str]:
            key = (site.name, site.mutant.before.strip(), site.mutant.after.strip())
            if key in reasons:
                return site, "accepted"
            tree = trees.get()
            try:
                return site, "noticed" if noticed(site, tree) else "survived"
            finally:
                trees.put(tree)

        for number, (site, verdict) in enumerate(pool.map(judge, chosen), start=1):
            counts[verdict] += 1
            if number % 20 == 0:
                print(f"{number} of {len(chosen)} judged", file=sys.stderr, flush=True)
            if verdict == "survived":
                survivors.append(site)
                if not options.json:
                    print(site.words(), flush=True)
    judged = counts["noticed"] + counts["survived"]
    if options.json:
        rows = [{"file": s.name, "before": s.mutant.before, "after": s.mutant.after} for s in survivors]
        print(json.dumps({**counts, "of": len(every), "survivors": rows}, indent=2))
    else:
        print(f"{len(chosen)} of {len(every)} mutations: {counts['noticed']} noticed, {counts['survived']} survived, "
              f"{counts['accepted']} accepted; {100 * counts['survived'] / max(1, judged):.1f} % survive")  # fmt: skip
    return 1 if survivors else 0


if __name__ == "__main__":
    raise SystemExit(main())
