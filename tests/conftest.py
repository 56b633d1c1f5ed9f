"""How every test runs: on how many workers, with what in common, properties without a deadline."""

from collections.abc import Iterator
from functools import cache
from pathlib import Path

import pytest
from hypothesis import settings
from playwright.sync_api import Browser
from xdist.remote import Producer  # type: ignore[import-untyped]
from xdist.scheduler import LoadScopeScheduling  # type: ignore[import-untyped]

from tests.chromium import chromium

settings.register_profile("house", deadline=None, derandomize=True, database=None)  # machines are shared
settings.load_profile("house")

HERE = Path(__file__).parent

# Files that name one of these need something costly: one worker runs them all, so that it is made once.
TOGETHER = {
    "demonstration": ("from tests.demo.built import", "from tests.cli.classwork import"),
    "wheel": ("pytest.mark.wheel",),
}

# Laws try on thousands of clients what the examples beside them run once; to trace each line of them shows
# nothing new and takes three times as long.
UNTRACED = tuple(f"judge/test_{name}" for name in ("laws", "further_laws", "change_laws", "draft_faults"))


class Workers(LoadScopeScheduling):  # type: ignore[misc]
    """Hands out one test at a time, but what belongs together to one worker."""

    def _split_scope(self, nodeid: str) -> str:
        text = _text_of(nodeid.partition("::")[0])
        found = [group for group, words in TOGETHER.items() if any(word in text for word in words)]
        return found[0] if found else nodeid


@cache
def _text_of(name: str) -> str:
    return (HERE.parent / name).read_text(encoding="utf-8")


def pytest_xdist_make_scheduler(config: pytest.Config, log: Producer) -> Workers:
    """Who runs what, where there are several workers."""
    return Workers(config, log)


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Tell coverage what to leave alone."""
    for item in items:
        if item.path.relative_to(HERE).as_posix().startswith(UNTRACED):
            item.add_marker(pytest.mark.no_cover)


@pytest.fixture(scope="session")
def browser() -> Iterator[Browser]:
    """Chromium, started once: its driver cannot run twice in one process."""
    with chromium() as started:
        yield started
