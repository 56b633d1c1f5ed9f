"""Grading writes each new decision once, and shows who would change."""

from datetime import timedelta
from pathlib import Path

from builder.grade.grade import grade_class
from builder.model.key import KeyRing
from tests.records.kept import contents, keep, opened
from tests.records.made import NOW, folder, person, ring, terms

ANN, BEN, CAM = person(1, name="Ann"), person(2, "B"), person(3)
SPRING = folder(ANN, BEN, CAM)


def corrected() -> KeyRing:
    """The same edition under a key that finds the second option right in the last four questions of A."""
    first, second = ring().keys
    mended = tuple(
        one.model_copy(update={"right": ("o2",)}) if at > 5 else one for at, one in enumerate(first.answers)
    )
    return ring(key_edition="second", keys=(first.model_copy(update={"answers": mended}), second))


def test_nothing_changed_writes_nothing(tmp_path: Path) -> None:
    """A second grading, a day later, finds the decisions it would make."""
    with opened(tmp_path) as store:
        keep(store, SPRING, ANN.code)
        keep(store, SPRING, BEN.code, "B", wrong=5)
        first = grade_class(store, terms(), SPRING, [ring()], NOW)
        again = grade_class(store, terms(), SPRING, [ring()], NOW + timedelta(days=1))
    assert [one.met for one in first.decisions] == [True, False, False]
    assert first.written == (ANN.code, BEN.code, CAM.code)
    assert (again.written, again.turned, again.decisions) == ((), (), first.decisions)
    assert len(contents(tmp_path)["decisions"]) == 3


def test_a_corrected_key_shows_who_changes_before_it_is_written(tmp_path: Path) -> None:
    """Without writing the reversal is named and the record stays as it was; then it is written."""
    with opened(tmp_path) as store:
        keep(store, SPRING, ANN.code, wrong=4)
        grade_class(store, terms(), SPRING, [ring()], NOW)
        before = contents(tmp_path)
        shown = grade_class(store, terms(), SPRING, [corrected()], NOW, write=False)
        assert contents(tmp_path) == before
        done = grade_class(store, terms(), SPRING, [corrected()], NOW)
    assert shown == done
    assert shown.turned == (ANN.code,)
    assert shown.written == (ANN.code,)
    assert [row[3] for row in contents(tmp_path)["decisions"] if row[2] == ANN.code] == [0, 1]


def test_a_higher_revision_is_graded_anew(tmp_path: Path) -> None:
    """A revision that comes in later makes a new decision, and the old one stays."""
    with opened(tmp_path) as store:
        keep(store, SPRING, ANN.code, wrong=5)
        grade_class(store, terms(), SPRING, [ring()], NOW)
        keep(store, SPRING, ANN.code, rev=2)
        again = grade_class(store, terms(), SPRING, [ring()], NOW)
    assert (again.written, again.turned) == ((ANN.code,), (ANN.code,))


def test_a_mended_title_changes_no_decision(tmp_path: Path) -> None:
    """What decides nothing may change without a new decision."""
    with opened(tmp_path) as store:
        grade_class(store, terms(), SPRING, [ring()], NOW)
        assert grade_class(store, terms(title="Falls"), SPRING, [ring()], NOW).written == ()


def test_the_keys_of_an_old_edition_are_not_needed_twice(tmp_path: Path) -> None:
    """Once graded, answers to an edition can be graded again from the record alone."""
    with opened(tmp_path) as store:
        keep(store, SPRING, ANN.code)
        grade_class(store, terms(), SPRING, [ring()], NOW)
        assert grade_class(store, terms(), SPRING, [], NOW).written == ()


def test_names_come_along(tmp_path: Path) -> None:
    """Whoever prints the outcome can say who is meant."""
    with opened(tmp_path) as store:
        assert grade_class(store, terms(), SPRING, [ring()], NOW).names[ANN.code] == "Ann"
