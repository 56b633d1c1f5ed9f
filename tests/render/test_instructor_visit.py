"""One visit as its key."""

from dataclasses import replace

from builder.model.judgement import Asked, Doubt, PhaseJudgement, SessionJudgement, Turn
from builder.render.instructor_visit import visit_key
from builder.render.maker import maker
from tests.render.sample_instructor import private_page
from tests.render.sample_judged import case, judged_course, judged_visit
from tests.render.sample_site import one, said

FIRST, SECOND = private_page("cases/landing.md").select(".visit")
MADE = maker(judged_course())


def test_phase_and_severity_stand_with_their_reasons() -> None:
    """Word and pattern of the phase, the steps to it with their sources, and when the next begins."""
    judged = one(FIRST, ".judged")
    assert [said(node) for node in judged.select(".big")] == [
        "acute",
        "moderate",
        "Go on",
        "limit the injury",
    ]
    assert judged.select(".phase-word svg")
    assert "By the calendar: acute. Common practice, no source" in said(judged)
    assert "By the calendar early repair (subacute) begins in 42 hours." in said(judged)
    assert "As declared." in said(judged)


def test_a_declared_phase_is_told_where_it_differs() -> None:
    """Where the rules leave more than the author declared, both are told; where they agree, nothing is."""
    landing = case("landing")
    open_phase = replace(judged_visit(), phase=PhaseJudgement(("acute", "early_repair"), ()))
    told = visit_key(MADE, "cases/landing.md", landing, landing.visits[0], open_phase)["phase"]
    same = visit_key(MADE, "cases/landing.md", landing, landing.visits[0], judged_visit())["phase"]
    assert isinstance(told, dict)
    assert isinstance(same, dict)
    assert (told["declared"], same["declared"]) == ("acute", "")


def test_the_session_refers_with_rule_and_first_action() -> None:
    """Stop and refer, how soon, by which rule, what to do at once and what not."""
    text = said(SECOND)
    assert "Stop and refer: emergency" in text
    assert "Title of rf_pulse_gone" in text
    assert "At once Loosen any wrap" in text
    assert "Not now No ice" in text


def test_what_must_be_asked_is_told() -> None:
    """Where the session asks first, the questions stand with it."""
    landing, asked = case("landing"), Asked("calf_pain", "Does the calf hurt?", ())
    waiting = replace(judged_visit(), session=SessionJudgement("ask_first", None, (asked,), (), None))
    told = visit_key(MADE, "cases/landing.md", landing, landing.visits[0], waiting)["session"]
    assert isinstance(told, dict)
    assert (told["mark"], told["word"], told["ask"]) == ("ask", "Ask first", ["Does the calf hurt?"])


def test_right_and_wrong_options_stand_apart() -> None:
    """What is offered as right, then as wrong, each with shape, word and whether it is right today."""
    heads = [said(node) for node in FIRST.select("h3")]
    assert heads[:2] == ["Offered as right", "Offered as wrong"]
    right, wrong = FIRST.select(".marks")
    assert "OK as written Cold pack a right choice today" in said(right)
    assert "Cross-fibre friction not a right choice today" in said(wrong)
    assert "The author: Nothing else today." in said(right)


def test_an_option_tells_all_that_stands_behind_it() -> None:
    """Both answers, aim, change, question, each rule with id, and what would change the answer."""
    text = said(FIRST.select(".marks")[1])
    for part in (
        "As it surely is: Only if changed",
        "At worst: Not here",
        "Does not serve today's aim.",
        "To change: warmed first",
        "To ask: Does the calf hurt without a cause?",
        "baseline.friction",
        "Contested: As often taught: Only on fibrous tissue. On the other side: One school works early.",
        "may apply, not recorded",
        "not yet reviewed",
        "What would change it pain at rest: 1 of 10 → Not yet",
    ):
        assert part in text, part


def test_every_answer_has_its_shape() -> None:
    """No answer stands by its word alone."""
    assert all(node.select("svg.mark") for node in FIRST.select(".verdict"))
    assert all(node.select(":scope > span > svg.mark") for node in FIRST.select(".marks > li"))


def test_other_doses_are_listed() -> None:
    """Each dose of the ladder with its answer; the one that is written says so."""
    assert [said(node) for node in FIRST.select(".doses li")] == [
        "20 min OK as written as written",
        "40 min Only if changed",
    ]


def test_the_library_is_sorted_by_answer() -> None:
    """Every card stands once; those that serve today's aim come first."""
    assert [said(node) for node in FIRST.select(".usual > div")] == [
        "OK as written Cold pack",
        "Not today's aim Refer",
        "Not yet Cross-fibre friction",
    ]


def test_what_must_be_asked_and_what_would_refer_stand_by_name() -> None:
    """For each technique the history it waits for, for each urgency the flags; nothing that is idle."""
    landing = case("landing")
    doubts = (
        Doubt("calf_pain", "Q?", 0, matters=True),
        Doubt("heat", "Q?", 0),
        Doubt("heat", "Q?", None, matters=True),
    )
    turns = (Turn("heat", "yes"), Turn("calf_pain", "yes", "days"), Turn("heat", "yes", "emergency"))
    judged = replace(judged_visit(), doubts=doubts, turns=turns)
    told = visit_key(MADE, "cases/landing.md", landing, landing.visits[0], judged)
    facts = MADE.course.content.facts.facts
    pain, heat = facts["calf_pain"].label, facts["heat"].label
    assert told["before"] == [("Cold pack", [pain])]
    assert told["ending"] == [("Emergency", [heat]), ("Within days", [pain])]


def test_what_happened_next_ends_the_visit() -> None:
    """The story goes on for the instructor too."""
    assert said(FIRST.select(".aside-clay")[-1]) == "What happened next The swelling settled."
