"""The records side on the demonstration's class: real sheets, a real record, real lists."""

import csv
import shutil
from pathlib import Path

import pytest

from builder.fault import Fault
from builder.flow.records import analyse, certify, collect, grade, key_rings, lay_out, papers
from tests.demo.built import COURSE, demo


@pytest.fixture
def desk_files(tmp_path: Path) -> Path:
    """A private folder of our own with the keys and papers of the demonstration, but no record yet."""
    for part in ("keys", "papers"):
        shutil.copytree(demo()[0] / "private" / part, tmp_path / "private" / part)
    return tmp_path / "private"


def test_a_class_goes_the_whole_way_and_a_second_time_changes_nothing(desk_files: Path) -> None:
    """Sheets are taken once, decisions written once, serials kept; the lists are the same bytes."""
    desk = lay_out(COURSE, "spring", desk_files, desk_files / "records.db")
    first, whole = collect(desk)
    assert whole
    assert first[0] == "Class spring: 9 taken, 0 already had, 0 could not be taken."
    assert collect(desk)[0][0] == "Class spring: 0 taken, 9 already had, 0 could not be taken."
    assert "8 decisions new" in grade(desk)[0]
    assert "0 decisions new" in grade(desk)[0]
    certify(desk)
    lists = {path.name: path.read_bytes() for path in desk.lists.glob("*.csv")}
    certify(desk)
    assert {path.name: path.read_bytes() for path in desk.lists.glob("*.csv")} == lists
    assert any(line.startswith("Written: ") for line in analyse(desk))


def test_who_gets_a_certificate_and_who_does_not() -> None:
    """Five of eight; the others miss a must-pass question, attendance and a station."""
    lists = demo()[0] / "private" / "classes" / "spring"
    with (lists / "certificates.csv").open(encoding="utf-8-sig", newline="") as file:
        certified = list(csv.DictReader(file))
    with (lists / "refused.csv").open(encoding="utf-8-sig", newline="") as file:
        refused = list(csv.DictReader(file))
    assert [row["certificate"] for row in certified] == ["00001", "00002", "00003", "00004", "00005"]
    assert [(row["name"], row["requirement"]) for row in refused] == [
        ("Keiko Morinobe", "must pass final"),
        ("Nandi Dlakhumo", "attendance generic"),
        ("Ambrose D'Arvelo", "station friction_station"),
    ]


def test_trying_to_grade_writes_nothing(desk_files: Path) -> None:
    """A grading that is only tried leaves every decision to be new."""
    desk = lay_out(COURSE, "spring", desk_files, desk_files / "records.db")
    collect(desk)
    grade(desk, write=False)
    assert "8 decisions new" in grade(desk)[0]


def test_an_unknown_class_names_those_there_are(tmp_path: Path) -> None:
    """The fault lists the classes of the course."""
    with pytest.raises(Fault, match="spring"):
        lay_out(COURSE, "autumn", tmp_path, tmp_path / "records.db")


def test_without_keys_nothing_is_graded(tmp_path: Path) -> None:
    """The fault says to build first."""
    with pytest.raises(Fault, match="Build the course first"):
        key_rings(tmp_path)


def test_a_fault_leaves_no_record_behind(tmp_path: Path) -> None:
    """Without keys the record is not even made."""
    desk = lay_out(COURSE, "spring", tmp_path, tmp_path / "records.db")
    for work in (collect, grade, analyse):
        with pytest.raises(Fault):
            work(desk)
    assert list(tmp_path.iterdir()) == []


def test_keys_and_papers_belong_together() -> None:
    """Every key ring has its published test, of the same edition."""
    private = demo()[0] / "private"
    assert [ring.edition for ring in key_rings(private)] == [test.edition for test in papers(private)]


def test_a_class_with_faults_is_named_with_its_lines(tmp_path: Path) -> None:
    """A damaged roster stops the work with the file and line in the message."""
    copy = shutil.copytree(COURSE, tmp_path / "course")
    roster = copy / "classes" / "spring" / "roster.csv"
    roster.write_text(roster.read_text(encoding="utf-8").replace("QZVNRBLAD", "QZVNRBLAE"), encoding="utf-8")
    with pytest.raises(Fault, match=r"classes/spring/roster\.csv:2"):
        lay_out(copy, "spring", tmp_path, tmp_path / "records.db")
