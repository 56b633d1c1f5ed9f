"""The gate: the same words again for the same files, and no word for any other."""

from pathlib import Path

import pytest

from builder.diagnostic import Diagnostic, Related
from builder.doors.cache import NoCache, open_cache
from builder.flow.gate import SLOT, cache_of, gate_key, recall, remember
from builder.place import Place

FOUND = Diagnostic(
    "declared_phase",
    "error",
    Place("cases/a.yml", 2, 3, 2, 9),
    "What is wrong.",
    "What mends it.",
    ("visits", 0, "phase"),
    ("rule_a",),
    (Related(Place("content/facts.yml", 1), "See there."),),
)


@pytest.fixture
def course(tmp_path: Path) -> Path:
    """A folder with a few files."""
    folder = tmp_path / "course"
    for name in (
        "course.yml",
        "cases/a.yml",
        "media/film.mp4",
        "out/publish/index.html",
        ".git/x",
        "private/k",
    ):
        (folder / name).parent.mkdir(parents=True, exist_ok=True)
        (folder / name).write_text("one: 1\ntwo: 2\n", encoding="utf-8")
    return folder


def test_what_was_found_comes_back_whole(tmp_path: Path, course: Path) -> None:
    """Every field of it, its source line, and whether the course is sound."""
    cache, key = cache_of(course, tmp_path / "home"), gate_key(course)
    assert recall(course, cache, key) is None
    remember(course, cache, key, (FOUND,))
    told = recall(course, cache_of(course, tmp_path / "home"), key)
    assert told is not None
    assert told.to_fix == (FOUND,)
    assert not told.sound
    assert "two: 2" in told.text(width=80, colour=False)
    assert told.json()["counts"]["error"] == 1
    assert (len(told.places), list(told.places)) == (0, [])
    with pytest.raises(KeyError):
        told.places["cases/nowhere.yml"]
    assert told.places["site_config.yml"].lines


@pytest.mark.parametrize(
    "name", ["course.yml", "cases/a.yml", "cases/b.yml", "cases/sub/c.yml", "stray.txt", "media/film.mp4"]
)
def test_any_change_of_a_file_closes_the_gate(course: Path, name: str) -> None:
    """Written anew, come or gone."""
    before = gate_key(course)
    path = course / name
    path.parent.mkdir(exist_ok=True)
    path.write_text("three: 3\n", encoding="utf-8")
    changed = gate_key(course)
    path.unlink()
    assert len({before, changed, gate_key(course)} - {before}) >= 1
    assert changed != before


@pytest.mark.parametrize("name", ["out/publish/index.html", ".git/x", "private/k", ".caseloom/cache/a"])
def test_what_no_check_reads_leaves_it_open(course: Path, name: str) -> None:
    """What is built, private or hidden."""
    before = gate_key(course)
    (course / name).parent.mkdir(parents=True, exist_ok=True)
    (course / name).write_text("three", encoding="utf-8")
    assert gate_key(course) == before


def test_a_save_during_the_check_is_not_remembered(tmp_path: Path, course: Path) -> None:
    """What was found may belong to either state."""
    cache, key = open_cache(course, tmp_path / "home"), gate_key(course)
    (course / "cases" / "a.yml").write_text("other: 1\n", encoding="utf-8")
    remember(course, cache, key, (FOUND,))
    assert recall(course, cache, key) is None


@pytest.mark.parametrize("kept", [b"", b"{", b"[1]", b'[{"check": "x"}]', b"{}"])
def test_what_makes_no_sense_is_nothing(tmp_path: Path, course: Path, kept: bytes) -> None:
    """Even under our own seal, as an older version may have left it."""
    cache, key = open_cache(course, tmp_path / "home"), gate_key(course)
    cache.put(SLOT, key, kept)
    told = recall(course, cache, key)
    assert told is None or told.to_fix == ()


def test_a_linked_folder_is_read_once(course: Path) -> None:
    """A link back to the top ends nowhere, one that leads out of the course counts with its files."""
    outside = course.parent / "outside"
    outside.mkdir()
    (outside / "c.yml").write_text("a", encoding="utf-8")
    (course / "cases" / "round").symlink_to(course, target_is_directory=True)
    (course / "cases" / "there").symlink_to(outside, target_is_directory=True)
    before = gate_key(course)
    (outside / "c.yml").write_text("b", encoding="utf-8")
    assert gate_key(course) != before


def test_without_a_cache_nothing_is_known(course: Path) -> None:
    """And nothing fails."""
    remember(course, NoCache(), gate_key(course), (FOUND,))
    assert recall(course, NoCache(), gate_key(course)) is None
