"""How many gave what, for each kind of question."""

from fractions import Fraction

from builder.analyse.counts import counts
from builder.analyse.sitters import Sitting, Value
from builder.model.paper import PaperQuestion
from tests.records.made import key_answer, written_answer

STEPS = ("o1", "o2", "o3")
PAIRS = (("o1", "r2"), ("o2", "r1"))
ASKED = PaperQuestion.model_validate(
    {
        "id": "q",
        "kind": "match",
        "stem": "?",
        "hint": "",
        "options": [{"id": "o1", "title": "Acute"}, {"id": "o2", "title": "Late"}],
        "partners": [{"id": "r1", "title": "Load it"}, {"id": "r2", "title": "Limit it"}],
    }
)


def sat(value: Value | None, mark: Fraction | int = 0) -> Sitting:
    """A try at one question."""
    given = {} if value is None else {"q": value}
    return Sitting(sheet="d", marks={"q": Fraction(mark)}, given=given, waits=False)


def test_steps_are_counted_in_their_place() -> None:
    """How many put each step where it belongs."""
    answer = key_answer("q", kind="order", right=STEPS, options=STEPS)
    given = [sat(("o1", "o2", "o3"), 1), sat(("o1", "o3", "o2")), sat(("o3", "o2", "o1")), sat(None)]
    assert [(one.option, one.count) for one in counts(answer, None, given)] == [
        ("o1", 2),
        ("o2", 2),
        ("o3", 1),
    ]


def test_pairs_are_counted_by_their_left_side() -> None:
    """How many found the partner, with both in words where the paper is at hand."""
    answer = key_answer("q", kind="match", right=(), pairs=PAIRS)
    given = [sat(PAIRS, 1), sat((("o1", "r2"),)), sat((("o1", "r1"), ("o2", "r2")))]
    found = counts(answer, ASKED, given)
    assert [(one.title, one.count) for one in found] == [("Acute – Limit it", 2), ("Late – Load it", 1)]


def test_numbers_are_counted_as_typed() -> None:
    """The most frequent first, each right where it earned all."""
    answer = key_answer("q", kind="number", right=(), options=())
    given = [sat("60"), sat("20", 1), sat("60"), sat("20.0", 1), sat("60"), sat(None)]
    assert [(one.option, one.right, one.count) for one in counts(answer, None, given)] == [
        ("60", False, 3),
        ("20", True, 1),
        ("20.0", True, 1),
    ]


def test_options_are_counted_each() -> None:
    """One of a panel's options, or several of many."""
    panel = key_answer("q", kind="panel", right=("o1",))
    assert [one.count for one in counts(panel, None, [sat("o1"), sat("o3"), sat("o1")])] == [2, 0, 1, 0]
    many = key_answer("q", kind="many", right=("o1",))
    assert [one.count for one in counts(many, None, [sat(("o1", "o3")), sat(())])] == [1, 0, 1, 0]


def test_what_is_written_is_counted_nowhere() -> None:
    """A person reads it."""
    assert counts(written_answer("q"), None, [sat("Not today.")]) == ()
