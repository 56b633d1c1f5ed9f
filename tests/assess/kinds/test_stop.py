"""What would end a session that goes on."""

from dataclasses import replace
from decimal import Decimal

from builder.assess.kinds.stop import questions
from builder.assess.question import Question, Said
from builder.model.judgement import Turn
from tests.assess.sample import fired, material

FLAG = Turn("tingling", "yes", "same_day", (fired("flag", "same_day"), fired("milder", "days")))
HERE = Turn("swelling", "falling", found=True)
IDLE = (HERE, Turn("knee_flexion", Decimal(72), found=True), Turn("severity", "mild"))


def asked(*turns: Turn) -> list[Question]:
    """The questions of a visit on which these things may come up."""
    return list(questions(material(turns=turns)))


def said(question: Question) -> dict[str, Said]:
    """What is said of each option, by its title."""
    return {one.title: told for one, told in zip(question.shown.options, question.judged.said, strict=True)}


def test_a_flag_stands_among_what_changes_nothing() -> None:
    """It alone is right; a sign is told with its value, a yes by its name alone."""
    (question,) = asked(FLAG, *IDLE)
    titles = [one.title for one in question.shown.options]
    assert titles == ["Knee bend: 72°", "Severity: mild", "Swelling: falling", "Tingling"]
    assert [titles[place] for place in question.judged.right] == ["Tingling"]


def test_it_says_how_urgent_it_is_and_why() -> None:
    """By the rules that decide; a milder one is silent."""
    told = said(asked(FLAG, *IDLE)[0])["Tingling"]
    assert (told.mark, told.word, told.reason) == ("refer", "Stop and refer, the same day", "Why flag.")
    assert told.ground.rules == ("flag",)


def test_what_is_there_already_is_told_apart_from_what_nothing_reads() -> None:
    """Both let the session go on, each for its own reason."""
    told = said(asked(FLAG, *IDLE)[0])
    assert told["Swelling: falling"].mark == told["Severity: mild"].mark == "ok"
    assert told["Swelling: falling"].reason.startswith("It is so today")
    assert told["Severity: mild"].reason.startswith("No rule reads it")


def test_a_referral_within_days_is_neither_right_nor_wrong() -> None:
    """It leaves some work open, so it is not offered at all."""
    milder = replace(FLAG, fact="haematoma", urgency="days")
    (question,) = asked(FLAG, milder, *IDLE)
    assert len(question.shown.options) == 4
    assert not [one for one in question.shown.options if one.title.startswith("Bleeding")]
    assert asked(milder, *IDLE) == []


def test_too_few_that_change_nothing_make_no_question() -> None:
    """A wrong option is never made up."""
    assert asked(FLAG, *IDLE[:2]) == []
    assert asked(*IDLE) == []
