"""Which simulators this machine has. Without one its tests are skipped, but not where `CI` is set."""

import os
import shutil

import pytest

from shuntwise.engines.engine import Engine
from shuntwise.engines.gnucap import GNUCAP
from shuntwise.engines.ngspice import NGSPICE


def needs(engine: Engine) -> pytest.MarkDecorator:
    missing = shutil.which(engine.program) is None and not os.environ.get("CI")
    return pytest.mark.skipif(
        missing, reason=f"{engine.program} is not installed (apt install {engine.debian_package})"
    )


EACH_ENGINE = pytest.mark.parametrize(
    "engine", [pytest.param(engine, marks=needs(engine), id=engine.program) for engine in (NGSPICE, GNUCAP)]
)
