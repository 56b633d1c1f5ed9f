"""A class's answers are taken, each once, and nothing hostile stops the others."""

from datetime import timedelta
from pathlib import Path

from builder.collect.collect import collect_class
from builder.doors.store.sheets import sheets_of
from tests.records.kept import collect, contents, hand_in, look, opened
from tests.records.made import NOW, answers, folder, person, ring, sheet_bytes

ANN, BEN = person(1), person(2, "B")
SPRING = folder(ANN, BEN)
GOOD = {"ann": sheet_bytes(ANN.code, answers()), "ben": sheet_bytes(BEN.code, answers("B"))}
HOSTILE = {
    "deep": b"[" * 100_000,
    "huge": b" " * 300_000,
    "nul": b"\0" * 100,
    "latin": "{'é'}".encode("latin-1"),
    "twice": GOOD["ann"].replace(b'"rev": 1', b'"rev": 1, "rev": 2'),
}


def test_good_files_are_taken_and_others_left(tmp_path: Path) -> None:
    """Every hostile file gets its line and stays where it is; the good ones among them are taken."""
    inbox = hand_in(tmp_path, **GOOD, **HOSTILE)
    with opened(tmp_path) as store:
        told = collect(store, SPRING, inbox)
    assert [one.file for one in told.taken] == ["ann.json", "ben.json"]
    assert [one.file.removesuffix(".json") for one in told.left] == sorted(HOSTILE)
    assert all(one.fault and one.remedy and "\n" not in one.fault for one in told.left)
    assert all((inbox / f"{name}.json").read_bytes() == data for name, data in HOSTILE.items())


def test_running_again_takes_nothing_twice(tmp_path: Path) -> None:
    """A second run says that all was there already, and the record is as it was."""
    inbox = hand_in(tmp_path, **GOOD, **HOSTILE)
    with opened(tmp_path) as store:
        collect(store, SPRING, inbox)
        before = contents(tmp_path)
        (inbox / "copy of ann.json").write_bytes(GOOD["ann"])
        told = collect_class(store, SPRING, inbox, [ring()], NOW + timedelta(days=1))
    assert (told.taken, told.had) == ((), ("ann.json", "ben.json", "copy of ann.json"))
    assert contents(tmp_path) == before
    assert len(look(tmp_path, "SELECT DISTINCT received FROM sheets")) == 1


def test_what_was_refused_is_taken_once_it_fits(tmp_path: Path) -> None:
    """A file left behind is looked at again: a roster put right lets it in."""
    inbox = hand_in(tmp_path, **GOOD)
    with opened(tmp_path) as store:
        assert len(collect(store, folder(ANN), inbox).left) == 1
        assert [one.file for one in collect(store, SPRING, inbox).taken] == ["ben.json"]


def test_an_edition_stays_known(tmp_path: Path) -> None:
    """Answers to an edition collected once with its keys can come in after the next build."""
    with opened(tmp_path) as store:
        collect(store, SPRING, tmp_path)
        told = collect_class(store, SPRING, hand_in(tmp_path, **GOOD), [ring(edition="next")], NOW)
        assert len(told.taken) == 2


def test_the_same_bytes_belong_to_one_class(tmp_path: Path) -> None:
    """A sheet taken for one course is refused for another, in words."""
    inbox = hand_in(tmp_path, **GOOD)
    with opened(tmp_path) as store:
        collect(store, SPRING, inbox)
        told = collect(store, SPRING.model_copy(update={"course": "flights"}), inbox)
    assert "The class `spring` of `falls` has this already." in told.left[0].fault


def test_a_second_sheet_of_one_code_is_taken_and_reported(tmp_path: Path) -> None:
    """Nothing handed in is lost, and a person is told to look."""
    other = sheet_bytes(ANN.code, answers(wrong=5), sheet="f" * 32)
    with opened(tmp_path) as store:
        told = collect(store, SPRING, hand_in(tmp_path, **GOOD, other=other))
        assert len(sheets_of(store, SPRING)) == 3
    assert "2 different answer sheets" in told.notices[0]


def test_progress_is_told_after_it_is_safe(tmp_path: Path) -> None:
    """Each count that is told is in the record already."""
    seen: list[tuple[int, int, int]] = []
    inbox = hand_in(tmp_path, **GOOD)

    def hear(done: int, whole: int) -> None:
        seen.append((done, whole, len(look(tmp_path, "SELECT id FROM sheets"))))

    with opened(tmp_path) as store:
        collect_class(store, SPRING, inbox, [ring()], NOW, hear)
    assert seen == [(2, 2, 2)]
