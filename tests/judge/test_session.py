"""The session: stop and refer over ask first over go on."""

from typing import Any

import pytest

from builder.judge.judge import Judge
from builder.judge.session import asked
from builder.model.judgement import SessionJudgement
from tests.judge.small import RULES, case, content, rule

STIFF = rule("stiff", {"swelling": "rising"}, session={"urgency": "days"})
HEAD = rule(
    "head", {"cool_head": "no"}, session={"urgency": "emergency", "first_action": {"do": ["Call for help."]}}
)
MILD = rule(
    "mild", {"cool_head": "no"}, session={"urgency": "not_urgent", "first_action": {"do": ["Write a note."]}}
)
ASK_FEVER = {"set": "short", "all_no_except": {"fever": "yes"}}


def session(visit: dict[str, Any], *more: dict[str, Any]) -> SessionJudgement:
    """The session of one visit under the small rules and these more."""
    (judged,) = Judge(content(rules=[*RULES, *more])).case(case(visit))
    return judged.session


def test_a_visit_without_a_flag_goes_on() -> None:
    """Consent given, everything asked, nothing found."""
    judged = session({})
    assert (judged.answer, judged.urgency, judged.ask, judged.rules, judged.first_action) == (
        "go_on",
        None,
        (),
        (),
        None,
    )


def test_a_flag_refers() -> None:
    """A rule that surely fires ends the session with its urgency; nothing is asked any more."""
    judged = session({"screen": ASK_FEVER, "consent": None})
    assert (judged.answer, judged.urgency, judged.ask) == ("refer", "same_day", ())
    assert [(one.id, one.truth, one.effect) for one in judged.rules] == [("fever", "fires", "same_day")]


def test_the_highest_urgency_counts() -> None:
    """Of several rules that fire the most urgent decides, in whatever order they stand."""
    visit = {"screen": ASK_FEVER, "findings": {"swelling": "rising", "cool_head": "no"}}
    for more in ((STIFF, HEAD, MILD), (MILD, HEAD, STIFF)):
        judged = session(visit, *more)
        assert (judged.answer, judged.urgency) == ("refer", "emergency")
        assert judged.first_action is not None
        assert judged.first_action.do == ("Call for help.",)


def test_a_milder_rule_does_not_say_what_to_do_first() -> None:
    """Where the most urgent rule has no first action, a milder one's is not shown in its place."""
    judged = session({"screen": ASK_FEVER, "findings": {"cool_head": "no"}}, MILD)
    assert (judged.urgency, judged.first_action) == ("same_day", None)
    alone = session({"findings": {"cool_head": "no"}}, MILD)
    assert (alone.urgency, alone.first_action is not None) == ("not_urgent", True)


def test_a_flag_that_was_not_asked_is_asked_first() -> None:
    """An open rule on a fact that must be screened asks for it, and names the rule that waits."""
    judged = session({"screen": None})
    assert (judged.answer, judged.urgency) == ("ask_first", None)
    assert [(one.fact, one.question, one.rules) for one in judged.ask] == [("fever", "A fever?", ("fever",))]
    assert [(one.id, one.truth) for one in judged.rules] == [("fever", "open")]


def test_consent_that_was_not_asked_is_asked_first() -> None:
    """Without a recorded yes or no, consent is the question; a recorded no is an answer."""
    judged = session({"consent": None})
    assert (judged.answer, [one.question for one in judged.ask]) == ("ask_first", ["May I?"])
    assert session({"consent": "no"}).answer == "go_on"


def test_all_open_questions_are_asked_at_once() -> None:
    """Consent and every open flag."""
    assert [one.fact for one in session({"screen": None, "consent": None}).ask] == ["consent", "fever"]


def test_a_sign_that_was_not_looked_at_does_not_stop_the_session() -> None:
    """An open rule on facts that no screen asks for is told, and the session goes on."""
    made = Judge(content(rules=[*RULES, STIFF]))
    state = made.space.state({"fever": "no", "consent": "yes"})
    judged, urgencies = made.sessions.judge(state)
    assert (judged.answer, [one.id for one in judged.rules]) == ("go_on", ["stiff"])
    assert urgencies == {"none", "days"}


@pytest.mark.parametrize("turn", [1, -1])
def test_what_to_do_first_does_not_depend_on_the_order(turn: int) -> None:
    """Of rules with one urgency, one that says what to do first is heard, and always the same."""
    silent = rule("ahead", {"cool_head": "no"}, session={"urgency": "emergency"})
    other = {
        **HEAD,
        "id": "neck",
        "session": {"urgency": "emergency", "first_action": {"do": ["Keep still."]}},
    }
    judged = session({"findings": {"cool_head": "no"}}, *[silent, HEAD, other][::turn])
    assert judged.first_action is not None
    assert judged.first_action.do == ("Call for help.",)


@pytest.mark.parametrize(
    ("values", "urgencies"),
    [
        ({}, {"none", "days", "same_day"}),
        ({"swelling": "rising"}, {"days", "same_day"}),
        ({"fever": "yes"}, {"same_day"}),
        ({"fever": "no", "swelling": "none"}, {"none"}),
    ],
)
def test_every_urgency_that_may_be_is_kept(values: dict[str, Any], urgencies: set[str]) -> None:
    """What surely fires is the least, and each open rule may raise it."""
    made = Judge(content(rules=[*RULES, STIFF]))
    assert made.sessions.judge(made.space.state(values))[1] == urgencies


def test_a_question_without_words_of_its_own_is_its_label() -> None:
    """Every fact can be asked for."""
    space = Judge(content()).space
    assert asked(space, "swelling", ["b", "a", "b"]).question == "Swelling?"
    assert asked(space, "swelling", ["b", "a", "b"]).rules == ("b", "a")


def test_a_session_without_a_rule_leaves_the_others() -> None:
    """The rule neither refers nor is waited for."""
    judge = Judge(content())
    state = judge.space.state({"fever": "yes"})
    (with_it, _), (without, _) = judge.sessions.judge(state), judge.sessions.without("fever").judge(state)
    assert (with_it.answer, without.answer) == ("refer", "ask_first")
    (nothing, _) = judge.sessions.without("fever").without("no_consent").judge(state)
    assert nothing.answer == "go_on"


def test_the_rules_about_the_session_are_known() -> None:
    """Those that refer and those that wait for a consent; not those about options alone."""
    sessions = Judge(content()).sessions
    known = {one["id"]: sessions.knows(one["id"]) for one in RULES}
    assert known["fever"]
    assert known["no_consent"]
    assert not known["numb"]
