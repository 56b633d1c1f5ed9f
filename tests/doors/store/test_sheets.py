"""Answer sheets are kept byte by byte, and refusals once."""

from pathlib import Path

from builder.doors.store.sheets import add_refusal, add_sheet, owner_of, sheets_of
from builder.model.handed import sheet_of
from builder.model.records import KeptSheet
from tests.records.kept import contents, look, opened
from tests.records.made import NOW, answers, folder, person, sheet_bytes

ANN = person(1)
SPRING = folder(ANN)
BODY = sheet_bytes(ANN.code, answers(), note="kept as it is: é")
KEPT = KeptSheet(digest="d", received=NOW, sheet=sheet_of(BODY))


def test_a_sheet_comes_back_as_it_went(tmp_path: Path) -> None:
    """Bytes, digest and time of receipt are those that went in."""
    with opened(tmp_path) as store:
        add_sheet(store, SPRING, KEPT, BODY)
        assert sheets_of(store, SPRING) == (KEPT,)
        assert owner_of(store, "d") == ("falls", "spring")
        assert owner_of(store, "e") is None
    assert look(tmp_path, "SELECT body, code FROM sheets") == [(BODY, ANN.code)]


def test_classes_of_one_name_do_not_mix(tmp_path: Path) -> None:
    """The spring class of another course has no part in this one's sheets."""
    with opened(tmp_path) as store:
        add_sheet(store, SPRING, KEPT, BODY)
        assert sheets_of(store, SPRING.model_copy(update={"course": "flights"})) == ()


def test_a_refusal_is_noted_once_for_each_reason(tmp_path: Path) -> None:
    """The same file for the same reason is one row, for another reason one more."""
    with opened(tmp_path) as store:
        for fault in ("Damaged.", "Damaged.", "Not in the roster."):
            add_refusal(store, SPRING, "d", fault, NOW)
    assert len(contents(tmp_path)["refusals"]) == 2
