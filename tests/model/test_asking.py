"""What is asked before a new file is written."""

from builder.model.asking import Asking


def test_a_question_has_no_suggestion_unless_given() -> None:
    """Then it has to be answered, by any words."""
    asking = Asking("title", "Its title")
    assert asking.suggested is None
    assert asking.choices == ()
