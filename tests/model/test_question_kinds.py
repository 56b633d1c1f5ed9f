"""What is right for each kind of answer, and what does not hold together."""

from collections.abc import Callable
from copy import deepcopy
from decimal import Decimal
from fractions import Fraction
from typing import Any

import pytest
from pydantic import ValidationError

from builder.model.question import AuthorQuestion
from builder.model.question_kinds import Choices, Number
from tests.model.question_blocks import BLOCKS, QUESTION, WHY

Change = Callable[[dict[str, Any]], object]


def _third(block: dict[str, Any], **more: str) -> None:
    block["options"] += [{"text": "Wait", **WHY}, {"text": "Rest", **WHY, **more}]


def _share_of_zero(block: dict[str, Any]) -> None:
    del block["within"]
    block.update(value=0, within_share="5 %")


BROKEN: dict[str, tuple[str, Change, str]] = {
    "no option right": ("one", lambda b: b["options"][0].update(right="no"), "mark what is right"),
    "two options right of one": ("one", lambda b: _third(b, right="yes"), "exactly one option"),
    "nothing wrong": ("many", lambda b: b["options"][2].update(right="yes"), "at least one option wrong"),
    "options alike": ("many", lambda b: b["options"][1].update(text="Ask"), "read the same"),
    "a step after a later one": ("order", lambda b: b["steps"][0].update(after=["look"]), "no step before"),
    "two steps": ("order", lambda b: b["steps"].pop(), "at least 3"),
    "lefts alike": ("match", lambda b: b["pairs"][1].update(left="acute"), "read the same"),
    "a spare that is a partner": (
        "match",
        lambda b: b["spare"][0].update(right="limit the injury"),
        "read the same",
    ),
    "no tolerance": ("number", lambda b: b.pop("within"), "give either"),
    "two tolerances": ("number", lambda b: b.update(within_share="5 %"), "give either"),
    "a share of nothing": ("number", _share_of_zero, "a share of 0"),
    "a wrong number that is right": (
        "number",
        lambda b: b.update(wrong=[{"value": 25, **WHY}]),
        "25 stands under",
    ),
    "nobody voted": ("panel", lambda b: [one.update(votes=0) for one in b["options"]], "nobody voted"),
    "nothing to mark": ("text", lambda b: b.update(criteria=[]), "at least 1"),
}


@pytest.mark.parametrize("fault", BROKEN)
def test_what_does_not_hold_together_is_refused(fault: str) -> None:
    """Each block is refused for one fault, in words an author understands."""
    kind, change, said = BROKEN[fault]
    block = deepcopy(BLOCKS[kind])
    change(block)
    with pytest.raises(ValidationError, match=said):
        AuthorQuestion.model_validate({**QUESTION, kind: block})


def test_the_right_options_are_known_by_position() -> None:
    """Positions count from 0, in the order written."""
    assert Choices.model_validate(BLOCKS["many"]).right == (0, 1)


def test_bounds_are_exact_and_belong_to_the_right_numbers() -> None:
    """45 within 5 % ends at 47.25 exactly (derived); a third of 1 is no rounded number."""
    number = Number(value=Decimal(45), unit="degrees", within_share=Fraction(1, 20), because="So.")
    assert number.bounds == (Fraction("42.75"), Fraction("47.25"))
    third = Number(value=Decimal(1), unit="hours", within_share=Fraction(1, 3), because="So.")
    assert third.bounds == (Fraction(2, 3), Fraction(4, 3))


def test_a_wrong_zero_is_seen() -> None:
    """A wrong value of 0 within the tolerance is told like any other."""
    with pytest.raises(ValidationError, match="0 stands under"):
        Number.model_validate({"value": 3, "unit": "h", "within": 3, "wrong": [{"value": 0, **WHY}], **WHY})
