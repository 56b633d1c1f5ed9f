"""A calendar file for each class."""

from datetime import date
from pathlib import Path

from builder.doors.calendar import calendar_days
from builder.flow.after import write_calendars
from builder.model.library import Course
from tests.demo.built import COURSE, opened
from tests.demo.small import small_course


def course() -> Course:
    """The demonstration."""
    made = opened().course
    assert made is not None
    return made


def test_the_demonstrations_class_has_its_four_days(tmp_path: Path) -> None:
    """Counted from its last day, 19 April; by title and page, with the address left relative."""
    (path,) = write_calendars(course(), COURSE, tmp_path)
    days = calendar_days(path.read_bytes())
    assert [one.day for one in days] == [
        date(2026, 4, 20), date(2026, 4, 26), date(2026, 5, 19), date(2026, 7, 19),
    ]  # fmt: skip
    assert days[1].title == "Soft-Tissue Injuries by Phase of Healing: One week after"
    assert "(after/one-week.html)" in days[1].text


def test_no_learner_is_in_it(tmp_path: Path) -> None:
    """No name, no code, no licence number of the roster."""
    (path,) = write_calendars(course(), COURSE, tmp_path)
    told = path.read_text(encoding="utf-8")
    roster = (COURSE / "classes" / "spring" / "roster.csv").read_text(encoding="utf-8").splitlines()[1:]
    cells = {cell for row in roster for cell in row.split(",") if len(cell) > 3}
    assert len(cells) > 20
    assert [cell for cell in cells if cell in told] == []


def test_a_class_that_cannot_be_read_has_none(tmp_path: Path) -> None:
    """The others still have theirs."""
    copy = small_course(tmp_path / "course")
    broken = copy / "classes" / "autumn"
    broken.mkdir()
    (broken / "class.yml").write_text("format: 1\n", encoding="utf-8")
    written = write_calendars(course(), copy, tmp_path)
    assert [path.relative_to(tmp_path).as_posix() for path in written] == ["classes/spring/after.ics"]
