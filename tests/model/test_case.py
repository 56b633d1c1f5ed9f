"""Cases: what a file must say of a client, an injury and each visit."""

from decimal import Decimal
from typing import Any

import pytest
from pydantic import ValidationError

from tests.judge.small import case


def test_what_is_left_out_is_not_recorded() -> None:
    """A visit without screen, consent or finding records none of them."""
    visit = case({"screen": None, "consent": None}).visits[0]
    assert (visit.screen, visit.consent, visit.severity, visit.since_reinjury, visit.wrong) == (
        None,
        None,
        None,
        None,
        (),
    )


def test_values_are_words_or_exact_numbers() -> None:
    """A finding keeps its word; a number is exact and a span becomes hours."""
    visit = case({"since_injury": "9 days", "findings": {"knee_flexion": 72, "swelling": "none"}}).visits[0]
    assert visit.since_injury == Decimal(216)
    assert visit.findings == {"knee_flexion": Decimal(72), "swelling": "none"}


@pytest.mark.parametrize(
    "visit",
    [
        {"since_injury": "-3 h"},
        {"since_injury": "soon"},
        {"consent": "perhaps"},
        {"phase": "late"},
        {"severity": "grave"},
        {"chosen": []},
        {"chosen": [{"card": "cold", "site": "elsewhere"}]},
        {"chosen": [{"card": "cold", "written": {"minutes": None}}]},
        {"findings": {"fever": True}},
        {"findings": {"Fever": "yes"}},
    ],
)
def test_a_wrong_visit_is_refused(visit: dict[str, Any]) -> None:
    """Each part of a visit is held to its words and bounds."""
    with pytest.raises(ValidationError):
        case(visit)


@pytest.mark.parametrize(
    "more",
    [
        {"visits": []},
        {"invented": "no"},
        {"objectives": []},
        {"client": {"role": "Rider", "age": 130}},
        {"client": {"role": "Rider", "age": 30, "name": "Somebody"}},
        {"format": 2},
    ],
)
def test_a_wrong_case_is_refused(more: dict[str, Any]) -> None:
    """A case needs visits and objectives, is invented, and has no place for a name."""
    with pytest.raises(ValidationError):
        case({}, **more)
