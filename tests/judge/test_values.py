"""What a case file records of one visit."""

from decimal import Decimal
from typing import Any

import pytest

from builder.judge.space import Value
from builder.judge.values import values_of
from tests.judge.small import case, content


def values(visit: dict[str, Any], **more: object) -> dict[str, Value]:
    """The recorded facts of a case with this one visit."""
    made = case(visit, **more)
    return values_of(made, made.visits[0], content().screening)


def test_the_basics_come_from_the_case() -> None:
    """Who, what, where and when are facts like any other."""
    found = values({"since_injury": "9 days"})
    assert {name: found[name] for name in ("injury", "tissue", "region", "age", "consent", "reinjured")} == {
        "injury": "contusion",
        "tissue": "muscle",
        "region": "thigh",
        "age": Decimal(30),
        "consent": "yes",
        "reinjured": "no",
    }
    assert found["hours"] == found["hours_since_first"] == Decimal(216)


def test_the_clock_runs_from_the_latest_injury() -> None:
    """After a second injury its own time counts, and the first is still known."""
    found = values({"since_injury": "9 days", "since_reinjury": "20 h"})
    assert (found["hours"], found["hours_since_first"]) == (Decimal(20), Decimal(216))
    assert found["reinjured"] == "yes"
    assert values({"since_injury": "9 days", "since_reinjury": 0})["hours"] == 0


@pytest.mark.parametrize(("key", "name"), [("consent", "consent"), ("screen", "fever")])
def test_what_was_not_asked_is_not_recorded(key: str, name: str) -> None:
    """No consent asked, no screen: neither is silently a no."""
    assert name in values({})
    assert name not in values({key: None})


def test_a_screen_says_no_to_all_but_the_exceptions() -> None:
    """Everything the set covers is no, what is named has its own answer."""
    found = values({"screen": {"set": "short", "all_no_except": {"numb_skin": "yes"}}})
    assert (found["fever"], found["numb_skin"]) == ("no", "yes")


def test_a_finding_stands_over_the_screen_and_the_screen_over_the_history() -> None:
    """What was seen today is believed before what was said, and that before what was known."""
    history = {"history": {"fever": "yes", "numb_skin": "yes", "cool_head": "no"}}
    found = values({"findings": {"numb_skin": "yes"}}, **history)
    assert (found["fever"], found["numb_skin"], found["cool_head"]) == ("no", "yes", "no")


def test_bleeding_is_recorded_where_it_is_known() -> None:
    """The sort of haematoma is a fact only where the case names it."""
    tissue = {
        "kind": "muscle",
        "name": "rectus",
        "region": "thigh",
        "side": "right",
        "haematoma": "intramuscular",
    }
    assert values({}, tissue=tissue)["haematoma"] == "intramuscular"
    assert "haematoma" not in values({})
