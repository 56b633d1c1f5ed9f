"""The healing timeline."""

from decimal import Decimal

from builder.assess.timeline import timeline_of
from builder.model.case import Case
from builder.model.judgement import PhaseJudgement, SeverityJudgement
from builder.model.practice import Timeline
from tests.assess.sample import case, content, judged_visit, visit


def line(one: Case, number: int, **changed: object) -> Timeline:
    """The timeline of a visit that has one."""
    made = timeline_of(content(), one, number, judged_visit("v", **changed))
    assert made is not None
    return made


def test_bands_follow_the_clock() -> None:
    """Each phase begins where the one before ends; the last runs on half as long again."""
    bands = line(case("alpha"), 0).bands
    assert [(str(band.phase), int(band.start), int(band.end)) for band in bands] == [
        ("acute", 0, 72),
        ("early_repair", 72, 240),
        ("late_repair", 240, 504),
        ("remodelling", 504, 756),
    ]


def test_the_last_band_reaches_today() -> None:
    """A visit long afterwards still lies on its timeline."""
    late = case("alpha", visits=[visit(1, since_injury="10 weeks")])
    assert line(late, 0).bands[-1].end == line(late, 0).today == 1680


def test_earlier_visits_stand_where_they_were() -> None:
    """Visits before today are on the line, later ones are not."""
    assert line(case("alpha", 3), 1).earlier == (Decimal(30),)
    assert line(case("alpha", 3), 1).today == 60


def test_a_new_injury_starts_the_line_anew() -> None:
    """Today is counted from the latest injury; visits before it have left the line."""
    hurt_again = case("alpha", visits=[visit(1), visit(2), visit(3, since_reinjury="40 h")])
    assert line(hurt_again, 2).today == 40
    assert line(hurt_again, 2).earlier == (Decimal(10),)


def test_the_words_say_what_is_drawn() -> None:
    """Whoever cannot see the drawing reads it."""
    assert line(case("alpha"), 0).words == (
        "acute until 3 days; early until 10 days; late until 21 days; then last. Today: 30 hours."
    )


def test_an_open_severity_is_drawn_as_the_worse() -> None:
    """With two grades possible the slower clock counts."""
    one, book = case("alpha"), content()
    slow = tuple(
        clock.model_copy(update={"acute_until": Decimal(168)}) if clock.severity == "severe" else clock
        for clock in book.phases.clocks
    )
    object.__setattr__(book, "phases", book.phases.model_copy(update={"clocks": slow}))
    severity = SeverityJudgement(("moderate", "severe"), None, False, ())
    made = timeline_of(book, one, 0, judged_visit("v", severity=severity))
    assert made is not None
    assert made.bands[0].end == 168


def test_no_timeline_where_phase_does_not_apply() -> None:
    """A red flag or sore muscle has no phase to draw."""
    assert (
        timeline_of(content(), case("alpha"), 0, judged_visit("v", phase=PhaseJudgement(("none",), ())))
        is None
    )


def test_no_timeline_without_a_clock() -> None:
    """A tissue without a clock is not drawn by another's."""
    tissue = {"kind": "tendon", "name": "t", "region": "t", "side": "left"}
    assert timeline_of(content(), case("alpha", tissue=tissue), 0, judged_visit("v")) is None


def test_signs_that_hold_it_back_are_on_the_line() -> None:
    """Where the phase judged is earlier than the calendar's, the line says to which."""
    late = case("alpha", visits=[visit(1, since_injury="5 days")])
    held = line(late, 0, phase=PhaseJudgement(("acute",), ()))
    assert held.held == "acute"
    assert held.words.endswith("The signs hold it at: acute.")
    assert line(late, 0, phase=PhaseJudgement(("early_repair",), ())).held is None
