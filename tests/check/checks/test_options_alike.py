"""Two options of a visit must differ in what is shown."""

import pytest

from builder.check.checks.options_alike import check
from builder.check.evidence import Evidence
from tests.assess.sample import case, course, judged, visit


def found(*wrong: dict[str, object]) -> list[tuple[str | int, ...]]:
    """The paths of options found beside a cold for ten minutes."""
    chosen = [{"card": "cold", "written": {"minutes": 10, "barrier": "yes"}}]
    one = case("alpha", visits=[visit(1, chosen=chosen, wrong=list(wrong))])
    return [finding.path for finding in check(Evidence(course([one]), judged([one])))]


@pytest.mark.parametrize(
    "same",
    [
        {"card": "cold", "written": {"barrier": "yes", "minutes": 10}},
        {"card": "cold", "site": "on", "written": {"minutes": 10, "barrier": "yes"}, "because": "B."},
    ],
)
def test_the_same_option_again_is_found(same: dict[str, object]) -> None:
    """Order, default site and the author's word do not make a difference that shows."""
    assert found({"card": "rub"}, same) == [("visits", 0, "wrong", 1)]


@pytest.mark.parametrize(
    "other",
    [
        {"card": "rub", "written": {"minutes": 10, "barrier": "yes"}},
        {"card": "cold", "site": "remote", "written": {"minutes": 10, "barrier": "yes"}},
        {"card": "cold", "written": {"minutes": 20, "barrier": "yes"}},
        {"card": "cold", "written": {"minutes": 10}},
    ],
)
def test_any_difference_that_shows_is_enough(other: dict[str, object]) -> None:
    """Card, site, dose or preparation."""
    assert found(other) == []


def test_the_site_of_an_action_does_not_show() -> None:
    """An action is done nowhere in particular, so its site tells nothing apart."""
    refer: dict[str, object] = {"card": "refer", "written": {"urgency": "days"}}
    assert found(refer, {**refer, "site": "remote"}) == [("visits", 0, "wrong", 1)]
