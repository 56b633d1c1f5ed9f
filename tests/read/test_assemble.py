"""A course put together from the files that hold."""

from builder.diagnostic import Diagnostic, Level
from builder.model.library import Course
from builder.place import Place
from builder.read.assemble import assemble
from builder.read.course import shelf_of
from tests.read.folders import BASE

SHELF = shelf_of(BASE / "course", BASE / "content", BASE / "site_config.yml")


def made(file: str = "", level: Level = "error") -> Course | None:
    """The small course, with one thing to fix in a file."""
    return assemble(SHELF, {}, [Diagnostic("a", level, Place(file), "", "")], {})


def test_faulty_files_are_left_out() -> None:
    """A station, rule, board or question with an error is not handed on; the rest is."""
    whole = made()
    assert whole is not None
    assert (list(whole.stations), list(whole.content.rules)) == (["cooling"], ["numb_cold"])
    assert whole.questions["cold_time"].kind == "one"
    question = "questions/cold_time.yml"
    for file in (
        question,
        "stations/cooling.yml",
        "content/rules/numb_cold.yml",
        "content/boards/generic.yml",
    ):
        course = made(file)
        assert course is not None
        sizes = [len(course.stations), len(course.content.rules), len(course.content.boards)]
        assert sorted([*sizes, len(course.questions)]) == [0, 1, 1, 1]


def test_advice_and_warnings_leave_a_file_in() -> None:
    """Only an error keeps a file from being used."""
    levels: tuple[Level, ...] = ("warning", "advice")
    for level in levels:
        course = made("cases/thigh.yml", level)
        assert course is not None
        assert list(course.cases) == ["thigh"]


def test_the_course_file_stays_in_with_faults_of_reference() -> None:
    """A course whose names do not all hold is still judged, so that all faults show at once."""
    course = made("course.yml")
    assert course is not None
    assert course.file.id == "little"


def test_a_faulty_card_takes_its_cases_along() -> None:
    """A case that uses a card which is left out cannot be judged."""
    course = made("content/cards/cold.yml")
    assert course is not None
    assert course.cases == {}


def test_there_is_no_course_without_words() -> None:
    """Without the words of the interface nothing can be shown."""
    assert assemble(SHELF, None, [], {}) is None


def test_nothing_is_judged_by_a_book_with_faults() -> None:
    """A table that asks for what is worked out from it would be asked in a ring."""
    for book in ("facts", "phases", "severity"):
        assert made(f"content/{book}.yml") is None
    assert made("content/references.yml") is not None
