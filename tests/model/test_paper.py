"""Papers: what a participant may see, and nothing of what is right."""

import pytest
from pydantic import ValidationError

from builder.model.key import KeyAnswer
from builder.model.paper import BoardCell, Paper, PaperOption, PaperQuestion, PublishedTest, Scene

SEEN = (BoardCell, Scene, PaperOption, PaperQuestion, Paper, PublishedTest)
SHARED = {"kind", "options", "partners"}


def test_no_part_of_a_paper_has_a_field_of_the_key() -> None:
    """What a key says of a question has no place on a paper, whatever it is called."""
    fields = {name for noun in SEEN for name in noun.model_fields}
    assert fields & KeyAnswer.model_fields.keys() == SHARED


@pytest.mark.parametrize(
    "name", ["right", "mark", "reason", "case", "visit", "must_pass", "pairs", "votes", "within", "rubric"]
)
def test_a_paper_takes_nothing_of_the_key_along(name: str) -> None:
    """A question with one thing too many is refused, not passed on."""
    scene = Scene(title="18 h", client="Rider", story="A blow.", board=(), screen="")
    question = PaperQuestion(
        id="q8f3a",
        kind="one",
        stem="Which?",
        hint="",
        scene=scene,
        options=(PaperOption(id="o41c", title="Cold"),),
    )
    written = question.model_dump()
    assert PaperQuestion.model_validate(written) == question
    with pytest.raises(ValidationError, match="Extra inputs are not permitted"):
        PaperQuestion.model_validate({**written, name: "x"})
    with pytest.raises(ValidationError, match="Extra inputs are not permitted"):
        PaperOption.model_validate({**written["options"][0], name: "x"})
