"""Reading a whole class."""

from pathlib import Path

import pytest

from builder.disk import shipped
from builder.model.library import Course
from builder.read.course import read_course
from builder.read.taught import ClassReading, read_class
from tests.read.folders import BASE, put

MAY = "course/classes/may/"


def course() -> Course:
    """The small course."""
    made, _ = read_course(BASE / "course", BASE / "content")
    assert made is not None
    return made


def changed(root: Path, name: str, old: str, new: str) -> ClassReading:
    """The class with one text in one of its files changed."""
    text = (BASE / MAY / name).read_text(encoding="utf-8")
    assert old in text
    return read_class(put(root, {MAY + name: text.replace(old, new)}) / MAY, course())


def test_a_class_is_read_whole() -> None:
    """Dates, people, presence and station sheets, under the course's id."""
    reading = read_class(BASE / MAY, course())
    assert reading.found == []
    assert reading.folder is not None
    assert (reading.folder.course, reading.folder.taught.id) == ("little", "may")
    assert [person.licence for person in reading.folder.participants] == ["00123"]
    assert [presence.day for presence in reading.folder.presences] == [1]
    assert [sheet.marked for sheet in reading.folder.station_sheets] == [{"cloth": 1}]
    assert sorted(reading.places) == [
        f"classes/may/{name}"
        for name in ("attendance.csv", "class.yml", "roster.csv", "stations/vantornel.yml")
    ]


def test_the_shipped_class_has_nothing_to_fix() -> None:
    """What comes with the tool is sound."""
    demo, _ = read_course(shipped("demo_course"), shipped("content"))
    assert demo is not None
    for folder in sorted((shipped("demo_course") / "classes").iterdir()):
        reading = read_class(folder, demo)
        assert reading.found == []
        assert reading.folder is not None
        assert reading.folder.participants


@pytest.mark.parametrize(
    ("old", "new", "check"),
    [
        ("id: may", "id: june", "id_not_file_name"),
        ("[2026-05-02]", "[2026-05-02, 2026-05-01]", "dates_order"),
        ("[2026-05-02]", "[2026-05-02, 2026-05-02]", "dates_order"),
        ("America/New_York", "America/New_Yrok", "zone_unknown"),
        ("America/New_York", "America", "zone_unknown"),
        ("America/New_York", "../etc/passwd", "zone_unknown"),
        ("title: The May class\n", "", "key_missing"),
    ],
)
def test_a_class_file_that_does_not_hold_is_told(old: str, new: str, check: str, tmp_path: Path) -> None:
    """Name, dates and time zone; without a zone there is no class to grade."""
    reading = changed(tmp_path / "root", "class.yml", old, new)
    assert [one.check for one in reading.found] == [check]
    assert (reading.folder is None) == (check in ("zone_unknown", "key_missing"))


def test_a_class_has_a_date_for_each_day_of_the_agenda(tmp_path: Path) -> None:
    """Hours are counted by day, so no day may be without its date."""
    root = put(tmp_path / "root")
    text = (root / "course" / "course.yml").read_text(encoding="utf-8").replace("{day: 1,", "{day: 2,")
    (root / "course" / "course.yml").write_text(text, encoding="utf-8")
    longer, _ = read_course(root / "course", root / "content")
    assert longer is not None
    assert [one.check for one in read_class(root / MAY, longer).found] == ["class_days"]


def test_faults_of_all_files_come_together(tmp_path: Path) -> None:
    """One reading tells what is wrong in roster, attendance and station sheets."""
    root = put(tmp_path / "root", over=BASE.parent / "class_stations")
    put_over = BASE.parent / "class_attendance" / "course" / "classes" / "may" / "attendance.csv"
    (root / MAY / "attendance.csv").write_bytes(put_over.read_bytes())
    (root / MAY / "roster.csv").write_bytes(b"name,code_1\n,QZVNRBLAD\n")
    reading = read_class(root / MAY, course())
    assert {one.place.file.rpartition("/")[2] for one in reading.found} == {
        "attendance.csv", "one.yml", "roster.csv", "two.yml", "vantornel.yml"
    }  # fmt: skip
    assert reading.folder is not None
    assert (reading.folder.participants, reading.folder.station_sheets) == ((), ())


def test_a_class_not_yet_held_has_no_attendance(tmp_path: Path) -> None:
    """A missing attendance is no fault, a missing roster is."""
    root = put(tmp_path / "root")
    (root / MAY / "attendance.csv").unlink()
    assert read_class(root / MAY, course()).found == []
    (root / MAY / "roster.csv").unlink()
    assert [one.check for one in read_class(root / MAY, course()).found] == [
        "file_unreadable",
        "code_unknown",
    ]
