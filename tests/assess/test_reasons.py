"""What is said of an option."""

from dataclasses import replace
from decimal import Decimal

import pytest

from builder.assess.question import Said
from builder.assess.reasons import said_of_option
from builder.model.card import Contested
from builder.model.judgement import Asked, OptionJudgement, VisitJudgement, WouldChange
from tests.assess.sample import case, course, fired, judged_option, judged_visit
from tests.model.signed import signed_but

POINT = Contested(point="cold", taught="It heals.", other="It eases.")


def said(judged: OptionJudgement, visit: VisitJudgement | None = None, **changed: object) -> Said:
    """What is said of an option on a visit whose aim is to limit."""
    return said_of_option(course([case("alpha")], **changed), judged, visit or judged_visit("v1"))


def test_an_ok_option_says_why_and_on_what_it_rests() -> None:
    """Word, reason, short source, strength, and that nobody has reviewed it yet."""
    told = said(judged_option("cold"))
    assert (told.mark, told.word, told.reason) == ("ok", "OK as written", "Why rule_cold.")
    assert told.ground.rests_on == "Ryan JB et al, 1991 · single study · not yet reviewed by a clinician"
    assert told.would_change == ("With time: 40 min, The cold would be: Only if changed.",)


def test_a_reviewed_rule_does_not_say_otherwise() -> None:
    """Once every deciding rule is reviewed, the line ends with its strength."""
    judged = judged_option("cold", rules=(fired("r", "ok", reviewed=True),))
    whole = course([case("alpha")])
    signed = replace(whole, content=signed_but(whole.content))
    told = said_of_option(signed, judged, judged_visit("v1"))
    assert told.ground.rests_on == "Ryan JB et al, 1991 · single study"
    assert told.ground.reviewed
    assert not said(judged).ground.reviewed


def test_a_strength_that_the_source_says_is_not_said_twice() -> None:
    """Common practice is named once."""
    told = said(
        judged_option("cold", rules=(fired("r", "ok", source=("habit",), strength="common_practice"),))
    )
    assert told.ground.rests_on == "Common practice, no source · not yet reviewed by a clinician"


def test_only_the_worst_rules_speak() -> None:
    """The reason comes from the rules that give the answer, at most two of them."""
    rules = (*(fired(name, "barred") for name in "abc"), fired("d", "not_yet"))
    told = said(judged_option("rub", "barred", rules=rules))
    assert told.reason == "Why a. Why b."
    assert told.ground.rules == ("a", "b", "c")


def test_a_change_is_named() -> None:
    """An option that is OK only if changed says how."""
    assert said(judged_option("cold", "change")).reason == "Why rule_cold. Needed: time at most 20 min."


def test_what_is_not_recorded_is_asked() -> None:
    """An answer that holds only at worst names the questions that would settle it."""
    told = said(
        judged_option(
            "cold", at_worst="barred", right=False, ask=(Asked("raynaud", "White fingers?", ("r",)),)
        )
    )
    assert told.word == "Not here, while something is not recorded"
    assert told.reason == "No card or rule speaks against it. Not recorded: White fingers?"


def test_an_option_beside_the_aim_says_so() -> None:
    """Safe but of no use today is wrong, and says what today is for."""
    told = said(judged_option("cold", serves_aim=False, right=False))
    assert (told.mark, told.word) == ("wrong", "Not today's aim")
    assert told.reason == "Why rule_cold. Today's aim is to limit it; this does not serve it."


def test_referring_where_it_is_right_is_marked_so() -> None:
    """The action that sends the client on has the mark of stop and refer."""
    visit = judged_visit("v1", aims=("refer",))
    assert said(judged_option("refer", written={"urgency": "days"}), visit).mark == "refer"
    assert said(judged_option("wrap"), visit).mark == "ok"


def test_both_sides_of_a_contested_point_are_told() -> None:
    """What is taught, what is also held, and the course's own position where it has one."""
    judged = judged_option("cold", rules=(fired("r", "ok", contested=POINT),))
    both = "Taught: It heals. Also held: It eases."
    assert said(judged).ground.contested == both
    assert said(judged, positions={"cold": "Relief."}).ground.contested == f"{both} As taught here: Relief."


def test_a_contested_rule_that_does_not_decide_is_told_too() -> None:
    """Whoever reads the answer sees every contested point that bears on it, once."""
    rules = (fired("a", "barred"), fired("b", "not_yet", contested=POINT), fired("c", "ok", contested=POINT))
    assert said(judged_option("rub", "barred", rules=rules)).ground.contested.count("It heals.") == 1


DOSE = WouldChange({"written.minutes": Decimal(40)}, "change", "time: 40 min")
SIGN = WouldChange({"swelling": "rising"}, "not_yet", "swelling: rising")
SITE = WouldChange({"written.site": "remote"}, "ok", "elsewhere")


@pytest.mark.parametrize(
    ("answer", "changes", "told"),
    [
        ("ok", (DOSE, SIGN), ("With swelling: rising, The cold would be: Not yet.",)),
        ("ok", (DOSE,), ("With time: 40 min, The cold would be: Only if changed.",)),
        ("not_yet", (SIGN, SITE), ("With elsewhere, The cold would be: OK as written.",)),
        ("change", (SIGN,), ()),
    ],
)
def test_the_change_that_teaches_most_is_told(
    answer: str, changes: tuple[WouldChange, ...], told: tuple[str, ...]
) -> None:
    """What is not OK says what would make it better; what is OK says first which sign would bar it."""
    assert said(judged_option("cold", answer, would_change=changes)).would_change == told
