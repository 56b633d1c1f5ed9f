"""A card answers every phase and site exactly once."""

from dataclasses import replace

import pytest

from builder.check.checks.grid_filled import check
from builder.place import Place, Places
from tests.check.small_course import evidence
from tests.judge.small import CARDS, PHASES, card, content


def told(*rows: dict[str, object]) -> list[tuple[str, str]]:
    """Where and what is to fix in a card with these rows, beside the small ones."""
    made = content(cards=[*CARDS, card("press", "technique", ["ease"], list(rows))])
    return [(one.file, one.message) for one in check(evidence(rules=made))]


def test_filled_grids_are_silent() -> None:
    """By one row or by several."""
    assert told({"phase": PHASES, "answer": "ok"}) == []
    assert told({"phase": PHASES[:2], "answer": "barred"}, {"phase": PHASES[2:], "answer": "ok"}) == []


def test_an_empty_cell_is_told() -> None:
    """Each phase and site that no row answers."""
    found = told(
        {"phase": PHASES[1:], "answer": "ok"},
        {"phase": ["acute"], "site": ["on", "adjacent", "proximal", "distal"], "answer": "barred"},
    )
    assert found == [("content/cards/press.yml", "The cell acute x remote of Press is empty.")]
    assert len(told()) == 25


@pytest.mark.parametrize("answer", ["ok", "barred"])
def test_a_cell_that_is_filled_twice_is_told(answer: str) -> None:
    """Even where both rows answer alike: one of them would go unread."""
    found = told({"phase": PHASES, "answer": "ok"}, {"phase": ["none"], "site": ["on"], "answer": answer})
    assert found == [("content/cards/press.yml", "The cell none x on of Press is filled twice.")]


def test_a_card_of_the_course_is_told_in_its_own_file() -> None:
    """With the baseline's place and what to do."""
    made = evidence(rules=content(cards=[*CARDS, card("press", "technique", ["ease"], [])]))
    places = {"cards/press.yml": Places(Place("cards/press.yml"))}
    found = next(check(replace(made, course=replace(made.course, places=places))))
    assert (found.file, found.path) == ("cards/press.yml", ("baseline",))
    assert found.remedy == "Give one row that covers it."
