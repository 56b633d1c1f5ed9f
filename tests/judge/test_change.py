"""What would change an answer: the nearest change, and only of what can change in the room."""

from decimal import Decimal
from typing import Any

import pytest

from builder.judge.change import MOST
from builder.judge.judge import Judge
from builder.model.judgement import WouldChange
from tests.judge.small import RULES, case, content, rule

GOOD: dict[str, Any] = {"minutes": 15, "barrier": "yes"}
LATE = {"since_injury": "20 days", "findings": {"recalled_flexion": 100}}


def changes(
    card: str,
    site: str = "on",
    written: dict[str, Any] | None = None,
    visit: dict[str, Any] | None = None,
    **more: list[dict[str, Any]],
) -> tuple[WouldChange, ...]:
    """What would change one chosen option of one visit."""
    option = {"card": card, "site": site, "written": written or {}}
    (judged,) = Judge(content(**more)).case(case({**(visit or {}), "chosen": [option]}))
    return judged.chosen[0].would_change


def told(found: tuple[WouldChange, ...]) -> list[tuple[str, str]]:
    """The changes in words, each with the answer it would give."""
    return [(one.text, one.answer) for one in found]


def test_the_nearest_change_of_each_thing_is_told() -> None:
    """Of time the first hour that gives another answer, of the dose the first that is too long."""
    assert told(changes("cold", "on", GOOD)) == [
        ("time between 20 and 30 min", "change"),
        ("on the skin", "change"),
    ]


def test_a_sign_a_site_and_the_time_change_an_answer() -> None:
    """Strokes are barred on a fresh bruise: later, or further away, they are not."""
    found = changes("stroke", visit={"since_injury": "18 h"})
    assert [(sorted(one.set), one.answer) for one in found] == [
        (["hours"], "not_yet"),
        (["hours"], "ok"),
        (["written.site"], "ok"),
    ]
    assert found[2].set == {"written.site": "proximal"}


def test_a_change_holds_what_it_says() -> None:
    """Each told change, made to the visit and judged again, gives the answer it was told with."""
    visit = {"since_injury": "20 h", "findings": {"recalled_flexion": 72}}
    judge = Judge(content())
    for one in changes("stroke", visit=visit):
        site = str(one.set.get("written.site", "on"))
        since = {"since_injury": one.set["hours"]} if "hours" in one.set else {}
        again = case({**visit, **since, "chosen": [{"card": "stroke", "site": site}]})
        assert judge.case(again)[0].chosen[0].at_worst == one.answer


def test_only_what_can_change_in_the_room_is_told() -> None:
    """A flag, numb skin or a missing consent is never wished away."""
    for visit in (
        {"findings": {"numb_skin": "yes"}},
        {"consent": "no"},
        {"screen": {"set": "short", "all_no_except": {"fever": "yes"}}},
    ):
        for card, written in (("cold", GOOD), ("stroke", {})):
            found = changes(card, "proximal", written, visit)
            names = {name for one in found for name in one.set}
            assert names <= {"hours", "swelling", "knee_flexion"} | {
                f"written.{one}" for one in ("site", "minutes", "barrier")
            }
    assert changes("cold", "on", GOOD, {"findings": {"numb_skin": "yes"}}) == ()
    assert changes("stroke", "proximal", {}, {"consent": "no"}) == ()


def test_what_is_not_recorded_is_not_changed() -> None:
    """There is nothing to change in a sign that nobody looked at."""
    unseen = {**LATE, "findings": {"recalled_flexion": 100, "swelling": None, "knee_flexion": None}}
    assert {name for one in changes("stroke", visit=unseen) for name in one.set} == {"written.site"}


def test_two_changes_are_told_where_one_is_not_enough() -> None:
    """Minutes and cloth both have to change; a single change gives no other answer."""
    found = changes("cold", "on", {"minutes": 60, "barrier": "no"}, LATE)
    assert [(one.text, one.answer) for one in found[:1]] == [("time 15 min and cloth between", "ok")]
    assert all(len(one.set) == 2 for one in found)


def test_one_change_that_is_enough_leaves_no_pair() -> None:
    """A pair is never told beside a single change that does it."""
    found = changes("stroke", visit=LATE)
    assert found
    assert all(len(one.set) == 1 for one in found)


def test_what_a_card_does_not_ask_about_does_not_change_it() -> None:
    """Protecting is right whatever the dose, the site and the signs."""
    assert changes("protect", written={"minutes": 15}) == ()


def test_at_most_four_are_told() -> None:
    """Enough to learn from."""
    many = [
        rule(name, {fact: value}, options=[{"cards": ["protect"], "answer": "barred"}])
        for name, fact, value in (
            ("a", "swelling", "rising"),
            ("b", "written.site", "remote"),
            ("c", "written.barrier", "no"),
            ("d", "written.minutes", {"over": 30}),
            ("e", "knee_flexion", {"below": 30}),
        )
    ]
    found = changes("protect", written=GOOD, rules=[*RULES, *many])
    assert len(found) == MOST
    assert {one.answer for one in found} == {"barred"}


@pytest.mark.parametrize(
    ("card", "answer", "text", "least", "most"),
    [
        ("stroke", "not_yet", "time between 72 h and 4 days", 72, 96),
        ("stroke", "ok", "time between 10 and 14 days", 240, 336),
        ("protect", "not_yet", "time over 42 days", 1008, 100000),
    ],
)
def test_a_stretch_of_time_reads_with_its_bounds(
    card: str, answer: str, text: str, least: int, most: int
) -> None:
    """The told number stands for all that lie in its stretch, so the stretch is what is said."""
    late = rule("late", {"hours": {"over": 1008}}, options=[{"cards": ["protect"], "answer": "not_yet"}])
    known = {"findings": {"recalled_flexion": 72}}
    found = changes(card, visit=known, rules=[*RULES, late])
    stretch = next(one for one in found if one.answer == answer and "hours" in one.set)
    assert stretch.text == text
    assert isinstance(stretch.set["hours"], Decimal)
    assert least <= stretch.set["hours"] <= most
