"""`caseloom check` on a good and on a broken course."""

import json
from pathlib import Path

from tests.cli.run import run, status
from tests.demo.small import small, small_course


def test_a_sound_course_is_status_zero() -> None:
    """A course with advice alone has nothing that must be fixed."""
    done = run("check", small())
    assert status(done) == 0
    assert "no errors" in done.output


def test_a_misspelt_key_is_status_one_with_its_line(tmp_path: Path) -> None:
    """File, line, the marked place and the nearest name are printed; the data says the same."""
    copy = small_course(tmp_path / "a course é")
    case = copy / "cases" / "stilt_ankle.yml"
    case.write_text(case.read_text(encoding="utf-8").replace("mechanism:", "mechanizm:", 1), encoding="utf-8")
    done = run("check", copy)
    assert status(done) == 1
    assert "cases/stilt_ankle.yml:" in done.output
    assert "mechanism" in done.output
    assert "^" in done.output
    data = json.loads(run("check", copy, "--json").output)
    assert data["format"] == "caseloom/check/1"
    assert data["counts"]["error"] >= 1
    assert {one["file"] for one in data["to_fix"] if one["level"] == "error"} == {"cases/stilt_ankle.yml"}


def test_a_class_is_checked_by_itself(tmp_path: Path) -> None:
    """Its roster, attendance and station sheets; what the records side says is still to be looked at."""
    copy = small_course(tmp_path / "course")
    assert "Nothing to fix." in run("check", copy, "--class", "spring").output
    roster = copy / "classes" / "spring" / "roster.csv"
    roster.write_text(roster.read_text(encoding="utf-8").replace("@", " at ", 1), encoding="utf-8")
    done = run("check", copy, "--class", "spring")
    assert status(done) == 0
    assert "email_odd" in done.output
    assert "email_odd" not in run("check", copy).output
    data = json.loads(run("check", copy, "--class", "spring", "--json").output)
    assert [one["check"] for one in data["to_fix"]] == ["email_odd"]
    wrong = run("check", copy, "--class", "sprng")
    assert "spring" in str(wrong.exception)
