"""`shuntwise explain`: the page of a finding, or the list of all findings."""

from __future__ import annotations

import argparse
import json

from shuntwise.checks.page import page_of, render
from shuntwise.checks.registry import RULES
from shuntwise.cli.main import CLEAN, Refused
from shuntwise.syntax.words import nearest


def run(options: argparse.Namespace) -> int:
    name = options.name
    if name is None:
        pages = {rule.name: page_of(rule.name).title for rule in RULES.values()}
        if options.json:
            print(
                json.dumps(
                    [{"name": n, "severity": str(RULES[n].severity), "title": t} for n, t in pages.items()], indent=1
                )
            )
        else:
            width = max(map(len, pages))
            print("\n".join(f"{rule.name:{width}}  {rule.severity:7}  {pages[rule.name]}" for rule in RULES.values()))
        return CLEAN
    if name not in RULES:
        close = nearest(name, RULES)
        raise Refused(
            f"no finding is called `{name}`",
            f"a similar one exists: {close}" if close else "`shuntwise explain` lists all findings",
        )
    text = render(page_of(name), RULES[name])
    print(
        json.dumps({"name": name, "severity": str(RULES[name].severity), "page": text}, indent=1)
        if options.json
        else text
    )
    return CLEAN
