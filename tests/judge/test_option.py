"""Options as written: as they surely are, at worst, and whether they serve the day's aim."""

from typing import Any

import pytest

from builder.judge.judge import Judge
from builder.model.judgement import OptionJudgement
from tests.judge.small import CARDS, PHASES, RULES, card, case, content, rule

GOOD: dict[str, Any] = {"minutes": 15, "barrier": "yes"}
HELD = {"minutes": {"at_most": 10}, "barrier": "yes"}
LATE = {"since_injury": "20 days", "findings": {"recalled_flexion": 100}}


def judged(
    card: str = "cold",
    site: str = "on",
    written: dict[str, Any] | None = None,
    visit: dict[str, Any] | None = None,
    **more: list[dict[str, Any]],
) -> OptionJudgement:
    """One chosen option on one visit, under the small content or with other rules or cards."""
    option = {"card": card, "site": site, "written": written or {}}
    (one,) = Judge(content(**more)).case(case({**(visit or {}), "chosen": [option]}))
    return one.chosen[0]


def short(option: OptionJudgement) -> tuple[str, str]:
    """The two answers."""
    return option.answer, option.at_worst


@pytest.mark.parametrize(
    ("written", "answers", "change"),
    [
        (GOOD, ("ok", "ok"), None),
        ({"minutes": 20, "barrier": "yes"}, ("ok", "ok"), None),
        ({"minutes": 21, "barrier": "yes"}, ("change", "change"), "time at most 20 min"),
        ({"minutes": 15, "barrier": "no"}, ("change", "change"), "cloth between"),
        ({"minutes": 21, "barrier": "no"}, ("change", "change"), "time at most 20 min; cloth between"),
        ({"minutes": 15}, ("ok", "change"), "cloth between"),
        ({}, ("ok", "change"), "time at most 20 min; cloth between"),
        ({"minutes": 21}, ("change", "change"), "time at most 20 min; cloth between"),
    ],
)
def test_a_cell_asks_for_what_must_be_written(
    written: dict[str, Any], answers: tuple[str, str], change: str | None
) -> None:
    """Met: nothing. Not met: change, surely. Not written: change at worst. The change is named."""
    option = judged(written=written)
    assert (short(option), option.change) == (answers, change)
    assert option.right == (answers[1] == "ok")
    assert [(one.id, one.truth) for one in option.rules] == [
        ("baseline.cold", "fires" if answers[0] == answers[1] else "open")
    ]


@pytest.mark.parametrize(
    ("site", "visit", "answer"),
    [
        ("on", {}, "barred"),
        ("adjacent", {}, "barred"),
        ("proximal", {}, "ok"),
        ("on", LATE, "ok"),
        ("on", {"since_injury": "6 days", "findings": {"recalled_flexion": 72}}, "not_yet"),
    ],
)
def test_the_cell_of_phase_and_site_answers(site: str, visit: dict[str, Any], answer: str) -> None:
    """The card's own grid is where every answer begins."""
    assert short(judged("stroke", site, visit=visit)) == (answer, answer)


def test_worst_wins() -> None:
    """Whatever else allows or asks for change, the strictest answer stands, and all are told."""
    slower = rule("slower", {"swelling": "none"}, options=[{"groups": ["cold"], "needs": HELD}])
    visit = {"findings": {"numb_skin": "yes"}}
    option = judged(written=GOOD, visit=visit, rules=[slower, *RULES])
    assert short(option) == ("barred", "barred")
    assert [(one.id, one.effect) for one in option.rules] == [
        ("numb", "barred"),
        ("slower", "change"),
        ("baseline.cold", "ok"),
    ]


def test_a_rule_that_is_not_known_to_fire_counts_at_worst() -> None:
    """Nobody asked about numb skin: as it surely is OK, at worst barred, and the question settles it."""
    option = judged(written=GOOD, visit={"screen": {"set": "none"}, "findings": {"fever": "no"}})
    assert short(option) == ("ok", "barred")
    assert not option.right
    assert [(one.fact, one.question, one.rules) for one in option.ask] == [
        ("numb_skin", "Is the skin numb?", ("numb",))
    ]
    assert ("numb", "open", "barred") in [(one.id, one.truth, one.effect) for one in option.rules]


NEEDS = rule(
    "needs", {"swelling": "rising"}, options=[{"cards": ["cold"], "needs": {"minutes": {"at_most": 10}}}]
)


@pytest.mark.parametrize(
    ("swelling", "minutes", "answers", "told"),
    [
        ("none", 15, ("ok", "ok"), []),
        ("rising", 10, ("ok", "ok"), []),
        ("rising", 15, ("change", "change"), [("needs", "fires", "time at most 10 min")]),
        ("rising", None, ("ok", "change"), [("needs", "open", "time at most 10 min")]),
        (None, 10, ("ok", "ok"), []),
        (None, 15, ("ok", "change"), [("needs", "open", "time at most 10 min")]),
        (None, None, ("ok", "change"), [("needs", "open", "time at most 10 min")]),
    ],
)
def test_needs_met_unmet_and_unwritten(
    swelling: str | None, minutes: int | None, answers: tuple[str, str], told: list[tuple[str, str, str]]
) -> None:
    """A rule that needs something bears only where it may fire and the need may not be met."""
    made = Judge(content(rules=[*RULES, NEEDS]))
    known = {"injury": "soreness", "consent": "yes", "fever": "no", "numb_skin": "no", "swelling": swelling}
    frame = made.frame({name: one for name, one in known.items() if one is not None}, "mild", None)
    plain: Any = {"barrier": "yes", **({} if minutes is None else {"minutes": minutes})}
    option = made.options.judge(frame, made.content.cards["cold"], "on", plain)
    assert [(one.id, one.truth, one.change) for one in option.rules if one.id == "needs"] == told
    assert option.at_worst == ("change" if minutes is None else answers[1])
    assert option.answer == answers[0]


def test_a_need_is_named_once() -> None:
    """The same change asked for by cell and rule is one change."""
    again = rule("again", {"consent": "yes"}, options=[{"cards": ["cold"], "needs": {"barrier": "yes"}}])
    option = judged(written={"minutes": 15, "barrier": "no"}, rules=[*RULES, again])
    assert option.change == "cloth between"


def test_a_phase_that_is_open_is_taken_at_its_worst() -> None:
    """Each possible phase gives its answer: surely the mildest of them, at worst the strictest."""
    unseen = {**LATE, "findings": {"recalled_flexion": 100, "swelling": None}}
    option = judged("stroke", visit=unseen)
    assert short(option) == ("ok", "barred")
    assert [(asked.fact, asked.rules) for asked in option.ask] == [("swelling", ("baseline.stroke",))]
    assert {(one.id, one.truth, one.effect) for one in option.rules} == {
        ("baseline.stroke", "open", "barred")
    }


def test_phases_that_answer_alike_are_sure() -> None:
    """Not knowing the phase matters only where the phases differ."""
    made = Judge(content())
    frame = made.frame(
        {"injury": "contusion", "tissue": "muscle", "consent": "yes", "fever": "no"}, None, None
    )
    option = made.options.judge(frame, made.content.cards["protect"], "on", {})
    assert (len(frame.phase.possible) > 1, short(option)) == (True, ("ok", "ok"))


@pytest.mark.parametrize(
    ("visit", "facts"),
    [
        ({"screen": {"set": "none"}, "findings": {"numb_skin": "no"}}, ["fever"]),
        ({"consent": None}, ["consent"]),
        ({"screen": {"set": "none"}, "findings": {"numb_skin": "no"}, "consent": None}, ["consent", "fever"]),
    ],
)
def test_the_question_behind_what_is_derived_is_asked(visit: dict[str, Any], facts: list[str]) -> None:
    """Work by hand waits for the referral; what is asked of the client is the flag itself."""
    option = judged("stroke", "proximal", visit=visit)
    assert short(option) == ("ok", "barred")
    assert sorted(one.fact for one in option.ask) == facts


def test_the_measure_behind_a_grade_is_asked() -> None:
    """A rule on severity waits for the bend of the knee, at the right time or as it was on the first day."""
    grave = rule("grave", {"severity": "severe"}, options=[{"cards": ["cold"], "answer": "barred"}])
    for hours, fact in (("18 h", "knee_flexion"), ("40 h", "recalled_flexion")):
        unseen = {"since_injury": hours, "severity": "moderate", "findings": {"knee_flexion": None}}
        option = judged(written=GOOD, visit=unseen, rules=[*RULES, grave])
        assert short(option) == ("ok", "barred")
        assert [asked.fact for asked in option.ask] == [fact]


def test_consent_and_flags_bar_hands_on_work_by_rules_alone() -> None:
    """A recorded no, and a flag that ends the session, bar work by hand and leave the rest."""
    refused = {"consent": "no"}
    flagged = {"screen": {"set": "short", "all_no_except": {"fever": "yes"}}}
    for visit in (refused, flagged):
        assert short(judged("stroke", "proximal", visit=visit)) == ("barred", "barred")
        assert short(judged("protect", visit=visit)) == ("ok", "ok")


@pytest.mark.parametrize(
    ("urgency", "answers"),
    [
        ("emergency", ("ok", "ok")),
        ("same_day", ("ok", "ok")),
        ("days", ("change", "change")),
        (None, ("ok", "change")),
    ],
)
def test_a_referral_is_as_urgent_as_the_session(urgency: str | None, answers: tuple[str, str]) -> None:
    """Referring too late is only right if changed; too soon is not wrong."""
    flagged = {"screen": {"set": "short", "all_no_except": {"fever": "yes"}}}
    option = judged("refer", written={"urgency": urgency} if urgency else {}, visit=flagged)
    assert short(option) == answers
    assert option.right == (answers[1] == "ok")


@pytest.mark.parametrize(
    ("card", "visit", "serves"),
    [
        ("cold", {}, True),
        ("protect", {}, True),
        ("ask", {}, False),
        ("refer", {}, False),
        ("cold", LATE, False),
        ("ask", {"consent": None}, True),
        ("cold", {"consent": None}, False),
        ("refer", {"screen": {"set": "short", "all_no_except": {"fever": "yes"}}}, True),
        ("protect", {"screen": {"set": "short", "all_no_except": {"fever": "yes"}}}, False),
    ],
)
def test_an_option_serves_the_aim_of_the_day(card: str, visit: dict[str, Any], serves: bool) -> None:  # noqa: FBT001
    """The phase's aim; asking where something must be asked; referring where the session is over."""
    written: dict[str, Any] = {"cold": GOOD, "refer": {"urgency": "emergency"}}.get(card, {})
    option = judged(card, written=written, visit=visit)
    assert (option.serves_aim, option.right) == (serves, serves)


def test_an_option_serves_only_if_it_serves_every_aim_that_may_be() -> None:
    """Where two phases are possible, what serves one of them is not yet right."""
    made = Judge(content())
    known: Any = {"injury": "contusion", "tissue": "muscle", "consent": "yes", "fever": "no", "hours": 60}
    frame = made.frame({**known, "region": "ankle", "numb_skin": "no"}, "mild", None)
    assert frame.aims == ("limit", "clear")
    cold = made.options.judge(frame, made.content.cards["cold"], "on", GOOD)
    assert (cold.serves_aim, cold.right) == (False, False)
    assert made.options.judge(frame, made.content.cards["protect"], "on", {}).right


def test_a_rule_counts_only_at_its_sites() -> None:
    """Away from the sites a rule names it says nothing."""
    here = rule(
        "here", {"consent": "yes"}, options=[{"cards": ["cold"], "sites": ["on"], "answer": "not_yet"}]
    )
    assert short(judged("cold", "on", GOOD, rules=[*RULES, here])) == ("not_yet", "not_yet")
    assert short(judged("cold", "remote", GOOD, rules=[*RULES, here])) == ("ok", "ok")


def test_a_rule_may_ask_how_an_option_is_written() -> None:
    """A condition on what is written is open until it is written, and asks the client nothing."""
    long = rule("long", {"written.minutes": {"over": 10}}, options=[{"cards": ["cold"], "answer": "not_yet"}])
    assert short(judged(written={"minutes": 10, "barrier": "yes"}, rules=[*RULES, long])) == ("ok", "ok")
    assert short(judged(written=GOOD, rules=[*RULES, long])) == ("not_yet", "not_yet")
    unwritten = judged(written={"barrier": "yes"}, rules=[*RULES, long])
    assert (short(unwritten), unwritten.ask) == (("ok", "not_yet"), ())


def test_an_empty_cell_of_a_card_bars() -> None:
    """A card with a hole is judged, and strictly."""
    holed = card("holed", "technique", ["limit"], [{"phase": PHASES[1:], "answer": "ok"}])
    option = judged("holed", cards=[*CARDS, holed])
    assert short(option) == ("barred", "barred")
    assert option.rules[0].why == "The card says nothing of this phase and site."


def test_every_card_is_judged_at_its_usual_dose() -> None:
    """The library's cards are answered without anybody writing them."""
    (visit,) = Judge(content()).case(case({}))
    assert {name: short(one) for name, one in visit.cards.items()} == {
        "cold": ("ok", "ok"),
        "stroke": ("barred", "barred"),
        "refer": ("ok", "ok"),
        "ask": ("ok", "ok"),
        "protect": ("ok", "ok"),
    }
