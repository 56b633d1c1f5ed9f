"""One line more in a list of a course file, and not a character else."""

import pytest

from builder.new.listing import listed

PLACE = ("tests", 0, "cases")


@pytest.mark.parametrize(
    ("before", "after"),
    [
        ("tests:\n  - {id: a, cases: []}\n", "tests:\n  - {id: a, cases: [x]}\n"),
        (
            "tests:\n  - id: a\n    cases: [b, c]   # pool\n",
            "tests:\n  - id: a\n    cases: [b, c, x]   # pool\n",
        ),
        (
            "tests:\n  - cases:\n      - b   # first\n      - c\n    id: a\n",
            "tests:\n  - cases:\n      - b   # first\n      - c\n      - x\n    id: a\n",
        ),
        ("tests:\n- cases:\n  - b\n", "tests:\n- cases:\n  - b\n  - x\n"),
        ("tests:\r\n  - cases: [b]\r\n", "tests:\r\n  - cases: [b, x]\r\n"),
        ("\ufefftests:\n  - cases: [b]\n", "\ufefftests:\n  - cases: [b, x]\n"),
        ("tests:\n  - cases: [b,\n      c]\n", "tests:\n  - cases: [b,\n      c, x]\n"),
        ("tests:\n  - cases: []\n", "tests:\n  - cases: [x]\n"),
    ],
)
def test_a_list_grows_at_its_end(before: str, after: str) -> None:
    """In brackets or a line each, with comments, with either line end."""
    assert listed(before.encode("utf-8"), PLACE, "x") == after.encode("utf-8")


def test_a_list_that_is_not_there_is_begun() -> None:
    """At the end of the file, as a block."""
    assert listed(b"a: 1\n", ("lessons",), "{file: a.md, title: A}") == (
        b"a: 1\nlessons:\n  - {file: a.md, title: A}\n"
    )


@pytest.mark.parametrize("text", ["tests: no list\n", "tests:\n  - cases: b\n", "tests: [\n", "other: 1\n"])
def test_where_it_is_not_sure_nothing_is_changed(text: str) -> None:
    """The author is told what to add instead."""
    assert listed(text.encode("utf-8"), PLACE, "x") is None
