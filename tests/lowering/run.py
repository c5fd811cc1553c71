"""Hold the product against the second lowering on the examples and on random texts:

python tests/lowering/run.py [--texts 2000] [--seed 0]

prints the table; the exit status is 1 if they disagree anywhere, and each disagreement is printed as a smaller text.
"""

from __future__ import annotations

import argparse
import sys
import tempfile
from collections import Counter
from pathlib import Path

ROOT = Path(__file__).parents[2]
sys.path[:0] = [str(ROOT / "compiler"), str(ROOT / "tests")]

from lowering import reference  # noqa: E402
from lowering.comparing import BOUND, Outcome, compare  # noqa: E402
from lowering.minimising import minimise  # noqa: E402
from lowering.texts import Text, make  # noqa: E402


def examples() -> list[tuple[Path, str | None]]:
    """Every example, and each of its variants."""
    found: list[tuple[Path, str | None]] = []
    for path in sorted((ROOT / "examples").rglob("*.shunt")):
        found += [(path, variant) for variant in (None, *reference.variants_of(path.read_text("utf-8")))]
    return found


def outcome_of(text: Text) -> Outcome:
    with tempfile.TemporaryDirectory() as folder:
        return compare(text.write(Path(folder)), text.variant, text.settings)


def row(name: str, outcomes: list[Outcome]) -> str:
    compared = [outcome for outcome in outcomes if not outcome.refused]
    wrong = sum(bool(outcome.wrong) for outcome in outcomes)
    worst = max((outcome.deviation for outcome in compared), default=0.0)
    fits = max((outcome.fit_deviation for outcome in compared), default=0.0)
    return f"{name:24} {len(compared):8} {len(outcomes) - len(compared):8} {wrong:8} {worst:10.1e} {fits:10.1e}"


def main() -> int:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--texts", type=int, default=2000)
    parser.add_argument("--seed", type=int, default=0)
    options = parser.parse_args()
    print(f"bound {BOUND:g}; the last column is how far a fit's stated error is from the one against the exact law")
    print(f"{'':24} {'compared':>8} {'refused':>8} {'wrong':>8} {'worst':>10} {'fits':>10}")
    shipped = [compare(path, variant) for path, variant in examples()]
    print(row("examples and variants", shipped))
    texts = [make(seed) for seed in range(options.seed, options.seed + options.texts)]
    outcomes = [outcome_of(text) for text in texts]
    print(row("random texts", outcomes))
    features: Counter[str] = Counter()
    for text, outcome in zip(texts, outcomes, strict=True):
        features.update(text.features if not outcome.refused else ())
    print("\nfeatures of the random texts that were compared")
    for feature, count in sorted(features.items()):
        print(f"  {feature:44} {count:6}")
    for text, outcome in zip(texts, outcomes, strict=True):
        if outcome.wrong:
            tell(text)
    return int(any(outcome.wrong for outcome in (*shipped, *outcomes)))


def tell(text: Text) -> None:
    """Print the smallest text with a disagreement of this kind."""

    def disagrees(less: Text) -> bool:
        try:
            return bool(outcome_of(less).wrong)
        except (reference.Unreadable, reference.Senseless, reference.Unsolvable, KeyError, ValueError):
            return False

    small = minimise(text, disagrees)
    print(f"\n=== {outcome_of(small).wrong[0]}\nvariant {small.variant}, settings {small.settings}")
    for name, content in small.files.items():
        print(f"--- {name}\n{content.strip()}")


if __name__ == "__main__":
    raise SystemExit(main())
