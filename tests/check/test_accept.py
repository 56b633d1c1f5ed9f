"""Accepting one finding where it stands: with a reason, warnings and advice alone, while it is found."""

import pytest

from builder.check.accept import Accepted, accept, comments_in, guarded_rules
from builder.diagnostic import Diagnostic, Level
from builder.place import Place, Places
from builder.read.nearest import suggest
from tests.judge.small import content

LEVELS: dict[str, Level] = {
    "wordy": "advice",
    "odd": "warning",
    "wrong": "error",
    "not_reviewed": "advice",
    "accept_unused": "warning",
}
FILE = "course.yml"


def told(text: str, *found: Diagnostic, file: str = FILE) -> list[tuple[str, int, str]]:
    """Name, line and reason of all that is left after this text was heard."""
    places = {file: Places(Place(file), lines=tuple(text.split("\n")))}
    left = accept(found, places, LEVELS, {"fever"}, suggest)
    return [(one.check, one.place.line, one.accepted) for one in left]


def found(check: str, line: int, *rules: str, file: str = FILE) -> Diagnostic:
    """Something that a check found on one line."""
    return Diagnostic(
        check, LEVELS[check], Place(file, line, 3, line, 9), "It is so.", "Mend it.", rules=rules
    )


@pytest.mark.parametrize(
    "text",
    [
        "a: 1  # accepted: wordy, because it must be",
        "# accepted: wordy, because it must be\na: 1",
        "# accepted: wordy, because it must be\n\n# a word\na: 1".replace("\n\n", "\n"),
        "#accepted: wordy because it must be\na: 1",
    ],
)
def test_a_finding_is_accepted_where_it_stands(text: str) -> None:
    """At the end of its line, or alone above it, with other comments between or not."""
    line = text.split("\n").index(next(one for one in text.split("\n") if one.startswith("a:"))) + 1
    assert told(text, found("wordy", line)) == [("wordy", line, "it must be")]


def test_lessons_have_comments_of_their_own() -> None:
    """In Markdown a comment looks otherwise."""
    text = "<!-- accepted: odd, because it must be -->\n[crad a]"
    assert told(text, found("odd", 2, file="lessons/a.md"), file="lessons/a.md") == [("odd", 2, "it must be")]


@pytest.mark.parametrize(
    ("text", "mine", "expected"),
    [
        ("a: 1  # accepted: wordy", found("wordy", 1), [("wordy", 1), ("accept_no_reason", 1)]),
        ("a: 1  # accepted: wordy, because", found("wordy", 1), [("wordy", 1), ("accept_no_reason", 1)]),
        ("a: 1  # accepted: wrong, because so", found("wrong", 1), [("wrong", 1), ("accept_not_allowed", 1)]),
        ("a: 1  # accepted: wordi, because so", found("wordy", 1), [("wordy", 1), ("accept_unknown", 1)]),
        ("a: 1  # accepted:", found("wordy", 1), [("wordy", 1), ("accept_unknown", 1)]),
        ("a: 1  # accepted: odd, because so", found("wordy", 1), [("wordy", 1), ("accept_unused", 1)]),
        (
            "a: 1  # accepted: wordy, because so\nb: 2",
            found("wordy", 2),
            [("accept_unused", 1), ("wordy", 2)],
        ),
    ],
)
def test_what_is_wrong_about_a_comment_is_to_fix(
    text: str, mine: Diagnostic, expected: list[tuple[str, int]]
) -> None:
    """No reason, an error, a name that nobody has, or nothing there to accept."""
    assert sorted((name, line) for name, line, _ in told(text, mine)) == sorted(expected)


@pytest.mark.parametrize(
    "mine", [found("wrong", 1), found("odd", 1, "fever"), found("not_reviewed", 1)], ids=lambda one: one.check
)
def test_nothing_of_safety_is_ever_accepted(mine: Diagnostic) -> None:
    """No error, nothing that a rule of safety stands behind, and no missing signature."""
    left = told(f"a: 1  # accepted: {mine.check}, because so", mine)
    assert (mine.check, 1, "") in left
    assert ("accept_not_allowed", 1, "") in left


def test_complaints_about_comments_cannot_be_accepted_themselves() -> None:
    """Otherwise a comment could silence what is wrong with it."""
    left = told("a: 1  # accepted: accept_unused, because so")
    assert left == [("accept_not_allowed", 1, "")]


def test_an_ordinary_comment_is_left_alone() -> None:
    """Words that only look alike, and text in quotes without a mark before it."""
    lines = ("# accepted by the board in May", 'a: "b#accepted: wordy"', "accepted: wordy, because so")
    assert list(comments_in(FILE, lines)) == []


def test_the_last_line_may_be_a_comment() -> None:
    """Then it is about nothing, and says so."""
    assert told("a: 1\n# accepted: wordy, because so") == [("accept_unused", 2, "")]


def test_a_moved_finding_is_pointed_at() -> None:
    """The remedy names the line where it now is."""
    places = {FILE: Places(Place(FILE), lines=("a: 1  # accepted: wordy, because so", "b: 2"))}
    (unused, _) = accept([found("wordy", 2)], places, LEVELS, (), suggest)
    assert unused.remedy == "It is found on line 2: move the comment there."


def test_rules_of_safety_are_known_by_what_they_ask() -> None:
    """Those that stop the session, and those on consent, red flags and contraindications."""
    assert guarded_rules(content()) == {"fever", "no_consent", "numb"}


def test_rows_of_a_sheet_are_accepted_by_what_is_no_comment() -> None:
    """By file and row, not by line; one that fits no row is told where it stands."""
    place = Place("class.yml", 9, 5, 9, 60)
    of_row = Diagnostic("odd", "warning", Place("a.csv", 4, 7, 4, 9), "It is so.", "Mend it.", (2, "email"))
    said = [Accepted("odd", "so", place, rows=frozenset({("a.csv", row)})) for row in (2, 3)]
    left = accept([of_row], {}, LEVELS, (), suggest, said)
    assert [(one.check, one.place.file, one.accepted) for one in left] == [
        ("odd", "a.csv", "so"),
        ("accept_unused", "class.yml", ""),
    ]
    assert left[1].remedy == "Remove this entry, or correct its code."
