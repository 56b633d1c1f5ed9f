"""Explaining: the JSON shape `caseloom/explain/1`."""

import json
from typing import Any

from builder.judge.explain import as_json
from builder.judge.judge import Judge
from tests.judge.small import RULES, case, content, rule

CALL = rule(
    "head",
    {"cool_head": "no"},
    session={"urgency": "emergency", "first_action": {"do": ["Call for help."], "avoid": ["Wait."]}},
)
JUDGE = Judge(content(rules=[*RULES, CALL]))
BRUISE = case(
    {
        "severity": "moderate",
        "screen": {"set": "none"},
        "findings": {"cool_head": "yes"},
        "chosen": [{"card": "cold", "written": {"minutes": 20, "barrier": "yes"}}],
        "wrong": [{"card": "stroke", "site": "proximal"}, {"card": "stroke"}],
    },
    {
        "id": "later",
        "since_injury": "20 days",
        "findings": {"cool_head": "no"},
        "chosen": [{"card": "refer"}],
    },
    severity="mild",
)
MADE = json.loads(json.dumps(as_json(BRUISE, JUDGE.case(BRUISE))))
VISIT = {"id", "phase", "severity", "session", "options", "cards"}
OPTION = {"id", "card", "written", "offered", "answer", "at_worst", "serves_aim", "right"} | {
    "ask",
    "rules",
    "change",
    "more_would_change",
    "would_change",
}
FIRED = {"id", "truth", "effect", "strength", "source", "contested"}
REASON = {"text", "facts", "source"}


def test_the_whole_has_exactly_its_keys() -> None:
    """Format, case and visits, and in each visit what was fixed, nothing more and nothing less."""
    assert set(MADE) == {"format", "case", "visits"}
    assert (MADE["format"], MADE["case"]) == ("caseloom/explain/1", "bruise")
    for visit in MADE["visits"]:
        assert set(visit) == VISIT
        assert set(visit["phase"]) == {"declared", "possible", "reasons", "next"}
        assert set(visit["severity"]) == {"declared", "possible", "table", "gradable", "reasons"}
        assert set(visit["session"]) == {"answer", "urgency", "ask", "rules", "first_action"}
        for reason in (*visit["phase"]["reasons"], *visit["severity"]["reasons"]):
            assert set(reason) == REASON


def test_every_option_and_card_has_exactly_its_keys() -> None:
    """The same object for what is chosen, what is wrong, and each card of the library."""
    shown = [one for visit in MADE["visits"] for one in (*visit["options"], *visit["cards"].values())]
    assert len(shown) == 4 + 2 * len(JUDGE.content.cards)
    for option in shown:
        assert set(option) == OPTION
        assert all(set(one) == FIRED for one in option["rules"])
        assert all(set(one) == {"fact", "question", "rules"} for one in option["ask"])
        assert all(set(one) == {"set", "answer", "text"} for one in option["would_change"])
    assert all(any(one[key] for one in shown) for key in ("rules", "ask", "would_change"))


def test_a_chosen_option_in_full() -> None:
    """The numbers are numbers, the site stands with what is written, and the open rule is asked for."""
    option: dict[str, Any] = MADE["visits"][0]["options"][0]
    assert {**option, "would_change": []} == {
        "id": "o1",
        "card": "cold",
        "written": {"site": "on", "minutes": 20, "barrier": "yes"},
        "offered": "chosen",
        "answer": "ok",
        "at_worst": "barred",
        "serves_aim": True,
        "right": False,
        "ask": [{"fact": "numb_skin", "question": "Is the skin numb?", "rules": ["numb"]}],
        "rules": [
            {"id": "baseline.cold", "truth": "fires", "effect": "ok", "strength": "expert"}
            | {"source": ["own_default"], "contested": False},
            {"id": "numb", "truth": "open", "effect": "barred", "strength": "expert"}
            | {"source": ["own_default"], "contested": False},
        ],
        "change": None,
        "would_change": [],
        "more_would_change": False,
    }


def test_options_are_numbered_through_chosen_and_wrong() -> None:
    """Ids follow the author's order, chosen ones first; a library card is offered to nobody."""
    told = [(one["id"], one["offered"]) for one in MADE["visits"][0]["options"]]
    assert told == [("o1", "chosen"), ("o2", "wrong"), ("o3", "wrong")]
    assert {(name, one["id"], one["offered"]) for name, one in MADE["visits"][0]["cards"].items()} == {
        (name, name, None) for name in JUDGE.content.cards
    }


def test_phase_and_severity_are_declared_and_worked_out() -> None:
    """A severity declared for the whole case counts where the visit declares none."""
    first, later = MADE["visits"]
    assert first["phase"]["next"] == {"phase": "early_repair", "in_hours": 54}
    assert [visit["severity"]["declared"] for visit in (first, later)] == ["moderate", "mild"]
    assert (first["severity"]["table"], first["severity"]["gradable"]) == ("thigh", True)
    assert first["phase"]["reasons"][0]["source"] == "own_default"


def test_a_referral_says_what_to_do_first() -> None:
    """Urgency, first action and no phase."""
    session = MADE["visits"][1]["session"]
    assert (session["answer"], session["urgency"]) == ("refer", "emergency")
    assert session["first_action"] == {"do": ["Call for help."], "avoid": ["Wait."]}
    assert MADE["visits"][1]["phase"]["possible"] == ["none"]
    assert MADE["visits"][0]["session"]["first_action"] is None
