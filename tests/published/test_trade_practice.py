"""Cold and compression as they are taught: common practice, no source, except where a test names one."""

from decimal import Decimal

import pytest

from builder.model.card import Answer
from tests.content.library import content, judge

DAY_ONE: dict[str, str | Decimal] = {
    "injury": "contusion",
    "tissue": "muscle",
    "region": "thigh",
    "reinjured": "no",
    "hours": Decimal(18),
    "age": Decimal(30),
    "consent": "yes",
}
QUIET = dict.fromkeys(content().screening.covered_by("whole_body"), "no")
SIGNS: dict[str, str | Decimal] = {
    "knee_flexion": Decimal(72),
    "swelling_trend": "steady",
    "heat": "clear",
    "rest_pain": Decimal(3),
}


def answer(card: str, **written: str | Decimal) -> Answer:
    """The answer at worst for a card on the injury, on the first day of a moderate bruise."""
    frame = judge().frame({**DAY_ONE, **QUIET, **SIGNS, "pain_with": "movement", "flare": "none"}, None, None)
    whole = {**content().cards[card].usual, **written}
    return judge().options.judge(frame, content().cards[card], "on", whole).at_worst


@pytest.mark.parametrize(("minutes", "expected"), [(19, "ok"), (20, "ok"), (21, "change"), (25, "change")])
def test_a_cold_pack_stays_on_for_twenty_minutes_at_most(minutes: int, expected: str) -> None:
    """20 minutes at most, then off (common practice, no source)."""
    assert answer("cold_pack", minutes=Decimal(minutes)) == expected


def test_a_cold_pack_never_lies_on_bare_skin() -> None:
    """A cloth lies between pack and skin (common practice, no source)."""
    assert answer("cold_pack", barrier="no") == "change"


def test_cold_is_taken_once_in_the_hour() -> None:
    """20 minutes in the hour leaves 40 between two packs (common practice, no source)."""
    assert answer("cold_pack", minutes_between=Decimal(40)) == "ok"
    assert answer("cold_pack", minutes_between=Decimal(39)) == "change"


def test_cold_comes_back_several_times_a_day() -> None:
    """Twenty minutes in the hour, several times a day: taught (common practice, no source), and contested."""
    contested = content().cards["cold_pack"].cell("acute", "on").contested
    assert contested is not None
    assert "several times a day" in contested.taught
    assert answer("cold_pack", minutes=Decimal(20), minutes_between=Decimal(180)) == "ok"


@pytest.mark.parametrize(
    ("ratio", "expected"), [("1.9", "change"), ("2", "ok"), ("3", "ok"), ("3.1", "change")]
)
def test_a_pad_is_two_to_three_times_the_injured_area(ratio: str, expected: str) -> None:
    """The felt or foam pad is two to three times the injured area (common practice, no source)."""
    assert answer("wrap_pad", pad_ratio=Decimal(ratio)) == expected


def test_a_wrap_runs_from_below_the_injury_to_above_it() -> None:
    """From just below to just above, never the other way (common practice, no source)."""
    assert answer("wrap_pad", wrap_from="below", wrap_to="above") == "ok"
    assert answer("wrap_pad", wrap_from="above", wrap_to="below") == "change"


def test_a_wrap_is_looked_at_within_a_quarter_of_an_hour() -> None:
    """Colour, warmth and feeling are checked 10 to 15 minutes after wrapping (common practice, no source)."""
    assert answer("wrap_pad", recheck_minutes=Decimal(15)) == "ok"
    assert answer("wrap_pad", recheck_minutes=Decimal(16)) == "change"


def test_cold_massage_takes_five_to_seven_minutes_as_taught_and_ten_at_most() -> None:
    """The usual dose lies in the taught 5 to 7 minutes (common practice); ten at most (Bugaj 1975)."""
    card = content().cards["cold_massage"]
    assert 5 <= Decimal(card.usual["minutes"]) <= 7
    limits = [row.limits["minutes"] for row in card.baseline if row.answer == "ok"]
    assert {limit.bounds for limit in limits} == {(("at_most", Decimal(10)),)}  # type: ignore[union-attr]


def test_what_is_common_practice_says_so() -> None:
    """The cells behind these figures name common practice among their sources."""
    cards = content().cards
    cells = [cards["cold_pack"].cell("acute", "on"), cards["wrap_pad"].cell("acute", "on")]
    for cell in [*cells, cards["cold_massage"].cell("early_repair", "on")]:
        assert "common_practice" in cell.source, cell.why
