"""A practice question in a lesson."""

import json
from dataclasses import replace
from typing import Any

import pytest

from builder.assess.placed import placed_questions
from builder.fault import Fault
from builder.model.course import Lesson
from builder.model.question import QUESTION_KINDS, AuthorQuestion
from builder.render.maker import Maker, maker
from builder.render.student_lesson import lesson_page
from builder.render.student_question import question_part, scored_by
from tests.grade.scoring.golden import EXAMPLES as GOLDEN
from tests.render.asked import EXAMPLES, asked
from tests.render.sample_site import one, parsed, said
from tests.render.samples import course


def made(question: AuthorQuestion) -> Maker:
    """The maker of a course that has one question."""
    sample = replace(course(), questions={question.id: question})
    return maker(sample, placed_questions(sample))


def part(question: AuthorQuestion) -> str:
    """The question as it stands in a lesson."""
    return question_part(made(question), question)


def texts_of(value: Any) -> list[str]:  # noqa: ANN401 - an example is plain data of any shape
    """Every `text`, `left`, `right` and `because` of an example, at any depth."""
    if isinstance(value, list):
        return [text for one in value for text in texts_of(one)]
    if not isinstance(value, dict):
        return []
    own = [str(value[key]) for key in ("text", "left", "because") if key in value]
    return own + [text for one in value.values() for text in texts_of(one)]


@pytest.mark.parametrize("kind", QUESTION_KINDS)
def test_every_kind_shows_all_of_it(kind: str) -> None:
    """Stem, options, reasons and source stand there; the reasons are folded away."""
    tree = parsed(part(asked(kind)))
    told = one(tree, "details > ul")
    assert [text for text in texts_of(EXAMPLES[kind]) if text not in said(tree)] == []
    reason = tree.select("details li p")[-1].get_text()
    told.extract()
    assert reason not in said(tree)
    assert "Rests on" in said(tree)


@pytest.mark.parametrize("kind", QUESTION_KINDS)
def test_the_controls_are_those_of_every_page(kind: str) -> None:
    """One template a kind, from the folder of that kind, in lessons as in tests."""
    fieldset = one(parsed(part(asked(kind))), "fieldset")
    assert fieldset["data-kind"] == kind
    assert fieldset.select("input, select, textarea")


def test_the_stem_is_text_with_bold_words() -> None:
    """Emphasis is marked up and everything else escaped."""
    assert "<span>Is <b>this</b> &lt; that?</span>" in part(asked("one"))


@pytest.mark.parametrize("name", ["asked", "b", "c", "d", "e", "f", "g", "h"])
def test_an_order_is_never_shown_as_it_is_right(name: str) -> None:
    """The steps above the fold are drawn, the answer has the order written."""
    question = asked("order", id=name)
    tree = parsed(part(question))
    shown = [one.get_text() for one in tree.select(".steps .what")]
    right = [one.get_text() for one in tree.select("details b")]
    assert question.order is not None
    assert right == [one.text for one in question.order.steps]
    assert shown != right
    assert sorted(shown) == sorted(right)


def test_options_in_order_keep_it() -> None:
    """An author who asks for the order written gets it."""
    options = [{"text": text, "because": "So."} for text in ("1", "2", "3")]
    block = {"options": [*options, {"text": "4", "right": "yes", "because": "So."}], "in_order": "yes"}
    tree = parsed(part(asked("one", one=block)))
    assert [one.get_text() for one in tree.select(".face b")] == ["1", "2", "3", "4"]


def test_a_tolerance_is_told() -> None:
    """Both ends of what is right are named, or the number alone where only it is right."""
    block = {"value": 20, "unit": "minutes", "within_share": "25 %", "because": "So."}
    assert "20 minutes (from 15 to 25 is right)" in part(asked("number", number=block))
    exact = {"value": 20, "unit": "minutes", "within": 0, "because": "So."}
    assert "from" not in part(asked("number", number=exact))


@pytest.mark.parametrize("kind", [kind for kind in QUESTION_KINDS if kind != "text"])
def test_the_script_is_given_what_the_examples_of_scoring_have(kind: str) -> None:
    """The very keys of the shared examples, so that what is held of them holds here."""
    data = json.loads(str(one(parsed(part(asked(kind))), ".asked")["data-scored"]))
    shapes = {frozenset(one["question"]) for one in GOLDEN if one["question"]["kind"] == kind}
    assert {frozenset(data["question"])} == shapes
    assert data["policy"] in {one["policy"] for one in GOLDEN if one["question"]["kind"] == kind}


def test_the_parts_told_are_those_that_an_answer_names() -> None:
    """Each line that an answer may mean bears the name under which it is given."""
    question = asked("match")
    placed = made(question).placed["asked"]
    tree = parsed(part(question))
    assert {str(node["data-part"]) for node in tree.select(".yours")} == {
        f"{left}>{right}" for left, right in placed.keyed.pairs
    }
    assert scored_by(placed.keyed)["pairs"] == placed.keyed.pairs


@pytest.mark.parametrize("questions", [{}, {"asked": asked("one", use="test")}])
def test_a_question_that_may_not_be_shown_is_a_fault(questions: dict[str, AuthorQuestion]) -> None:
    """Neither an unknown question nor one of a test gets onto a page."""
    sample = replace(course(), lessons={"phases": "[question asked]\n"}, questions=questions)
    with pytest.raises(Fault, match="line 1"):
        lesson_page(maker(sample), Lesson(file="phases.md", title="T"), {})
