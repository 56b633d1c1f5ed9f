"""The author's options."""

from dataclasses import replace
from typing import Any

from builder.assess.kinds.option import questions
from builder.assess.question import Question
from builder.model.card import Contested
from tests.assess.sample import card, fired, judged_option, material

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


def drawn(**judged: object) -> Question:
    """The option question of a test whose library has more cards that are closed today."""
    closed = {name: judged_option(name, "barred") for name in ("heat", "knead", "strip", "tap")}
    made = material(cards={**closed, **judged})
    cards = {name: card(name) for name in (*closed, *judged)}
    library = replace(made.course.content, cards={**made.course.content.cards, **cards})
    (asked,) = questions(replace(made, course=replace(made.course, content=library)))
    return asked


def test_a_test_asks_for_one_among_three_that_are_wrong() -> None:
    """However many the author wrote, one right option stands beside three that the rules surely close."""
    asked = drawn()
    assert (asked.shown.kind, len(asked.shown.options)) == ("one", 4)
    assert len(asked.judged.right) == 1
    marks = [one.mark for place, one in enumerate(asked.judged.said) if place not in asked.judged.right]
    assert set(marks) <= {"barred", "not_yet"}


def test_what_is_unsure_or_contested_is_no_wrong_answer() -> None:
    """Neither what only may be closed, nor what a contested rule closes, nor what would be fine as well."""
    point = Contested(point="cold", taught="Yes.", other="No.")
    unsure = {
        "open": judged_option("open", "ok", at_worst="barred", right=False),
        "fine": judged_option("fine", "ok"),
        "fought": judged_option("fought", "barred", rules=(fired("r", "barred", contested=point),)),
        "changed": judged_option("changed", "change"),
    }
    titles = {option.title for option in drawn(**unsure).shown.options}
    assert titles.isdisjoint({f"The {name}" for name in unsure})


def test_practice_shows_what_the_author_wrote() -> None:
    """Neither more nor fewer, whatever else is closed today."""
    closed = {name: judged_option(name, "barred") for name in ("refer",)}
    asked = next(questions(replace(material(cards=closed), alone=False)))
    assert {option.title for option in asked.shown.options} == {"The cold", "The rub", "The wrap"}
