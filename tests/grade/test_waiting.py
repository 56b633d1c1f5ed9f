"""The sheet by which written answers are marked."""

from builder.grade.waiting import COLUMNS, rows_to_mark
from builder.model.handed import sheet_of
from builder.model.key import Key, KeyRing
from builder.model.records import KeptSheet
from tests.records.made import (
    NOW,
    VERSIONS,
    code_for,
    folder,
    key_answer,
    marked,
    person,
    ring,
    sheet_bytes,
    written_answer,
)

TEXT = "Not today.\nA doctor looks first."
WHO = person(1, "A")


def written_ring() -> KeyRing:
    """A key ring whose versions ask for an option and for an answer in words."""
    keys = (
        Key(test="final", version=one, answers=(key_answer("a1"), written_answer("a2"))) for one in VERSIONS
    )
    return ring(keys=tuple(keys))


def kept(text: str | None = TEXT) -> KeptSheet:
    """A sheet with a written answer."""
    answers = [{"q": "a1", "kind": "one", "value": "o1"}, {"q": "a2", "kind": "text", "value": text}]
    return KeptSheet(digest="d", received=NOW, sheet=sheet_of(sheet_bytes(WHO.code, {}, answers=answers)))


def rows(sheet: KeptSheet, **levels: int) -> list[dict[str, str]]:
    """The rows for one sheet after these marks, by column."""
    class_ = folder(WHO, markings=marked(WHO.code, TEXT, **levels))
    known = {("final", "k7q2m9xa"): written_ring()}
    return [dict(zip(COLUMNS, row, strict=True)) for row in rows_to_mark(class_, [sheet], known)]


def test_each_criterion_of_each_answer_has_a_row() -> None:
    """With the answer, what was asked, and the levels in words; the level is left to be filled in."""
    first, second = rows(kept())
    assert first == {
        "code": WHO.code,
        "test": "final",
        "question": "tell_her",
        "asked": "What do you tell her?",
        "answer": TEXT,
        "criterion": "stops",
        "levels": "Stops: 0 = No; 1 = In part; 2 = Yes",
        "level": "",
        "by": "",
    }
    assert (second["criterion"], second["level"]) == ("plain", "")


def test_what_is_marked_already_stays_in_the_sheet() -> None:
    """It can take the place of the sheet before, and nothing is lost."""
    first, second = rows(kept(), stops=2)
    assert (first["level"], first["by"]) == ("2", "Ansel Fathom")
    assert (second["level"], second["by"]) == ("", "")


def test_nothing_is_written_where_nothing_waits() -> None:
    """All marked, not answered, or under a key that is not known: no rows."""
    assert rows(kept(), stops=2, plain=1) == []
    assert rows(kept(None)) == []
    assert rows_to_mark(folder(WHO), [kept()], {}) == []
    assert code_for(1) != WHO.code
