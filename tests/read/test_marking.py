"""What was marked of written answers, read from a sheet, with everything wrong named at its cell."""

import pytest

from builder.doors.sheet import read_sheet
from builder.model.marking import Marked
from builder.model.question import AuthorQuestion
from builder.read.marking import read_marking
from tests.model.question_blocks import BLOCKS, QUESTION

HEAD = "code,test,question,criterion,level,by,answer\n"
ROW = "QZVNRBLAD,final,tell_him,reason,1,Tamsin Oakfell,It still bleeds.\n"
QUESTIONS = {
    "tell_him": AuthorQuestion.model_validate({**QUESTION, "id": "tell_him", "text": BLOCKS["text"]}),
    "first_aid": AuthorQuestion.model_validate({**QUESTION, "one": BLOCKS["one"]}),
}


def read(rows: str, head: str = HEAD) -> tuple[tuple[Marked, ...], list[str]]:
    """The marks in these rows, and what is wrong, each with its place."""
    sheet = read_sheet((head + rows).encode(), "classes/may/marking.csv")
    marks, found = read_marking(sheet, QUESTIONS, ["final"], {"QZVNRBLAD"})
    return marks, [f"{one.check} {one.place.line}:{one.place.column}" for one in found]


def test_a_row_is_one_mark() -> None:
    """The code is tidied; the answer is kept with it."""
    (mark,), found = read(ROW.replace("QZVNRBLAD", "qzv nrb-lad"))
    assert (mark.code, mark.question, mark.criterion, mark.level) == ("QZVNRBLAD", "tell_him", "reason", 1)
    assert (mark.by, mark.answer, found) == ("Tamsin Oakfell", "It still bleeds.", [])


def test_a_row_without_a_level_waits() -> None:
    """The sheet as it was written, before anybody has marked, is no fault."""
    assert read(ROW.replace(",1,Tamsin Oakfell,", ",,,")) == ((), [])


def test_columns_that_help_to_mark_are_no_fault() -> None:
    """What was asked and the levels in words may stay in the sheet."""
    marks, found = read(ROW.rstrip() + ",Why?,0 = No; 1 = Yes\n", HEAD.rstrip() + ",asked,levels\n")
    assert (len(marks), found) == (1, [])


@pytest.mark.parametrize(
    ("rows", "fault"),
    [
        (ROW.replace("QZVNRBLAD", "WSBVCVQMF"), "code_unknown 2:1"),
        (ROW.replace("final", "finall"), "test_unknown 2:11"),
        (ROW.replace("tell_him", "tell_her"), "question_unknown 2:17"),
        (ROW.replace("tell_him", "first_aid"), "question_unknown 2:17"),
        (ROW.replace("reason", "reasons"), "criterion_unknown 2:26"),
        (ROW.replace(",1,", ",2,"), "level_unknown 2:33"),
        (ROW.replace(",1,", ",one,"), "level_unknown 2:33"),
        (ROW.replace("Tamsin Oakfell", ""), "marker_missing 2:35"),
    ],
)
def test_what_does_not_hold_is_named_and_left_out(rows: str, fault: str) -> None:
    """No mark is made of a row with a fault, and the fault stands at its cell."""
    assert read(rows) == ((), [fault])


def test_the_second_of_two_rows_is_left_out() -> None:
    """One criterion of one answer has one level."""
    marks, found = read(ROW + ROW.replace(",1,", ",0,"))
    assert ([one.level for one in marks], found) == ([1], ["marked_twice 3:26"])


def test_a_missing_column_is_said() -> None:
    """Without it no row could be read."""
    assert read("", HEAD.replace(",by", ""))[1] == ["sheet_column_missing 1:1"]
