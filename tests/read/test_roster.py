"""The roster of a class."""

import pytest

from builder.model.taught import Participant
from builder.read.roster import codes_by_row, codes_in, read_roster
from tests.read.sheets import BEA, CURRO, KEIKO, sheet, told

HEAD = "name,name_on_licence,licence,email,report,code_1,code_2\n"


def test_participants_are_read_as_typed() -> None:
    """Names and licence numbers stay text; codes are tidied and keep their order."""
    text = (
        HEAD
        + f"Zoë O’Brien,Zoë M. O’Brien,00123,zoe@example.org,YES,qzvn-rbla-d,{CURRO}\nSuharto,,,,,{KEIKO},\n"
    )
    people, found = read_roster(sheet(text))
    assert found == []
    assert people == (
        Participant(
            name="Zoë O’Brien",
            name_on_licence="Zoë M. O’Brien",
            licence="00123",
            email="zoe@example.org",
            report=True,
            codes=(BEA, CURRO),
        ),
        Participant(name="Suharto", codes=(KEIKO,)),
    )


@pytest.mark.parametrize(
    ("row", "fault"),
    [
        (f",,,,,{BEA},", ("value_empty", 2, 1)),
        ("Bea,,,,,,", ("code_missing", 2, 9)),
        (f"Bea,,,,,,{BEA}", ("code_missing", 2, 9)),
        ("Bea,,,,,QZVNRBLAX,", ("code_wrong", 2, 9)),
        (f"Bea,,,,maybe,{BEA},", ("cell_not_yes_no", 2, 8)),
        (f"Bea,,,,,{BEA},{BEA}", ("code_twice", 2, 19)),
        (f"{'B' * 5000},,,,,{BEA},", ("text_too_long", 2, 1)),
    ],
)
def test_a_row_that_does_not_hold_is_told_at_its_cell(row: str, fault: tuple[str, int, int]) -> None:
    """Names, codes and answers that are missing or wrong."""
    assert told(read_roster(sheet(HEAD + row + "\n"))[1]) == [fault]


@pytest.mark.parametrize(
    ("rows", "fault"),
    [
        (f"Bea,,,,,{BEA},\nCurro,,,,,{BEA},\n", ("code_twice", 3, 11)),
        (f"José,,,,,{BEA},\nJOSE\u0301,,,,,{CURRO},\n", ("person_twice", 3, 1)),
        (f"Bea,,00123,,,{BEA},\nCurro,,00123,,,{CURRO},\n", ("person_twice", 3, 8)),
        (f"Bea,,,bea at example,,{BEA},\n", ("email_odd", 2, 7)),
    ],
)
def test_rows_that_do_not_go_together_are_told(rows: str, fault: tuple[str, int, int]) -> None:
    """One code for two people is an error; one person in two spellings is only suggested."""
    assert told(read_roster(sheet(HEAD + rows))[1]) == [fault]


def test_a_suggestion_keeps_the_row() -> None:
    """Two rows that may be one person are never merged silently."""
    people, found = read_roster(sheet(HEAD + f"Bea,,,,,{BEA},\nbea,,,,,{CURRO},\n"))
    assert [person.name for person in people] == ["Bea", "bea"]
    assert [one.level for one in found] == ["warning"]


def test_more_tries_have_more_columns_in_the_order_of_their_numbers() -> None:
    """The tenth code comes after the second, wherever its column stands."""
    people, found = read_roster(sheet(f"code_10,name,code_2,code_1\n{KEIKO},Bea,{CURRO},{BEA}\n"))
    assert found == []
    assert people[0].codes == (BEA, CURRO, KEIKO)


def test_no_column_beyond_the_needed_is_taken() -> None:
    """A date of birth has no place in a roster."""
    found = read_roster(sheet(f"name,birth date,code_1\nBea,1990-01-01,{BEA}\n"))[1]
    assert told(found) == [("sheet_column_unknown", 1, 6)]


def test_codes_of_faulty_rows_are_known_too() -> None:
    """So that a fault in the roster is not told again in the attendance."""
    assert codes_in(sheet(HEAD + f",,,,maybe,{BEA},\n")) == {BEA}


def test_the_codes_of_each_row_are_known() -> None:
    """Of a roster every code, of an attendance the one; a row without has none."""
    assert codes_by_row(sheet(f"name,code_1,code_2\nBea,qzvn-rbla-d,{CURRO}\nAda,,\n")) == (
        frozenset({BEA, CURRO}),
        frozenset(),
    )
    assert codes_by_row(sheet(f"code,day\n{KEIKO},1\n")) == (frozenset({KEIKO}),)
