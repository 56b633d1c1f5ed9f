"""Every attempt is kept, and the best of those allowed decides."""

from fractions import Fraction

import pytest

from builder.fault import Fault
from builder.grade.attempts import attempts_of, decisive
from builder.model.handed import sheet_of
from builder.model.key import KeyRing
from builder.model.records import Attempt, KeptSheet
from builder.model.taught import Participant
from tests.records.made import NOW, answers, person, ring, sheet_bytes

ANN = person(1, "A", "B", "A")


def attempts(*wrong: int | None, who: Participant = ANN, keys: KeyRing | None = None) -> tuple[Attempt, ...]:
    """The attempts of someone who got so many wrong in each; None is one not sat."""
    sheets = [
        KeptSheet(
            digest=f"d{at}", received=NOW, sheet=sheet_of(sheet_bytes(code, answers(version, wrong=missed)))
        )
        for at, (code, version, missed) in enumerate(zip(who.codes, "ABA", wrong, strict=False))
        if missed is not None
    ]
    given = keys or ring()
    return attempts_of(who, sheets, {(given.test, given.edition): given})


def test_every_attempt_is_kept_with_its_number() -> None:
    """The place of the code in the row numbers the attempt, even where an earlier one was not sat."""
    made = attempts(5, None, 0)
    assert [(one.number, one.version, one.sheet, one.total) for one in made] == [
        (1, "A", "d0", Fraction(1, 2)),
        (3, "A", "d2", Fraction(1)),
    ]


@pytest.mark.parametrize(
    ("wrong", "number"),
    [((5, 2), 2), ((2, 5), 1), ((2, 0), 2), ((2, 2), 1), ((8, 5, 0), 2), ((None, 5), 2)],
)
def test_the_best_attempt_allowed_decides(wrong: tuple[int | None, ...], number: int) -> None:
    """Of two tries the better decides, of equals the earlier; a third is beyond them however good."""
    found = decisive(attempts(*wrong), "final")
    assert found
    assert found.number == number


def test_a_pass_decides_over_a_higher_mark_that_fails() -> None:
    """Nine of ten with the must-pass question missed loses to seven of ten with it."""
    unsafe = {**answers(), "a1": "o2"}
    sheets = [
        KeptSheet(digest="u", received=NOW, sheet=sheet_of(sheet_bytes(ANN.codes[0], unsafe))),
        KeptSheet(digest="s", received=NOW, sheet=sheet_of(sheet_bytes(ANN.codes[1], answers("B", wrong=3)))),
    ]
    made = attempts_of(ANN, sheets, {("final", "k7q2m9xa"): ring()})
    assert [(one.total, one.passed) for one in made] == [(Fraction(9, 10), False), (Fraction(7, 10), True)]
    found = decisive(made, "final")
    assert found
    assert found.sheet == "s"


def test_no_attempt_decides_nothing() -> None:
    """Nothing sat, another's test, or only what is beyond the tries gives no decision."""
    assert decisive((), "final") is None
    assert decisive(attempts(0), "other") is None
    assert decisive(attempts(None, None, 0), "final") is None


def test_a_missing_key_is_a_fault() -> None:
    """A sheet whose key nobody has cannot be graded, and the fault says what to do."""
    with pytest.raises(Fault, match="key of edition"):
        attempts(0, keys=ring(edition="other"))


def test_the_edition_sat_sets_the_rules() -> None:
    """Pass mark and tries are those printed with the edition that was sat."""
    strict = ring(tries=1)
    assert [one.counts for one in attempts(0, 0, keys=strict)] == [True, False]
    assert attempts(0, keys=strict)[0].pass_mark == Fraction(7, 10)
