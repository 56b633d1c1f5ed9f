"""The author's options."""

from typing import Any

from builder.assess.kinds.option import questions
from builder.assess.question import Question
from tests.assess.sample import fired, judged_option, material

TWO_CHOSEN: dict[str, Any] = {"chosen": [{"card": "cold"}, {"card": "wrap"}], "wrong": [{"card": "rub"}]}


def right(question: Question) -> list[str]:
    """The titles of what is right."""
    return [question.shown.options[place].title for place in question.judged.right]


def test_one_chosen_option_asks_for_one() -> None:
    """With one option chosen, one is to be picked."""
    (asked,) = questions(material())
    assert (asked.shown.kind, asked.shown.stem) == ("one", "What do you do now?")
    assert right(asked) == ["The cold"]


def test_several_chosen_options_ask_for_all() -> None:
    """With more chosen, everything one would do is to be picked, and how many is not said."""
    judged = {
        "chosen": (judged_option("cold"), judged_option("wrap")),
        "wrong": (judged_option("rub", "barred"),),
    }
    (asked,) = questions(material(TWO_CHOSEN, **judged))
    assert (asked.shown.kind, asked.shown.stem) == ("many", "Choose everything you would do today.")
    assert right(asked) == ["The cold", "The wrap"]


def test_each_option_has_its_reason() -> None:
    """What is said belongs to the option beside which it stands."""
    (asked,) = questions(material())
    said = {
        choice.title: one.reason for choice, one in zip(asked.shown.options, asked.judged.said, strict=True)
    }
    assert said == {"The cold": "Why rule_cold.", "The rub": "Why rule_rub.", "The wrap": "Why rule_wrap."}


def test_the_judgement_decides_not_the_author() -> None:
    """What the rules bar is not right, wherever the author listed it."""
    barred = judged_option("cold", "barred", rules=(fired("r", "barred"),))
    (asked,) = questions(material(chosen=(barred,)))
    assert asked.judged.right == ()


def test_swapping_chosen_and_wrong_changes_nothing_shown() -> None:
    """The visible part is the same whichever of three options the author chose."""
    swapped = {"chosen": [{"card": "rub"}], "wrong": [{"card": "wrap", "site": "remote"}, {"card": "cold"}]}
    plain = {"chosen": [{"card": "cold"}], "wrong": [{"card": "rub"}, {"card": "wrap", "site": "remote"}]}
    (one,) = questions(material(plain))
    (other,) = questions(material(swapped))
    assert one.shown == other.shown


def test_a_single_option_asks_nothing() -> None:
    """Without anything wrong to offer there is no question."""
    assert list(questions(material({"wrong": []}, wrong=()))) == []
