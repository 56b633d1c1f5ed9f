"""Rules: what each must say, and what it can never do."""

from typing import Any

import pytest
from pydantic import ValidationError

from builder.model.card import Card
from builder.model.rule import URGENCIES, OptionEffect, Rule
from tests.judge.small import CARDS, RULES, rule

BARS = {"groups": ["hands_on"], "answer": "barred"}


@pytest.mark.parametrize("written", RULES, ids=lambda one: one["id"])
def test_a_rule_reads_back_as_itself(written: dict[str, Any]) -> None:
    """A rule written out as data and read again is the same rule."""
    made = Rule.model_validate(written)
    assert Rule.model_validate(made.model_dump()) == made
    assert Rule.model_validate_json(made.model_dump_json()) == made


@pytest.mark.parametrize(
    ("effect", "name", "about"),
    [
        (BARS, "stroke", True),
        (BARS, "cold", False),
        ({"cards": ["cold"], "answer": "barred"}, "cold", True),
        ({"cards": ["cold"], "answer": "barred"}, "stroke", False),
    ],
)
def test_an_effect_is_about_the_cards_and_groups_it_names(
    effect: dict[str, Any], name: str, *, about: bool
) -> None:
    """By id or by group, whatever the site."""
    written = next(one for one in CARDS if one["id"] == name)
    assert OptionEffect.model_validate(effect).addresses(Card.model_validate(written)) is about


@pytest.mark.parametrize(
    ("effect", "message"),
    [
        ({"groups": ["hands_on"]}, "give either `answer` or `needs`"),
        ({**BARS, "needs": {"minutes": {"at_most": 5}}}, "give either `answer` or `needs`"),
        ({"answer": "barred"}, "name the `cards` or `groups` this is about"),
        ({**BARS, "answer": "ok"}, "Input should be 'not_yet' or 'barred'"),
        ({**BARS, "answer": "change"}, "Input should be 'not_yet' or 'barred'"),
        ({**BARS, "sites": ["elsewhere"]}, "Input should be 'on'"),
    ],
)
def test_an_effect_tightens_and_says_what(effect: dict[str, Any], message: str) -> None:
    """An effect answers or needs, never both or neither, never milder, and is about cards."""
    with pytest.raises(ValidationError, match=message):
        OptionEffect.model_validate(effect)


def test_a_rule_does_something() -> None:
    """A rule without any effect is refused; either kind of effect is enough."""
    with pytest.raises(ValidationError, match="a rule needs an effect: `session` or `options`"):
        Rule.model_validate(rule("idle", {"fever": "yes"}))
    assert Rule.model_validate(rule("a", {"fever": "yes"}, options=[BARS])).session is None
    assert Rule.model_validate(rule("b", {"fever": "yes"}, session={"urgency": "days"})).options == ()


@pytest.mark.parametrize(
    "changed",
    [
        {"source": []},
        {"strength": "sure"},
        {"why": " "},
        {"examples": [{"fires": "yes", "given": {}}]},
        {"examples": [{"fires": True, "given": {}}, {"fires": "no", "given": {}}]},
        {"session": {"urgency": "soon"}},
        {"session": {"urgency": "days", "first_action": {"do": []}}},
        {"when": {}},
    ],
)
def test_a_rule_has_reason_source_and_examples(changed: dict[str, Any]) -> None:
    """Why, source, strength, a condition and two examples are not left out."""
    whole = rule("fever", {"fever": "yes"}, session={"urgency": "days"})
    assert Rule.model_validate(whole).id == "fever"
    with pytest.raises(ValidationError):
        Rule.model_validate({**whole, **changed})


def test_urgencies_rise() -> None:
    """The order by which the most urgent wins, from the mildest to an emergency."""
    assert URGENCIES == ("not_urgent", "days", "same_day", "emergency")
