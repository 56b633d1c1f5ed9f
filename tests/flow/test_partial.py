"""What of a half-written course can be shown."""

from dataclasses import replace
from pathlib import Path

from builder.flow.opened import open_course
from builder.flow.partial import whole_enough
from builder.model.library import Course
from tests.demo.small import small


def course() -> Course:
    """The small demonstration."""
    read = open_course(small()).course
    assert read is not None
    return read


def without(read: Course, *names: str) -> Course:
    """The course as read when these cases have a fault."""
    return replace(read, cases={name: one for name, one in read.cases.items() if name not in names})


def test_a_whole_course_is_shown_as_it_is() -> None:
    """Nothing is put in its place."""
    read = course()
    assert whole_enough(read, {}, small()) is read


def test_a_case_that_was_good_stays_as_it_was() -> None:
    """As long as its file is there."""
    read = course()
    assert whole_enough(without(read, "stilt_ankle"), read.cases, small()) == replace(
        read, cases=dict(sorted(read.cases.items()))
    )


def test_a_case_that_never_was_good_is_left_out_everywhere(tmp_path: Path) -> None:
    """Of practice sets, of tests with it in their pool, and of stations."""
    read = course()
    lost = ("stilt_ankle", "ring_thigh", *(one.case for one in read.stations.values()))
    shown = whole_enough(without(read, *lost), read.cases, tmp_path)
    assert not set(lost) & shown.cases.keys()
    assert not any(name in one.cases for one in shown.file.practice for name in lost)
    assert shown.file.tests == ()
    assert shown.stations == {}


def test_a_case_that_leans_on_a_lost_card_is_not_shown() -> None:
    """Its options could not be judged."""
    read = course()
    option = read.cases["stilt_ankle"].visits[0].chosen[0].card
    cards = {name: card for name, card in read.content.cards.items() if name != option}
    broken = replace(without(read, "stilt_ankle"), content=replace(read.content, cards=cards))
    assert "stilt_ankle" not in whole_enough(broken, read.cases, small()).cases
