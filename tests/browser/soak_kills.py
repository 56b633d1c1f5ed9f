"""Two hundred browsers killed while somebody answers: run by `make soak`, which prints the figures."""

from pathlib import Path

import pytest
from playwright.sync_api import Browser

from tests.browser.doomed import SURE, figures
from tests.browser.test_kills import doomed
from tests.render.sample_site import built

pytestmark = pytest.mark.browser
KILLS = 100


@pytest.mark.parametrize("place", ["folder", "server"])
def test_many_kills_lose_nothing_old(browser: Browser, served: str, tmp_path: Path, place: str) -> None:
    """A hundred from a folder and a hundred from a server, each in one profile that lives on."""
    root = served if place == "server" else f"{built().as_uri()}/"
    one = doomed(browser, tmp_path / "profile", root, 200)
    for _ in range(KILLS):
        one.once()
    one.last()
    print(f"\n{place}: {figures(one.kills)}")
    assert len(one.kills) == KILLS
    assert max(kill.lost for kill in one.kills) < SURE
