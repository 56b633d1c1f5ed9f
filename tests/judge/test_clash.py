"""Contradictions: what one demand asks to be written another refuses, with the client it meets."""

from typing import Any

import pytest

from builder.judge.judge import Judge
from builder.judge.prove import holes
from builder.model.judgement import Hole
from tests.judge.small import CARDS, RULES, content, rule


def found(*more: dict[str, Any]) -> list[Hole]:
    """The contradictions of the small content with further rules."""
    made = content(rules=[*RULES, *more])
    return [one for one in holes(made, Judge(made).space) if one.sort == "contradiction"]


def needs(name: str, when: dict[str, Any], attribute: str, value: object) -> dict[str, Any]:
    """A rule that needs one attribute of the cold card written so."""
    return rule(name, when, options=[{"cards": ["cold"], "needs": {attribute: value}}])


def test_two_rules_that_can_not_both_be_met_are_found() -> None:
    """At every site, with the plainest client whom both are about."""
    pair = (
        needs("bare", {"swelling": "rising"}, "barrier", "no"),
        needs("long", {"age": {"over": 90}}, "minutes", {"at_least": 30}),
    )
    told = {(one.about, one.witness) for one in found(*pair)}
    assert ("cold, on: barrier", "swelling: rising") in told
    assert ("cold, on: minutes", "age: 100") in told
    assert len(told) == 10


def test_three_words_that_leave_none_are_found() -> None:
    """Each two agree, all three do not."""
    sites = ["on", "adjacent", "remote"]
    three = [[sites[0], sites[1]], [sites[1], sites[2]], [sites[0], sites[2]]]
    rules = [needs(f"rule_{at}", {"numb_skin": "no"}, "site", one) for at, one in enumerate(three)]
    assert {one.about for one in found(*rules)} == {
        f"cold, {site}: site" for site in ("on", "adjacent", "proximal", "distal", "remote")
    }


@pytest.mark.parametrize(
    "rules",
    [
        [needs("long", {"age": {"over": 90}}, "minutes", {"at_most": 5})],
        [needs("bare", {"numb_skin": "yes"}, "barrier", "no")],
        [
            needs("bare", {"phase": "acute", "swelling": "none"}, "minutes", {"at_least": 16}),
            needs("short", {"swelling": "rising"}, "minutes", {"at_most": 10}),
        ],
    ],
)
def test_demands_that_never_meet_or_agree_are_none(rules: list[dict[str, Any]]) -> None:
    """A tighter limit, one on a card that is barred there, and two that are about different clients."""
    assert found(*rules) == []


def test_the_cards_alone_do_not_contradict_themselves() -> None:
    """One row is about each phase and site."""
    assert len(CARDS) == 5
    assert found() == []
