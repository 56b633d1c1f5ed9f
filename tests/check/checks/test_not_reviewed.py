"""What no clinician has reviewed is counted."""

from builder.check.checks.not_reviewed import LEVEL, check
from tests.check.small_course import evidence
from tests.judge.small import CARDS, RULES, content

REVIEWED = {"reviewed": {"who": "A clinician", "licence": "None real", "date": "2026-11-01"}}


def test_everything_reviewed_is_silent() -> None:
    """Every rule and card looked at."""
    made = content(rules=[{**one, **REVIEWED} for one in RULES], cards=[{**one, **REVIEWED} for one in CARDS])
    assert list(check(evidence(rules=made))) == []


def test_what_is_not_reviewed_is_counted() -> None:
    """One advice with both numbers, never an error."""
    made = content(cards=[{**CARDS[0], **REVIEWED}, *CARDS[1:]])
    (found,) = check(evidence(rules=made))
    assert LEVEL == "advice"
    assert (found.file, found.path) == ("course.yml", ())
    assert found.message == "5 rules and 4 cards are not yet reviewed by a clinician; every page says so."
    assert (
        found.remedy
        == "Let a clinician go through the list of `explain COURSE reviews`; sign in `reviews.yml`."
    )
