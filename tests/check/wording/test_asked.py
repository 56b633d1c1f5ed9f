"""Questions and visits as the wording checks see them."""

from builder.check.wording.asked import asked, shown_options, spoken
from builder.model.question import AuthorQuestion
from tests.check.small_course import evidence
from tests.check.wording.written import FRAME, WHY, course_of, question
from tests.judge.small import case


def test_options_stand_where_they_are_written() -> None:
    """Each option bears its path; right and wrong are told apart."""
    (_, one), *_ = asked(course_of(question("What now?", "Ask", "Cool")))
    assert one.file == "questions/asked.yml"
    assert [(two.text, two.path) for two in one.right] == [("Ask", ("one", "options", 0, "text"))]
    assert [two.text for two in one.wrong] == ["Cool"]


def test_where_a_panel_judges_nothing_is_right() -> None:
    """Its options are seen; a question without options has none."""
    voted = {
        "judges": "Ten",
        "options": [{"text": one, "votes": 5, "because": WHY} for one in ("Go", "Stay")],
    }
    number = {"value": 1, "unit": "h", "within": 0, "because": WHY}
    judged = AuthorQuestion.model_validate({**FRAME, "id": "judged", "stem": "Go on?", "panel": voted})
    counted = AuthorQuestion.model_validate({**FRAME, "id": "counted", "stem": "How long?", "number": number})
    seen = [one for _, one in asked(course_of(judged, counted))]
    assert [len(one.options) for one in seen] == [2, 0]
    assert [one.right for one in seen] == [[], []]


def test_other_languages_are_let_be() -> None:
    """The book speaks English, of whatever country; and without a book nothing is said."""
    one = question("What now?", "Ask", "Cool")
    assert spoken(course_of(one, language="en-GB")) is not None
    assert list(asked(course_of(one, language="nb"))) == []
    assert spoken(evidence()) is None


def test_the_options_of_a_visit_are_told_by_title_and_chips() -> None:
    """Chosen and wrong ones, each with its path in the case."""
    (visit,) = shown_options(evidence(case({"wrong": [{"card": "stroke"}]})))
    assert visit.file == "cases/bruise.yml"
    assert visit.options[-1].path == ("visits", 0, "wrong", 0)
    assert not visit.options[-1].right
    assert all(one.text for one in visit.options)
