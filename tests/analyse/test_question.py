"""One question's counts and share."""

from fractions import Fraction

from builder.analyse.question import question_figures
from builder.analyse.sitters import Sitting, Value
from builder.model.analysis import Figure
from tests.records.made import key_answer

FEW = Figure(value=None, note="Too few.")


def sitting(mark: int, *chosen: str) -> Sitting:
    """A try at one question; choosing nothing leaves it open."""
    given: dict[str, Value] = {"q": chosen[0] if len(chosen) == 1 else chosen} if chosen else {}
    return Sitting(sheet="d", marks={"q": Fraction(mark)}, given=given, waits=False)


def test_options_are_counted_and_what_was_left_open_beside_them() -> None:
    """Of ten, six chose what is right, three something else, one nothing; open counts as not right."""
    sat = [sitting(1, "o1")] * 6 + [sitting(0, "o2")] * 2 + [sitting(0, "o2", "o3"), sitting(0)]
    found = question_figures(key_answer("q"), None, sat, FEW)
    assert [(one.option, one.right, one.count) for one in found.options] == [
        ("o1", True, 6),
        ("o2", False, 3),
        ("o3", False, 1),
        ("o4", False, 0),
    ]
    assert (found.n, found.unanswered, found.difficulty.value, found.stem) == (10, 1, 0.6, "")
    assert found.discrimination == FEW
