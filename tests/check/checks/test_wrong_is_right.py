"""Every wrong option is wrong for a named reason."""

from typing import Any

import pytest

from builder.check.checks.wrong_is_right import check
from builder.check.evidence import Finding
from tests.check.small_course import evidence
from tests.judge.small import case

UNASKED = {"screen": {"set": "none"}, "findings": {"fever": "no"}}


def cold(**written: object) -> dict[str, Any]:
    """A cold pack with something written."""
    return {"card": "cold", "written": written}


@pytest.mark.parametrize(
    "wrong",
    [
        {"card": "stroke"},
        {"card": "stroke", "site": "proximal"},
        {"card": "refer"},
        cold(minutes=30, barrier="yes"),
        cold(minutes=30),
    ],
)
def test_what_is_surely_wrong_is_silent(wrong: dict[str, Any]) -> None:
    """Barred, not serving the aim, or only if changed."""
    assert list(check(evidence(case({"wrong": [wrong]})))) == []


@pytest.mark.parametrize(
    ("visit", "wrong", "message", "remedy", "rules"),
    [
        (
            {},
            cold(minutes=15, barrier="yes"),
            "Cold is offered as wrong, but is as good as the key.",
            "Move it to `chosen`, or change it.",
            ("baseline.cold",),
        ),
        (
            UNASKED,
            cold(minutes=15, barrier="yes"),
            "Cold is offered as wrong, but is wrong only at worst, for want of a record.",
            "Record or write: numb_skin.",
            ("numb",),
        ),
        (
            {},
            cold(minutes=15),
            "Cold is offered as wrong, but is wrong only at worst, for want of a record.",
            "Record or write: cloth between.",
            ("baseline.cold",),
        ),
    ],
)
def test_what_may_be_right_is_told(
    visit: dict[str, Any], wrong: dict[str, Any], message: str, remedy: str, rules: tuple[str, ...]
) -> None:
    """As good as the key, or wrong only because nobody asked or wrote; with the rule."""
    found = check(evidence(case({**visit, "wrong": [{"card": "stroke"}, wrong]})))
    assert list(found) == [Finding("cases/bruise.yml", ("visits", 0, "wrong", 1), message, remedy, rules)]
