"""The lines of a key, for a question of each kind."""

from typing import Any

import pytest

from builder.model.key import KeyAnswer
from builder.model.paper import PaperQuestion
from builder.model.policy import POLICY_NAMES
from builder.model.question import QUESTION_KINDS
from builder.render.key_line import KeyLine, key_lines
from builder.render.wording import speaker
from tests.render.samples import words

SAY = speaker(words())
STEPS = [{"id": "o1", "title": "Wrap it"}, {"id": "o2", "title": "Lay the pad"}]
PARTNERS = [
    {"id": "r1", "title": "Win the race"},
    {"id": "r2", "title": "Limit it"},
    {"id": "r3", "title": "Clear it"},
]
REASONS = {
    "o1": "It holds the pad.",
    "o2": "It is held.",
    "r1": "That is no aim.",
    "20": "So long.",
    "60": "The pause.",
}
WITHIN = {"value": 20, "least": "15", "most": "25", "unit": "min"}
RUBRIC = {
    "asked": "What do you tell her?",
    "example": "Not today.",
    "criteria": [{"id": "stops", "title": "Stops", "levels": ["No", "Yes"], "weight": 2}],
}


def lines(kind: str, **parts: Any) -> list[tuple[str, str, str, str, str]]:  # noqa: ANN401 - parts of a key
    """Mark, word, title, reason and what is given, of each line."""
    shown = {"id": "q", "kind": kind, "stem": "?", "hint": "", "unit": "min"}
    asked = PaperQuestion.model_validate({**shown, "options": STEPS, "partners": PARTNERS})
    plain = {
        "question": "q",
        "kind": kind,
        "options": ("o1", "o2"),
        "right": (),
        "policy": "exact",
        "must_pass": False,
    }
    about = {
        "objective": "a",
        "topic": "written",
        "case": "",
        "visit": "",
        "written": "mine",
        "reasons": REASONS,
    }
    answer = KeyAnswer.model_validate({**plain, **about, **parts})
    return [
        (one.mark, one.word, one.title, one.reason, one.given)
        for one in key_lines(SAY, asked, answer, answer.reasons)
    ]


def test_options_stand_with_their_places() -> None:
    """As on the paper, right or not."""
    assert lines("one", right=("o2",)) == [
        ("wrong", "Not right", "Wrap it", "It holds the pad.", "1"),
        ("right", "Right", "Lay the pad", "It is held.", "2"),
    ]


def test_steps_stand_in_their_right_order() -> None:
    """With what must come before, whatever the marks for the rest."""
    assert lines("order", right=("o2", "o1"), must=(("o2", "o1"),)) == [
        ("right", "Place 1", "Lay the pad", "It is held.", "1"),
        (
            "right",
            "Place 2",
            "Wrap it",
            "It holds the pad. Whatever else, it must come after: Lay the pad.",
            "2",
        ),
    ]


def test_pairs_stand_with_the_letter_of_the_partner() -> None:
    """What belongs to none comes last."""
    assert lines("match", pairs=(("o1", "r3"), ("o2", "r2"))) == [
        ("right", "Right", "Wrap it – Clear it", "It holds the pad.", "C"),
        ("right", "Right", "Lay the pad – Limit it", "It is held.", "B"),
        ("wrong", "Not right", "Win the race", "That is no aim.", "A"),
    ]


def test_a_number_stands_with_its_range() -> None:
    """And wrong numbers with the reason of their own."""
    assert lines("number", within=WITHIN, reasons={"20": "So long.", "60": "The pause."}) == [
        ("right", "Right", "20 min (from 15 to 25 is right)", "So long.", "20 min"),
        ("wrong", "Not right", "60 min", "The pause.", "60 min"),
    ]


def test_a_panel_stands_with_its_votes() -> None:
    """What each option earns is said."""
    assert lines("panel", right=("o2",), votes=(("o1", 3), ("o2", 9))) == [
        ("", "chosen by 3 of 12", "Wrap it", "It holds the pad.", "1"),
        ("right", "chosen by 9 of 12", "Lay the pad", "It is held.", "2"),
    ]


def test_a_written_answer_stands_with_its_rubric() -> None:
    """The example and every level."""
    assert lines("text", rubric=RUBRIC) == [
        ("right", "For example", "", "Not today.", "by a person"),
        ("", "", "Stops", "0 = No; 1 = Yes", ""),
    ]


@pytest.mark.parametrize("kind", QUESTION_KINDS)
def test_every_policy_has_its_words(kind: str) -> None:
    """How a question is marked is said for each kind, whatever a test settles."""
    assert all(SAY(f"i_policy_{name}") for name in POLICY_NAMES[kind])  # type: ignore[index]


def test_a_line_says_no_more_than_it_is_given() -> None:
    """Place and chips are empty where a kind has none."""
    line = KeyLine("right", "Right", "Ask", "So.")
    assert (line.where, line.given, line.chips) == ("", "", ())
