"""How every test runs: on how many workers, with what in common, properties without a deadline."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from hypothesis import settings
from playwright.sync_api import Browser

from tests.chromium import chromium

settings.register_profile("house", deadline=None, derandomize=True, database=None)  # machines are shared
settings.load_profile("house")

HERE = Path(__file__).parent

# Who takes anything of these needs the whole demonstration: one worker runs them all, and makes it once.
MAKE_THE_DEMONSTRATION = {"tests.demo.built", "tests.cli.classwork"}

# Laws try on thousands of clients what the examples beside them run once; to trace each line of them shows
# nothing new and takes three times as long.
UNTRACED = tuple(f"judge/test_{name}" for name in ("laws", "further_laws", "change_laws", "draft_faults"))


@pytest.hookimpl(tryfirst=True)  # the workers read the groups in their own hook
def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Tell the workers what belongs together, and coverage what to leave alone."""
    for item in items:
        taken = {getattr(one, "__module__", "") for one in vars(getattr(item, "module", item)).values()}
        if taken & MAKE_THE_DEMONSTRATION:
            item.add_marker(pytest.mark.xdist_group("demonstration"))
        if item.get_closest_marker("wheel"):
            item.add_marker(pytest.mark.xdist_group("wheel"))
        if item.path.relative_to(HERE).as_posix().startswith(UNTRACED):
            item.add_marker(pytest.mark.no_cover)


@pytest.fixture(scope="session")
def browser() -> Iterator[Browser]:
    """Chromium, started once: its driver cannot run twice in one process."""
    with chromium() as started:
        yield started
