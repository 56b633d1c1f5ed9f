"""What the judge says, as rows of a page."""

from dataclasses import replace

import pytest

from builder.model.case import CaseOption
from builder.model.judgement import Reason
from builder.render.instructor_said import Linked, cited, deciding, option_row, reason_rows, rule_row
from builder.render.maker import maker
from tests.render.sample_judged import (
    EARLY,
    fired,
    judged_course,
    judged_visit,
    option,
    referring_visit,
    wrong_option,
)

MADE = maker(judged_course())
AT = "cases/landing.md"


def test_a_rule_is_told_with_its_ground() -> None:
    """Effect in shape and word, why, strength, sources with the way to each, and that it is unreviewed."""
    row = rule_row(MADE, AT, fired("rf_calf_pain", "barred"))
    assert (row.mark, row.word, row.sure) == ("barred", "Not here", True)
    assert row.title == Linked("Title of rf_calf_pain", "../rules.html#rule-rf_calf_pain")
    assert (row.why, row.strength, row.reviewed) == ("Why rf_calf_pain.", "guideline", False)
    assert row.sources == (Linked("Example A, 2020", "../sources.html#source-example_2020"),)


def test_an_open_rule_is_told_as_open() -> None:
    """A rule that waits for a record is not told as one that fires."""
    assert not rule_row(MADE, AT, fired("x", "barred", truth="open")).sure


def test_a_referring_rule_is_told_by_its_urgency() -> None:
    """An effect on the session has the shape of a referral and the word of its urgency."""
    row = rule_row(MADE, AT, fired("x", "same_day"))
    assert (row.mark, row.word) == ("refer", "Same day")


def test_a_baseline_leads_to_its_card() -> None:
    """The card's own answer is told as such, not under the card's name again."""
    row = rule_row(MADE, AT, fired("baseline.friction", "ok"))
    assert row.title == Linked("The card's own answer here", "../cards.html#card-friction")


def test_a_contested_rule_tells_both_sides_and_the_courses_own() -> None:
    """Neither side is left out, and the course's position stands beside them."""
    told = rule_row(MADE, AT, fired("x", "not_yet", contested=EARLY)).contested
    assert EARLY.taught in told
    assert EARLY.other in told
    assert "As taught here: Not before remodelling." in told


def test_an_unknown_source_keeps_its_name() -> None:
    """A source that is not on the list is still named, and each source once."""
    assert [one.text for one in cited(MADE, AT, ("example_2020", "nowhere", "nowhere"))] == [
        "Example A, 2020",
        "nowhere",
    ]


def test_reasons_keep_their_sources() -> None:
    """Each step of a judgement stands with what it rests on."""
    (row,) = reason_rows(MADE, AT, (Reason("Acute.", (), ("common_practice",)),), reviewed=False)
    assert (row.text, [one.text for one in row.sources]) == ("Acute.", ["Common practice, no source"])
    assert not row.reviewed


def test_an_option_keeps_both_answers() -> None:
    """What it surely is and what it may be at worst stay apart; the worst decides the shape."""
    written = CaseOption.model_validate({"card": "friction", "written": {"minutes": 9, "warmed": "no"}})
    row = option_row(MADE, AT, written, wrong_option(), judged_visit())
    assert (row.answer, row.at_worst) == ("change", "barred")
    assert (row.mark, row.word, row.right, row.serves) == ("barred", "Not here", False, False)
    assert row.chips == ("time 9 min", "not warmed")
    assert row.change == "warmed first"
    assert row.ask == ("Does the calf hurt without a cause?",)
    assert row.would_change == (("pain at rest: 1 of 10", "not_yet"),)
    assert [one.id for one in row.rules] == ["baseline.friction", "rf_calf_pain"]


@pytest.mark.parametrize(
    ("judged", "sign"),
    [
        (option("friction"), ("ok", "OK as written")),
        (option("friction", "not_yet"), ("not_yet", "Not yet")),
        (option("friction", serves_aim=False, right=False), ("wrong", "Not today's aim")),
        (option("friction", at_worst="barred", right=False), ("barred", "Not here")),
    ],
)
def test_the_worst_decides(judged: object, sign: tuple[str, str]) -> None:
    """An option is told by its answer at worst; what is safe in vain is told as missing the aim."""
    assert deciding(MADE, judged, judged_visit()) == sign  # type: ignore[arg-type]


def test_only_an_option_with_an_urgency_refers() -> None:
    """On a referral the right referral has its own shape; another right action keeps that of its answer."""
    visit = referring_visit()
    assert deciding(MADE, visit.chosen[0], visit) == ("refer", "Stop and refer")
    assert deciding(MADE, replace(visit.chosen[0], written={}), visit) == ("ok", "OK as written")
