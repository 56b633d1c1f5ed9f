"""What a decision rests on is seen to change."""

from fractions import Fraction

import pytest

from builder.model.basis import basis_of, terms_fingerprint
from builder.model.records import ClassFolder, Terms
from tests.records.made import AGENDA, BOARD, STATION, folder, person, presence, ring, station_sheet, terms

ANN, BEN = person(1), person(2)


def evidence(given: ClassFolder) -> str:
    """The fingerprint of what was seen of Ann."""
    return basis_of(terms(), given, ANN, (), ()).evidence


@pytest.mark.parametrize(
    "other",
    [
        terms(agenda=AGENDA[:1]),
        terms(requirements=terms().course.requirements.model_copy(update={"attendance": Fraction(1, 2)})),
        Terms(
            course=terms().course,
            boards=(BOARD.model_copy(update={"minutes_in_hour": 60}),),
            stations=(STATION,),
        ),
        Terms(course=terms().course, boards=(BOARD,), stations=()),
    ],
)
def test_whatever_decides_is_in_the_terms(other: Terms) -> None:
    """Requirements, agenda, boards and stations each change the fingerprint."""
    assert terms_fingerprint(other) != terms_fingerprint(terms())


def test_what_decides_nothing_is_not() -> None:
    """A mended title leaves every decision standing."""
    assert terms_fingerprint(terms(title="Falls, Landings")) == terms_fingerprint(terms())


def test_evidence_is_one_person_s_own() -> None:
    """Another's attendance or station sheet changes nothing of Ann's, her own does."""
    both = folder(ANN, BEN)
    late = (presence(ANN), presence(BEN, arrived="10:00"))
    assert evidence(both) == evidence(both.model_copy(update={"presences": late}))
    assert evidence(both) != evidence(both.model_copy(update={"presences": (presence(ANN, left="14:00"),)}))
    numb = (station_sheet(ANN, "numb"), station_sheet(BEN))
    assert evidence(both) != evidence(both.model_copy(update={"station_sheets": numb}))


def test_the_order_of_rows_is_no_evidence() -> None:
    """Sorting a sheet of attendance another way makes no decision stale."""
    both = folder(ANN, BEN)
    assert evidence(both) == evidence(both.model_copy(update={"presences": both.presences[::-1]}))


def test_keys_are_named_by_edition() -> None:
    """A corrected key of the same edition is another basis."""
    old, new = ring(), ring(key_edition="second")
    assert basis_of(terms(), folder(ANN), ANN, (), [old]) != basis_of(terms(), folder(ANN), ANN, (), [new])
