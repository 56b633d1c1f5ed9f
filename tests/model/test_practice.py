"""Practice: a word with its shape for every option."""

import pytest
from pydantic import ValidationError

from builder.model.practice import Feedback


@pytest.mark.parametrize("mark", ["ok", "change", "not_yet", "barred", "refer", "right", "wrong"])
def test_feedback_bears_a_known_mark(mark: str) -> None:
    """Each mark has a shape to draw; rests and sides may be missing."""
    made = Feedback.model_validate({"option": "o1", "mark": mark, "word": "OK", "reason": "Because."})
    assert (made.rests_on, made.contested, made.would_change) == ("", "", ())


@pytest.mark.parametrize("changed", [{"mark": "green"}, {"reason": None}, {"colour": "red"}])
def test_feedback_without_word_and_reason_is_refused(changed: dict[str, object]) -> None:
    """A mark of another sort, none at all, or a colour by itself is no feedback."""
    with pytest.raises(ValidationError):
        Feedback.model_validate({"option": "o1", "mark": "ok", "word": "OK", "reason": "Because.", **changed})
