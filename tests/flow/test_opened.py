"""Opening a course: read, judged and checked in one go."""

from pathlib import Path

import pytest

from builder.fault import Fault
from builder.flow.opened import explain_case, open_course
from builder.flow.sample import lay_over
from builder.model.kind import Example
from tests.demo.built import opened
from tests.demo.small import small_course


def damaged(tmp_path: Path, file: str, old: str, new: str) -> Path:
    """A copy of the small course with one place changed."""
    copy = small_course(tmp_path / "course")
    text = (copy / file).read_text(encoding="utf-8")
    assert old in text
    (copy / file).write_text(text.replace(old, new, 1), encoding="utf-8")
    return copy


def test_the_demonstration_is_sound() -> None:
    """Nothing is left but that nobody has reviewed the rules."""
    assert opened().sound
    left = {one.check for one in opened().to_fix if not one.accepted}
    assert left == {"not_reviewed"}


def test_every_visit_of_the_demonstration_is_judged() -> None:
    """Each case has as many judgements as visits."""
    course = opened().course
    assert course is not None
    judged = {name: len(visits) for name, visits in opened().judged.items()}
    assert judged == {name: len(case.visits) for name, case in course.cases.items()}


def test_a_wrong_phase_is_an_error_with_its_place(tmp_path: Path) -> None:
    """A declared phase that time and signs contradict is named with file, line and remedy."""
    copy = damaged(tmp_path, "cases/unicycle_thigh.yml", "phase: remodelling", "phase: early_repair")
    again = open_course(copy)
    (found,) = [one for one in again.to_fix if one.check == "declared_phase"]
    assert not again.sound
    assert found.place.file == "cases/unicycle_thigh.yml"
    line = (copy / found.place.file).read_text(encoding="utf-8").splitlines()[found.place.line - 1]
    assert line.strip() == "phase: early_repair"
    assert "remodelling" in found.remedy


def test_a_course_that_cannot_be_put_together_still_says_why(tmp_path: Path) -> None:
    """Without a readable course file there is no course, but what is wrong is listed."""
    copy = damaged(tmp_path, "course.yml", "title:", "titel:")
    again = open_course(copy)
    assert again.course is None
    assert not again.sound
    assert "titel" in again.text(width=80, colour=False)
    assert again.json()["counts"]["error"] >= 1


def test_a_folder_without_a_course_is_a_fault(tmp_path: Path) -> None:
    """The message says what to name instead."""
    with pytest.raises(Fault, match="holds no course"):
        open_course(tmp_path)


def test_an_unknown_case_names_the_nearest() -> None:
    """Asking for a case that is not there tells which may be meant."""
    with pytest.raises(Fault, match="`unicycle_thigh`"):
        explain_case(opened(), "unicycle_tigh")


def test_a_case_is_explained_in_words_and_as_data() -> None:
    """Both tell of every visit."""
    lines, data = explain_case(opened(), "unicycle_thigh")
    assert data["format"] == "caseloom/explain/1"
    assert len(data["visits"]) == 4
    assert sum(line.startswith("  Session") for line in lines) == 4


def test_what_is_accepted_stays_out_of_what_is_to_fix(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """From the comment in a file to the reason among the data, and nothing of it in the counts."""
    quiet = Example("course.yml", "lessons: []  # accepted: lesson_not_listed, because the page is a draft")
    lay_over(quiet, tmp_path)
    monkeypatch.setattr("builder.flow.opened.shipped", lambda name: tmp_path / name)
    course = open_course(tmp_path / "course")
    told = course.json()["accepted"]
    assert [(one["check"], one["because"]) for one in told] == [("lesson_not_listed", "the page is a draft")]
    assert "lesson_not_listed" not in course.text(width=80, colour=False)
