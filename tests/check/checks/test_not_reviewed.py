"""What no clinician has reviewed is counted."""

from builder.check.checks.not_reviewed import LEVEL, check
from tests.check.small_course import evidence
from tests.judge.small import content
from tests.model.signed import signed_but


def test_everything_reviewed_is_silent() -> None:
    """Every rule, card and table looked at, and the phases."""
    assert list(check(evidence(rules=signed_but(content())))) == []


def test_what_is_not_reviewed_is_counted() -> None:
    """One advice with the number of each part that is not done, never an error."""
    (found,) = check(evidence(rules=signed_but(content(), "cards/cold", "phases/all")))
    assert LEVEL == "advice"
    assert (found.file, found.path) == ("course.yml", ())
    assert (
        found.message == "Not yet reviewed by a clinician: 1 card, the phases with their calendar and signs. "
        "Every page that rests on them says so."
    )
    assert (
        found.remedy
        == "Let a clinician go through the list of `explain COURSE reviews`; sign in `reviews.yml`."
    )


def test_nothing_signed_counts_everything() -> None:
    """Rules, cards, phases and tables."""
    (found,) = check(evidence())
    made = content()
    assert f"{len(made.rules)} rules, {len(made.cards)} cards, the phases" in found.message
    assert f"{len(made.severity.tables)} severity table" in found.message
