"""In what order the chosen strokes follow each other."""

from dataclasses import replace

from builder.assess.kinds.order import questions
from builder.assess.material import Material
from builder.assess.question import Question
from builder.model.card import Contested
from builder.model.judgement import OptionJudgement
from tests.assess.sample import card, fired, judged_option, material

ORDER = {"rub": 1, "cold": 2, "wrap": 5}
CHOSEN = tuple(judged_option(name) for name in ("wrap", "cold", "rub"))
POINT = Contested(point="order_of_strokes", taught="Mildest first.", other="Untested.")


def made(
    chosen: tuple[OptionJudgement, ...] = CHOSEN, order: dict[str, int] | None = None, *, alone: bool = True
) -> Material:
    """A visit with these options chosen, whose cards have these places in the order."""
    plain = material(chosen=chosen)
    cards = {
        name: card(name, order=(ORDER if order is None else order).get(name))
        for name in ("rub", "cold", "wrap")
    }
    content = replace(plain.course.content, cards={**plain.course.content.cards, **cards})
    return replace(plain, course=replace(plain.course, content=content), alone=alone)


def asked(*given: object, **changed: object) -> list[Question]:
    """The questions of such a visit."""
    return list(questions(made(*given, **changed)))  # type: ignore[arg-type]


def test_the_steps_are_right_in_the_order_of_the_cards() -> None:
    """Whatever the author chose first; they are shown by their text."""
    (question,) = asked()
    titles = [one.title for one in question.shown.options]
    assert (question.shown.kind, titles) == ("order", ["The cold", "The rub", "The wrap"])
    assert [titles[place] for place in question.judged.right] == ["The rub", "The cold", "The wrap"]


def test_each_step_says_its_place_and_why() -> None:
    """By the rules that hold it right; what would change it is another question."""
    (question,) = asked()
    first = question.judged.said[question.judged.right[0]]
    assert (first.mark, first.word, first.reason, first.would_change) == (
        "right",
        "Place 1",
        "Why rule_rub.",
        (),
    )


def test_two_strokes_are_practised_and_not_tested() -> None:
    """In a test they would be as good as a guess; one alone has no order."""
    assert asked(CHOSEN[:2]) == []
    assert len(asked(CHOSEN[:2], alone=False)) == 1
    assert asked(CHOSEN[:1], alone=False) == []


def test_a_stroke_without_a_place_is_left_out() -> None:
    """What has no place among the strokes is done before or after, nobody says when."""
    (question,) = asked(CHOSEN, {"rub": 1, "wrap": 5}, alone=False)
    assert [one.title for one in question.shown.options] == ["The rub", "The wrap"]


def test_the_same_place_twice_makes_no_question() -> None:
    """Either could come first."""
    assert asked(CHOSEN, {"rub": 1, "cold": 1, "wrap": 5}, alone=False) == []


def test_a_stroke_that_is_wrong_today_makes_no_question() -> None:
    """It is not asked when to do what is not done."""
    assert asked((judged_option("wrap", "not_yet"), *CHOSEN[1:]), alone=False) == []


def test_a_contested_order_is_tested_only_where_the_course_says_where_it_stands() -> None:
    """To practise on, both sides are shown and that is enough."""
    rule = fired("rub", "ok", contested=POINT)
    chosen = (judged_option("rub", rules=(rule,)), *CHOSEN[:2])
    assert asked(chosen) == []
    assert len(asked(chosen, alone=False)) == 1
    settled = made(chosen)
    file = settled.course.file.model_copy(update={"positions": {"order_of_strokes": "Mildest first."}})
    (question,) = questions(replace(settled, course=replace(settled.course, file=file)))
    assert "As taught here: Mildest first." in question.judged.said[question.judged.right[0]].ground.contested
