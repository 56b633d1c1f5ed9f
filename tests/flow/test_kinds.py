"""Every kind of fault says why, and its bad and good example come out as it says."""

from pathlib import Path

import pytest

from builder.diagnostic import Diagnostic
from builder.flow import opened as opening
from builder.flow.kinds import KINDS
from builder.flow.sample import lay_over
from builder.model.kind import Example, Kind
from builder.read.taught import read_class

EVERY = pytest.mark.parametrize("kind", KINDS.values(), ids=lambda kind: kind.name)


def found(example: Example, root: Path) -> list[Diagnostic]:
    """All that is to fix in the sample with this example in it, its class included."""
    lay_over(example, root)
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(opening, "shipped", lambda name: root / name)
        opened = opening.open_course(root / "course")
    of_class = read_class(root / "course/classes/may", opened.course).found if opened.course else []
    return [one for one in (*opened.to_fix, *of_class) if not one.accepted]


@pytest.fixture(scope="module")
def before(tmp_path_factory: pytest.TempPathFactory) -> set[str]:
    """What is found in the sample as it is: nobody has signed it."""
    told = found(Example("course.yml", "id: little"), tmp_path_factory.mktemp("sample"))
    return {one.check for one in told}


def test_the_sample_is_sound(before: set[str]) -> None:
    """Only signatures are missing, and a place for its question."""
    assert before <= {"not_reviewed", "questions_not_shown"}


@EVERY
def test_the_bad_example_is_found_by_its_own_check_alone(
    kind: Kind, tmp_path: Path, before: set[str]
) -> None:
    """Beside what the sample itself has, nothing else is found, and at the level that is promised."""
    told = found(kind.bad, tmp_path)
    assert {one.check for one in told} - (before - {kind.name}) == {kind.name}
    assert {one.level for one in told if one.check == kind.name} == {kind.level}


@EVERY
def test_the_good_example_is_not_found(kind: Kind, tmp_path: Path, before: set[str]) -> None:
    """What the manual shows as right leaves nothing to fix; one signature leaves fewer to ask for."""
    told = {one.check: one.message for one in found(kind.good, tmp_path / "good")}
    if kind.name == "not_reviewed":
        bad = {one.check: one.message for one in found(kind.bad, tmp_path / "bad")}
        assert told.pop(kind.name) != bad[kind.name]
    assert told.keys() <= before - {kind.name}


@EVERY
def test_it_says_why_in_a_sentence_or_two(kind: Kind) -> None:
    """Plain sentences, short enough to be read."""
    assert kind.why.endswith(".")
    assert 20 < len(kind.why) < 300
