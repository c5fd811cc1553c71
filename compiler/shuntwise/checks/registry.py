"""Every finding there is: one plain list of the modules that hold them, in the order in which they run.

To add a rule, write its module, import it here, and run the generator of the reference pages. A name
that has been retired moves to `RETIRED` and is never used again.
"""

from __future__ import annotations

from collections.abc import Mapping
from types import ModuleType

from shuntwise.checks.rule import Rule
from shuntwise.checks.wiring import loose_node
from shuntwise.model.resolve import Catalogue

MODULES: tuple[ModuleType, ...] = (loose_node,)

RETIRED: tuple[str, ...] = ()

RULES: Mapping[str, Rule] = {module.RULE.name: module.RULE for module in MODULES}
PAGES: Mapping[str, ModuleType] = {module.RULE.name: module for module in MODULES}

CATALOGUE = Catalogue(
    waivable=tuple(rule.name for rule in RULES.values() if rule.check is not None),
    limits={rule.name: rule.bound.dimension for rule in RULES.values() if rule.bound is not None},
)
