"""Browsers killed outright while somebody answers lose nothing older than a second."""

import random
from pathlib import Path

import pytest
from playwright.sync_api import Browser

from tests.browser.codes import code_for
from tests.browser.doomed import SURE, Doomed, figures
from tests.render.sample_site import built

pytestmark = pytest.mark.browser
KILLS = 4
CODE = code_for("A")


def doomed(browser: Browser, profile: Path, root: str, seed: int) -> Doomed:
    """Somebody at version A of the sample test, in a profile of their own."""
    page, name = f"{root}tests/final-a.html#code={CODE}", f"caseloom/k7q2m9xa/final/A/{CODE}"
    return Doomed(browser.browser_type, profile, page, name, random.Random(seed))  # noqa: S311 - moments, no secrets


@pytest.mark.parametrize("place", ["folder", "server"])
def test_a_kill_loses_nothing_old(browser: Browser, served: str, tmp_path: Path, place: str) -> None:
    """At random moments, from a folder and from a server; the same profile opened again each time."""
    root = served if place == "server" else f"{built().as_uri()}/"
    one = doomed(browser, tmp_path / "profile", root, 4)
    for _ in range(KILLS):
        one.once()
    one.last()
    print(place, figures(one.kills))
    assert all(kill.answers for kill in one.kills if kill.after > SURE)
    assert max(kill.lost for kill in one.kills) < SURE
