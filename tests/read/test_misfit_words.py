"""Plain words for every sort of misfit that our nouns can give."""

from decimal import Decimal

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from builder.doors.shape import Misfit, pour
from builder.model.board import BoardRules
from builder.model.card import Card
from builder.model.case import Case
from builder.model.course import CourseFile, SiteConfig
from builder.model.fact import FactBook, ScreeningBook
from builder.model.noun import Noun
from builder.model.question import AuthorQuestion
from builder.model.rule import Rule
from builder.model.station import Station, StationSheet
from builder.model.tables import PhaseBook, ReferenceBook, SeverityBook
from builder.model.taught import TaughtClass
from builder.model.wording import WordingBook
from builder.read.misfit_words import words_for
from builder.read.select import select
from builder.read.written import read_written
from tests.read.folders import BASE

FILES: dict[str, type[Noun]] = {
    "course/course.yml": CourseFile,
    "course/cases/thigh.yml": Case,
    "course/stations/cooling.yml": Station,
    "course/questions/cold_time.yml": AuthorQuestion,
    "course/classes/may/class.yml": TaughtClass,
    "course/classes/may/stations/vantornel.yml": StationSheet,
    "content/cards/cold.yml": Card,
    "content/rules/numb_cold.yml": Rule,
    "content/boards/generic.yml": BoardRules,
    "content/facts.yml": FactBook,
    "content/screening.yml": ScreeningBook,
    "content/phases.yml": PhaseBook,
    "content/severity.yml": SeverityBook,
    "content/references.yml": ReferenceBook,
    "content/wording.yml": WordingBook,
    "site_config.yml": SiteConfig,
}


def test_a_list_may_be_too_long() -> None:
    """The bound that the noun sets is named."""
    words = words_for(Misfit(("levels",), "too_long", [1] * 7, "", {"max_length": 6}), "levels")
    assert words == ("list_too_long", "`levels` may have at most 6 entries.", "Remove some.")


def test_a_sort_nobody_met_is_still_said_plainly() -> None:
    """A validator's new word for something is never shown."""
    words = words_for(Misfit(("a",), "brand_new", "x", "Input should be brand new"), "a")
    assert words == ("value_refused", "`a` cannot be `x`.", "Compare it with a file that works.")


WRONG = st.sampled_from(
    [
        None,
        True,
        -1,
        99,
        10**12,
        Decimal("0.5"),
        "",
        "x",
        "X y",
        "a" * 5000,
        [],
        [1],
        {},
        {"a": 1},
        "2026-13-01",
    ]
)


def test_the_words_name_check_fault_and_remedy() -> None:
    """A missing number is said without a validator's jargon."""
    words = words_for(Misfit(("client", "age"), "int_parsing", "old", "Input should be ..."), "age")
    assert words == (
        "number_expected",
        "`age` must be a whole number, not `old`.",
        "Write digits alone, such as `3`.",
    )


def test_one_of_several_types_is_said_once() -> None:
    """Where a word or a number may stand, one fault names both."""
    words = words_for(Misfit(("a", "str"), "string_type", [1], ""), "a", choice=True)
    assert words.message == "`a` must be a word or a number, not a list."


@pytest.mark.parametrize("name", FILES)
@settings(max_examples=150)
@given(data=st.data())
def test_no_sort_of_misfit_is_without_words(name: str, data: st.DataObject) -> None:
    """Whatever stands in place of any value of any file, the words are ours and say what mends it."""
    model = FILES[name]
    written = read_written(BASE / name, name)
    paths = list(written.places.values)
    broken = replaced(written.value, data.draw(st.sampled_from(paths)), data.draw(WRONG))
    for misfit in pour(model, broken)[1]:
        if misfit.sort not in ("missing", "extra_forbidden"):
            words = words_for(misfit, "it", choice=misfit.path[-1:] in (("str",), ("decimal",)))
            assert words.check != "value_unfit"
            assert words.message.endswith(".")
            assert words.remedy.endswith((".", "?"))
            assert "Input should" not in words.message + words.remedy


def replaced(value: object, path: tuple[str | int, ...], new: object) -> object:
    """The data with another value at a path."""
    if not path:
        return new
    if isinstance(value, dict):
        return {key: replaced(one, path[1:], new) if key == path[0] else one for key, one in value.items()}
    assert isinstance(value, list)
    return [replaced(one, path[1:], new) if step == path[0] else one for step, one in enumerate(value)]


def test_every_file_of_the_base_is_tried() -> None:
    """No sort of file is left out of the property above."""
    yml = {path.relative_to(BASE).as_posix() for path in BASE.rglob("*.yml")}
    assert yml - FILES.keys() == {"content/cards/ask.yml", "content/words/en.yml"}
    assert all(any(select(read_written(BASE / name, name).value, "format")) for name in FILES)
