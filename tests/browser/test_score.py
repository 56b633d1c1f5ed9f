"""The script scores as Python does: both are held to one file of examples, and to each other."""

from random import Random
from typing import Any

import pytest
from playwright.sync_api import Browser, Page

from builder.render.assets import LOOK
from tests.grade.scoring.golden import EXAMPLES, earned

pytestmark = pytest.mark.browser
SCRIPT = (LOOK / "js" / "score.js").read_text(encoding="utf-8")
ROUNDS = 12


@pytest.fixture
def page(browser: Browser) -> Page:
    """An empty page that knows the script."""
    made = browser.new_page()
    made.add_script_tag(content=SCRIPT)
    return made


def scored(page: Page, examples: list[dict[str, Any]]) -> list[str]:
    """What the script gives for each of these."""
    found: list[str] = page.evaluate(
        "all => all.map(one => caseloom.score(one.question, one.policy, one.value))", examples
    )
    page.close()
    return found


def test_every_example_is_scored_as_in_python(page: Page) -> None:
    """Each of the shared examples, to the very fraction in lowest terms."""
    found = scored(page, EXAMPLES)
    wrong = [
        (one["name"], one["policy"], one["value"], fraction, one["fraction"])
        for fraction, one in zip(found, EXAMPLES, strict=True)
        if fraction != one["fraction"]
    ]
    assert wrong == []
    assert len(found) >= 239


def test_other_answers_are_scored_as_in_python_too(page: Page) -> None:
    """The same questions with answers at random, of whatever shape."""
    chance = Random(0)  # noqa: S311 - the same answers every time
    tried = [{**one, "value": _answer(one, chance)} for one in EXAMPLES for _ in range(ROUNDS)]
    found = scored(page, tried)
    wrong = [
        (one["question"], one["policy"], one["value"], fraction, str(earned(one)))
        for fraction, one in zip(found, tried, strict=True)
        if fraction != str(earned(one))
    ]
    assert wrong == []


def _answer(example: dict[str, Any], chance: Random) -> object:
    question, value = example["question"], example["value"]
    names = question.get("options") or question.get("steps") or [one for one, _ in question.get("votes", [])]
    if question["kind"] == "number":
        digits = "".join(chance.choice("0123456789.,-+ ") for _ in range(chance.randint(0, 6)))
        return digits + chance.choice(("", question["unit"], " cm"))
    if question["kind"] == "match":
        lefts, partners = [left for left, _ in question["pairs"]], question["partners"]
        return [[chance.choice(lefts), chance.choice(partners)] for _ in range(chance.randint(0, 5))]
    if question["kind"] in ("one", "panel"):
        return chance.choice([*names, "made up", value])
    return chance.sample([*names, "made up"], chance.randint(0, len(names)))
