"""A class's answers are counted, by version and question."""

from pathlib import Path

from builder.analyse.analyse import analyse_class
from builder.doors.store.sheets import add_sheet
from builder.grade.grade import grade_class
from builder.model.analysis import Analysis
from builder.model.handed import sheet_of
from builder.model.key import Key
from builder.model.paper import Paper, PaperOption, PaperQuestion, PublishedTest, Scene
from builder.model.records import ClassFolder, KeptSheet
from tests.records.kept import keep, opened
from tests.records.made import (
    NOW,
    VERSIONS,
    folder,
    key_answer,
    person,
    ring,
    sheet_bytes,
    terms,
    written_answer,
)

SCENE = Scene(title="Visit 1", client="An acrobat", story="A fall.", board=(), screen="")
OPTIONS = tuple(PaperOption(id=f"o{at}", title=f"Option {at}", chips=("20 min",)) for at in range(1, 5))
ASKED = PaperQuestion(id="a1", kind="one", stem="Which phase?", hint="One.", scene=SCENE, options=OPTIONS)
PAPER = Paper(test="final", title="Final", version="A", language="en", questions=(ASKED,))
PUBLISHED = PublishedTest(test="final", title="Final", edition="k7q2m9xa", papers=(PAPER,))


def analysed(place: Path, spring: ClassFolder, wrong: list[int]) -> Analysis:
    """The analysis of a class of which each got so many wrong."""
    with opened(place) as store:
        for one, missed in zip(spring.participants, wrong, strict=True):
            keep(store, spring, one.code, wrong=missed)
        grade_class(store, terms(), spring, [ring()], NOW)
        return analyse_class(store, spring, [ring()], [PUBLISHED])


def test_a_small_class_gives_counts(tmp_path: Path) -> None:
    """Three sitters: counts for every option, titles from the paper, and no share."""
    (version,) = analysed(tmp_path, folder(*(person(at) for at in range(1, 4))), [0, 1, 10]).versions
    assert (version.version, version.n, version.coefficient) == ("A", 3, "KR-20")
    first = version.questions[0]
    assert (first.stem, first.options[0].title) == ("Which phase?", "Option 1 · 20 min")
    assert [option.count for option in first.options] == [2, 1, 0, 0]
    assert [option.right for option in first.options] == [True, False, False, False]
    assert first.difficulty.value is None
    assert version.questions[1].stem == ""


def test_thirty_sitters_give_figures(tmp_path: Path) -> None:
    """Thirty: shares with limits, discrimination and reliability, provisional."""
    spring = folder(*(person(at) for at in range(1, 31)))
    (version,) = analysed(tmp_path, spring, [at % 7 for at in range(30)]).versions
    last = version.questions[-1]
    assert last.difficulty.value == 5 / 30
    assert last.discrimination.value is not None
    assert version.reliability.value is not None
    assert version.questions[0].discrimination.note.startswith("Not defined")


def test_nothing_graded_gives_nothing(tmp_path: Path) -> None:
    """An ungraded class has no versions to tell of."""
    spring = folder(person(1))
    with opened(tmp_path) as store:
        keep(store, spring, spring.participants[0].code)
        assert analyse_class(store, spring, [ring()], []) == Analysis(klass="spring", versions=())


def test_a_try_that_waits_for_a_person_is_left_out(tmp_path: Path) -> None:
    """Until its written answer is marked its marks are not whole; how many wait is said."""
    keys = (
        Key(test="final", version=one, answers=(key_answer("a1"), written_answer("a2"))) for one in VERSIONS
    )
    asked, spring = ring(keys=tuple(keys)), folder(person(1), person(2))
    with opened(tmp_path) as store:
        for at, one in enumerate(spring.participants):
            text = "Not today." if at else None
            given = [{"q": "a1", "kind": "one", "value": "o1"}, {"q": "a2", "kind": "text", "value": text}]
            data = sheet_bytes(one.code, {}, answers=given, sheet=f"{at:032x}")
            add_sheet(store, spring, KeptSheet(digest=str(at), received=NOW, sheet=sheet_of(data)), data)
        grade_class(store, terms(), spring, [asked], NOW)
        (version,) = analyse_class(store, spring, [asked], []).versions
    assert (version.n, version.waiting) == (1, 1)
