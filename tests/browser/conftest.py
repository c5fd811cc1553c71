"""A browser for all tests: Debian's, driven without a window."""

from __future__ import annotations

import shutil
from collections.abc import Iterator

import pytest
from playwright.sync_api import Browser, sync_playwright


@pytest.fixture(scope="session")
def browser() -> Iterator[Browser]:
    program = shutil.which("chromium")
    assert program is not None, "chromium is not installed (apt install chromium)"
    with sync_playwright() as driver:
        # Pages come from these tests alone, and a sandbox cannot be had where root runs them.
        opened = driver.chromium.launch(executable_path=program, args=["--no-sandbox"])
        yield opened
        opened.close()
