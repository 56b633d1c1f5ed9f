"""Questions that an author wrote: what is shown of each kind, and what is right under the ids shown."""

from dataclasses import replace
from fractions import Fraction
from typing import Any

import pytest

from builder.assess.keyed import keyed_parts, said_by_name
from builder.assess.laying import Laid, laid_out
from builder.assess.opaque import Opaque
from builder.assess.question import Question
from builder.assess.written import written_question
from builder.model.keyed import KeyedParts
from builder.model.library import Course
from builder.model.question import QUESTION_KINDS, AuthorQuestion
from tests.assess.sample import SECRET, case, course
from tests.model.question_blocks import BLOCKS, QUESTION

COURSE: Course = course([case("alpha")])


def asked(kind: str, **changed: object) -> Question:
    """The sound question of a kind, its block changed."""
    block = {**BLOCKS[kind], **changed}
    return written_question(COURSE, AuthorQuestion.model_validate({**QUESTION, kind: block}))


def laid(question: Question, scope: str = "final|A") -> Laid:
    """A question laid out by itself."""
    return laid_out([question.shown], Opaque(SECRET, scope))[0]


def keyed(question: Question) -> tuple[KeyedParts, dict[str, str]]:
    """The key of a question with every id replaced by the text it stands for."""
    one = laid(question)
    titles = {part.id: part.title for part in (*one.question.options, *one.question.partners)}
    parts = keyed_parts(one, question.judged)

    def named(value: Any) -> Any:  # noqa: ANN401 - any plain value
        if isinstance(value, tuple):
            return tuple(named(each) for each in value)
        return titles.get(value, value) if isinstance(value, str) else value

    told = {titles.get(name, name): said.reason for name, said in said_by_name(one, question.judged).items()}
    return KeyedParts.model_construct(**{name: named(value) for name, value in dict(parts).items()}), told


def turned(block: dict[str, Any], key: str) -> dict[str, Any]:
    """A block whose list is written the other way round."""
    return {key: block[key][::-1]}


@pytest.mark.parametrize("kind", QUESTION_KINDS)
def test_every_kind_is_asked(kind: str) -> None:
    """By its stem and a hint, without a scene; the sheet and the key go by the same kind."""
    made = asked(kind)
    one = laid(made).question
    assert (one.kind, one.stem, one.scene) == (kind, "What comes first?", None)
    assert one.hint
    assert keyed_parts(laid(made), made.judged).kind == kind
    assert made.shown.origin == "questions/first_aid"


def test_right_options_are_known_by_their_ids() -> None:
    """Every option has its reason, and those that are right are named in the order shown."""
    parts, told = keyed(asked("many"))
    assert set(parts.right) == {"Ask", "Cool"}
    assert told == dict.fromkeys(("Ask", "Cool", "Knead"), "So it is taught.")


def test_steps_are_keyed_in_their_right_order() -> None:
    """With those that must come before others."""
    parts, told = keyed(asked("order"))
    assert parts.right == ("Lay the pad", "Wrap it", "Look at the toes")
    assert parts.must == (("Lay the pad", "Wrap it"), ("Wrap it", "Look at the toes"))
    assert set(told) == set(parts.right)


def test_pairs_are_keyed_and_spare_partners_told() -> None:
    """A left side has its partner; a partner of none has a reason of its own."""
    parts, told = keyed(asked("match"))
    assert set(parts.pairs) == {("acute", "limit the injury"), ("early repair", "clear the swelling")}
    assert set(parts.partners) == {"limit the injury", "clear the swelling", "win the race"}
    assert set(told) == {"acute", "early repair", "win the race"}


def test_a_number_is_keyed_with_its_bounds() -> None:
    """Every number with a reason is told by how it reads."""
    made = asked("number", wrong=[{"value": 60, "because": "That is the pause."}])
    parts, told = keyed(made)
    assert parts.within is not None
    assert (parts.within.least, parts.within.most, parts.within.unit) == (
        Fraction(15),
        Fraction(25),
        "minutes",
    )
    assert told == {"20": "So it is taught.", "60": "That is the pause."}
    assert laid(made).question.unit == "minutes"


def test_a_panel_is_keyed_by_its_votes() -> None:
    """Most votes are right; the panel is named, the votes are not shown."""
    made = asked("panel")
    parts, _ = keyed(made)
    assert (parts.right, set(parts.votes)) == (("Wait",), {("Go on", 3), ("Wait", 9)})
    assert "Twelve therapists, in the spring" in laid(made).question.hint
    assert "9" not in laid(made).question.model_dump_json()


def test_a_written_answer_is_keyed_by_its_rubric() -> None:
    """What was asked, the example and the criteria; about how many words is shown."""
    made = asked("text")
    parts, told = keyed(made)
    assert parts.rubric is not None
    assert (parts.rubric.asked, parts.rubric.example) == ("What comes first?", "It still bleeds.")
    assert (told, laid(made).question.words) == ({}, 60)


@pytest.mark.parametrize(
    ("kind", "key"),
    [("one", "options"), ("many", "options"), ("order", "steps"), ("match", "pairs"), ("panel", "options")],
)
def test_what_is_shown_does_not_follow_the_order_written(kind: str, key: str) -> None:
    """An author who writes the same the other way round gives the same paper."""
    block = turned(BLOCKS[kind], key)
    if kind == "order":
        block = {"steps": [{**step, "after": []} for step in block["steps"]]}
    assert asked(kind, **block).shown == asked(kind).shown


@pytest.mark.parametrize(("kind", "key"), [("one", "options"), ("panel", "options")])
def test_options_of_a_scale_keep_the_order_written(kind: str, key: str) -> None:
    """`in_order` says that they rise, or are the steps of a scale."""
    made = asked(kind, in_order="yes")
    assert [option.title for option in laid(made).question.options] == [
        one["text"] for one in BLOCKS[kind][key]
    ]


def test_the_secret_decides_both_sides_of_matching() -> None:
    """Other versions show other orders of left and right sides, under other ids."""
    many = [{"left": f"left {at}", "right": f"right {at}", "because": "So."} for at in range(6)]
    made = asked("match", pairs=many, spare=[])
    papers = [laid(made, f"final|{letter}").question for letter in "ABCDEF"]
    assert len({tuple(one.title for one in paper.options) for paper in papers}) > 1
    assert len({tuple(one.title for one in paper.partners) for paper in papers}) > 1
    assert len({one.id for paper in papers for one in (*paper.options, *paper.partners)}) == 6 * 12


def test_everything_that_is_said_is_among_all_of_it() -> None:
    """Whoever asks whether all of it is reviewed misses no part."""
    judged = asked("match").judged
    assert len(judged.every) == 3
    assert len(replace(judged, spare=()).every) == 2
