"""Kept values: back through their models as they were, or not at all."""

from decimal import Decimal

import pytest

from builder.doors.frozen import Frozen
from builder.model.judgement import VisitJudgement, WouldChange
from builder.model.practice import PracticeCase
from tests.demo.built import opened

VISITS = Frozen[tuple[VisitJudgement, ...]](tuple[VisitJudgement, ...])


def test_every_judgement_of_the_demonstration_comes_back_as_it_was() -> None:
    """Numbers stay numbers with their digits, words stay words, order stays order."""
    for visits in opened().judged.values():
        again = VISITS.thawed(VISITS.frozen(visits))
        assert again == visits
        assert repr(again) == repr(visits)


def test_a_number_and_the_word_for_it_stay_apart() -> None:
    """Both may stand where a fact may be either."""
    change = Frozen[WouldChange](WouldChange)
    for value in ("20", Decimal(20), Decimal("20.0")):
        again = change.thawed(change.frozen(WouldChange({"a": value}, "ok", "")))
        assert again is not None
        assert repr(again.set["a"]) == repr(value)


@pytest.mark.parametrize("data", [None, b"", b"{", b"[1]", b'{"id": 3}', b'{"set": {"a": {"number": "x"}}}'])
def test_what_is_no_such_value_is_nothing(data: bytes | None) -> None:
    """Whatever lies there."""
    assert Frozen[WouldChange](WouldChange).thawed(data) is None
    assert Frozen[PracticeCase](PracticeCase).thawed(data) is None
