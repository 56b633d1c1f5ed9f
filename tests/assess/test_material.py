"""How rows become the two parts of a question."""

from builder.assess.material import Row, Text
from builder.assess.question import Choice, Ground, Said
from tests.assess.sample import material


def row(title: str, *, right: bool = False) -> Row:
    """One option of which its title is said."""
    return Row(Choice(title), right, Said("ok", "", title, Ground()))


def test_options_stand_by_their_text() -> None:
    """The author's order is gone, and what is right has moved along."""
    forth = material().question("option", Text("s", "h"), [row("b", right=True), row("c"), row("a")])
    back = material().question("option", Text("s", "h"), [row("c"), row("a"), row("b", right=True)])
    assert forth == back
    assert [one.title for one in forth.shown.options] == ["a", "b", "c"]
    assert forth.judged.right == (1,)
    assert [one.reason for one in forth.judged.said] == ["a", "b", "c"]


def test_options_that_rise_keep_their_order() -> None:
    """Options with an order of their own are taken as given."""
    asked = material().ordered("phase", Text("s", "h"), [row("b"), row("a", right=True)])
    assert [one.title for one in asked.shown.options] == ["b", "a"]
    assert asked.judged.right == (1,)


def test_the_same_text_is_offered_once() -> None:
    """Two options that read the same cannot be told apart, so one is offered."""
    asked = material().question("option", Text("s", "h"), [row("a"), row("a"), row("b")])
    assert [one.title for one in asked.shown.options] == ["a", "b"]


def test_steps_are_shown_by_their_text_and_right_in_the_order_given() -> None:
    """What stands first in the file leaves no trace in what is shown."""
    made, text = material(), Text("Order?", "Put them.", "order")
    rows = [row(title, right=True) for title in ("c", "a", "b")]
    question = made.steps("order", text, rows)
    assert [one.title for one in question.shown.options] == ["a", "b", "c"]
    assert (question.judged.right, question.shown.in_order) == ((2, 0, 1), False)
