"""How every test runs: properties without a deadline, since machines are shared; one browser for all."""

from collections.abc import Iterator

import pytest
from hypothesis import settings
from playwright.sync_api import Browser

from tests.chromium import chromium

settings.register_profile("house", deadline=None, derandomize=True, database=None)
settings.load_profile("house")


@pytest.fixture(scope="session")
def browser() -> Iterator[Browser]:
    """Chromium, started once: its driver cannot run twice in one process."""
    with chromium() as started:
        yield started
