"""Every kind of fault says why, and its bad and good example come out as it says."""

from pathlib import Path

import pytest

from builder.flow.kinds import KINDS
from builder.model.kind import Kind
from tests.flow.hostile import HOSTILE
from tests.flow.laid import OF_THE_SAMPLE, SAID, everything, printed

EVERY = pytest.mark.parametrize("kind", KINDS.values(), ids=lambda kind: kind.name)

CLINICAL = (
    "chosen_not_right",
    "contested_position",
    "declared_phase",
    "declared_severity",
    "not_recorded",
    "referral_missing",
    "wrong_is_right",
)


@pytest.fixture(scope="module")
def before(tmp_path_factory: pytest.TempPathFactory) -> set[str]:
    """What is found in the sample as it is: nobody has signed it."""
    return {one.check for one in everything(OF_THE_SAMPLE, tmp_path_factory.mktemp("sample"))[0]}


def test_the_sample_is_sound(before: set[str]) -> None:
    """Only signatures are missing, and a place for its question."""
    assert before <= {"not_reviewed", "questions_not_shown"}


@EVERY
def test_the_bad_example_is_found_by_its_own_check_alone(
    kind: Kind, tmp_path: Path, before: set[str]
) -> None:
    """Nothing else is found beside what the sample has; it is at its level, and printed word for word."""
    told, places = everything(kind.bad, tmp_path)
    assert {one.check for one in told} - (before - {kind.name}) == {kind.name}
    assert {one.level for one in told if one.check == kind.name} == {kind.level}
    said = (SAID / f"{kind.name}.txt").read_text(encoding="utf-8")
    assert printed(told, places, before - {kind.name}) == said


@EVERY
def test_the_good_example_is_not_found(kind: Kind, tmp_path: Path, before: set[str]) -> None:
    """What the manual shows as right leaves nothing to fix; one signature leaves fewer to ask for."""
    told = {one.check: one.message for one in everything(kind.good, tmp_path / "good")[0]}
    if kind.name == "not_reviewed":
        bad = {one.check: one.message for one in everything(kind.bad, tmp_path / "bad")[0]}
        assert told.pop(kind.name) != bad[kind.name]
    assert told.keys() <= before - {kind.name}


@EVERY
def test_it_says_why_in_a_sentence_or_two(kind: Kind) -> None:
    """Plain sentences, short enough to be read."""
    assert kind.why.endswith(".")
    assert 20 < len(kind.why) < 300


def test_nothing_is_written_down_that_is_no_longer_tried() -> None:
    """Each file there is of a kind, or of a course that means harm."""
    assert {path.stem for path in SAID.glob("*.txt")} == KINDS.keys() | HOSTILE.keys()


@pytest.mark.parametrize("name", CLINICAL)
def test_a_clinical_check_names_its_rule(name: str, tmp_path: Path) -> None:
    """A rule, a cell of a card, a clock, a sign, a table or an aim: whatever the judgement rests on."""
    told = [one for one in everything(KINDS[name].bad, tmp_path)[0] if one.check == name]
    assert all(one.rules for one in told)
    assert told
