"""A condition as a tree in plain words."""

from typing import Any

import pytest

from builder.model.condition import parse
from builder.render.instructor_condition import Branch, branch
from builder.render.wording import speaker
from tests.render.samples import facts, words

BOOK = facts()
SAY = speaker(words())


def told(written: dict[str, Any]) -> Branch:
    """The tree of a condition as written."""
    return branch(parse(written), {**BOOK.written, **BOOK.facts}, SAY)


@pytest.mark.parametrize(
    ("written", "text"),
    [
        ({"calf_pain": "yes"}, "Calf pain: yes"),
        ({"swelling_trend": ["rising", "steady"]}, "Swelling: still rising or steady"),
        ({"knee_bend": {"below": 90}}, "knee bends to below 90°"),
        ({"written.warmed": "no"}, "Warmed first: no"),
        ({"recorded": "pain"}, "pain at rest must be stated"),
        ({"somewhere": ["one_thing"]}, "somewhere: one_thing"),
    ],
)
def test_a_leaf_is_a_line(written: dict[str, Any], text: str) -> None:
    """A fact with its values, a range, a record; an undeclared name stands as it is."""
    assert told(written) == Branch(text)


def test_what_is_joined_stands_under_its_word() -> None:
    """`a and (b or not c)` can be read in one way only."""
    tree = told({"all": [{"pain": 3}, {"any": [{"calf_pain": "yes"}, {"not": {"pulse_gone": "yes"}}]}]})
    inner = Branch(
        "any of these", (Branch("Calf pain: yes"), Branch("not this", (Branch("Pulse at the foot: yes"),)))
    )
    assert tree == Branch("all of these", (Branch("Pain at rest: 3 of 10"), inner))
