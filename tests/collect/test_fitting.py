"""What can be an answer to a question of each kind."""

import pytest

from builder.collect.fitting import Value, fits
from tests.records.made import key_answer

PARTNERS = ("r1", "r2", "r3")


@pytest.mark.parametrize(
    ("kind", "good", "bad"),
    [
        ("one", ["o1", None], ["", "o9", ("o1",), "o1,o2"]),
        ("panel", ["o4", None], ["o9", ("o1",)]),
        ("many", [("o1", "o3"), (), ("o2",), None], ["o1", ("o1", "o1"), ("o9",), (("o1", "r1"),)]),
        ("order", [("o3", "o1", "o4", "o2"), None], [("o1", "o2", "o3"), ("o1", "o1", "o2", "o3"), "o1", ()]),
        (
            "match",
            [(("o1", "r2"), ("o2", "r2")), (("o4", "r1"),), (), None],
            [(("o1", "r9"),), (("r1", "o1"),), (("o1", "r1"), ("o1", "r2")), ("o1",), "o1>r1"],
        ),
        ("number", ["7.5", "about seven", "", None], [("7",)]),
        ("text", ["Not today.", None], [("Not", "today")]),
    ],
)
def test_an_answer_is_of_its_kind_and_of_its_own_parts(
    kind: str, good: list[Value], bad: list[Value]
) -> None:
    """What a page can not have made is refused, whatever shape it has."""
    asked = key_answer("q", kind=kind, partners=PARTNERS)
    assert [value for value in good if not fits(asked, value)] == []
    assert [value for value in bad if fits(asked, value)] == []
