"""The board: who is in, where they stand, who is missing."""

from datetime import UTC, datetime, timedelta

from builder.host.board import QUIET, Board, counted
from builder.model.arrival import Arrival
from tests.records.made import person

ANN, BEN, CAL = person(1), person(2), person(3)
ALL = (ANN, BEN, CAL)
NOW = datetime(2026, 4, 19, 14, 0, tzinfo=UTC)


def came(number: int, code: str = ANN.code) -> Arrival:
    """A sheet that was kept."""
    return Arrival(digest=str(number), at=NOW + timedelta(minutes=number), receipt="7K3-M9Q", code=code)


def test_everyone_is_somewhere() -> None:
    """In the order of the roster: not seen, joined, working, handed in; a sheet weighs more than a phone."""
    board = Board()
    board.here(ANN.code, 0, 10, 0)
    board.here(BEN.code, 4, 10, 0)
    assert [(one.name, one.state) for one in board.places(ALL, 1)] == [
        (ANN.name, "joined"),
        (BEN.name, "working"),
        (CAL.name, "missing"),
    ]
    board.came(ANN.code, came(1))
    places = board.places(ALL, 1)
    assert [one.state for one in places] == ["handed", "working", "missing"]
    assert counted(places) == {"missing": 1, "joined": 0, "working": 1, "handed": 1, "all": 3, "in": 2}


def test_a_sheet_twice_is_one() -> None:
    """Two revisions are two, in the order they came."""
    board = Board()
    for number in (2, 1, 2):
        board.came(ANN.code, came(number))
    assert [one.digest for one in board.places(ALL, 0)[0].sheets] == ["1", "2"]


def test_a_phone_that_falls_silent_is_told() -> None:
    """Until it is heard of again."""
    board = Board()
    board.here(ANN.code, 1, 10, 0)
    assert [board.places(ALL, now)[0].quiet for now in (QUIET, QUIET + 1)] == [False, True]
    board.here(ANN.code, 1, 10, QUIET + 2)
    assert not board.places(ALL, QUIET + 3)[0].quiet


def test_the_board_is_filled_from_what_lies_in_the_inbox() -> None:
    """By whoever holds the code; a code of nobody is left to collect."""
    board = Board()
    board.filled([came(1), came(2, BEN.code)], {ANN.code: ANN.code})
    assert [len(one.sheets) for one in board.places(ALL, 0)] == [1, 0, 0]
