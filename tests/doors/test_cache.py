"""Work done before: given back whole under its own key and seal, and never otherwise."""

import threading
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from builder.doors.cache import FOLDER, FolderCache, LayeredCache, NoCache, digest, open_cache

SEAL = b"s" * 32


def file_of(folder: Path) -> Path:
    """The only slot on disk."""
    (found,) = [path for path in folder.rglob("*") if path.is_file() and path.name != ".gitignore"]
    return found


def test_what_was_put_is_got_under_its_key_alone(tmp_path: Path) -> None:
    """Another key, and another slot, find nothing."""
    cache = FolderCache(tmp_path / "cache", SEAL)
    cache.put("judged/landing", "k1", b"one")
    assert cache.get("judged/landing", "k1") == b"one"
    assert cache.get("judged/landing", "k2") is None
    assert cache.get("judged/other", "k1") is None
    cache.put("judged/landing", "k2", b"two")
    assert cache.get("judged/landing", "k1") is None


def test_an_entry_of_another_person_is_nothing(tmp_path: Path) -> None:
    """A course that comes with a cache brings nothing in: its seal is not ours."""
    FolderCache(tmp_path, b"t" * 32).put("judged/landing", "k", b"<script>")
    assert FolderCache(tmp_path, SEAL).get("judged/landing", "k") is None


def test_an_entry_moved_to_another_slot_is_nothing(tmp_path: Path) -> None:
    """The seal holds the slot as well, so one case can not be passed off as another."""
    cache = FolderCache(tmp_path, SEAL)
    cache.put("judged/landing", "k", b"one")
    file_of(tmp_path).rename(tmp_path / "judged" / "judged-other")
    assert cache.get("judged/other", "k") is None


@given(st.integers(0, 200), st.integers(0, 255))
def test_a_damaged_entry_is_nothing_or_what_it_was(
    tmp_path_factory: pytest.TempPathFactory, at: int, byte: int
) -> None:
    """Whatever byte is changed, and wherever it is cut off."""
    folder = tmp_path_factory.mktemp("cache")
    cache = FolderCache(folder, SEAL)
    cache.put("a/b", "k", b"x" * 100)
    whole = file_of(folder).read_bytes()
    place = at % len(whole)
    for harmed in (whole[:place], whole[:place] + bytes([byte]) + whole[place + 1 :]):
        file_of(folder).write_bytes(harmed)
        assert cache.get("a/b", "k") == (b"x" * 100 if harmed == whole else None)


def test_slots_of_cases_that_are_gone_are_dropped(tmp_path: Path) -> None:
    """Drafts of a command that was cut off go with them."""
    cache = FolderCache(tmp_path, SEAL)
    for name in ("here", "gone"):
        cache.put(f"judged/{name}", "k", b"x")
    (tmp_path / "judged" / "judged-here.ab12.draft").write_bytes(b"half")
    cache.keep("judged", ["here"])
    cache.keep("never", ["here"])
    assert [path.name for path in (tmp_path / "judged").iterdir()] == ["judged-here"]


def test_the_folder_keeps_itself_out_of_version_control(tmp_path: Path) -> None:
    """And the seal is this person's alone."""
    cache = open_cache(tmp_path / "course", tmp_path / "home")
    cache.put("a/b", "k", b"x")
    assert (tmp_path / "course" / FOLDER.parent / ".gitignore").read_text(encoding="utf-8") == "*\n"
    assert (tmp_path / "home" / "cache_seal").stat().st_mode & 0o077 == 0
    assert open_cache(tmp_path / "course", tmp_path / "home").get("a/b", "k") == b"x"
    assert open_cache(tmp_path / "course", tmp_path / "elsewhere").get("a/b", "k") is None


def test_what_cannot_be_written_is_not_kept(tmp_path: Path) -> None:
    """A file where a folder should be is no fault; without a seal there is no cache at all."""
    (tmp_path / "file").write_text("", encoding="utf-8")
    cache = FolderCache(tmp_path / "file" / "cache", SEAL)
    cache.put("a/b", "k", b"x")
    assert cache.get("a/b", "k") is None
    assert isinstance(open_cache(tmp_path, tmp_path / "file" / "home"), NoCache)
    (tmp_path / "cache_seal").write_bytes(b"short")
    assert isinstance(open_cache(tmp_path, tmp_path), NoCache)


def test_no_cache_keeps_nothing() -> None:
    """It can be asked everything."""
    cache = NoCache()
    cache.put("a/b", "k", b"x")
    cache.keep("a", [])
    assert cache.get("a/b", "k") is None


def test_many_writers_leave_one_whole_entry(tmp_path: Path) -> None:
    """A reader sees what some writer wrote, never a mixture."""
    cache, seen = FolderCache(tmp_path, SEAL), set()
    texts = [bytes([65 + number]) * 50_000 for number in range(4)]
    cache.put("a/b", "k", texts[0])

    def write(text: bytes) -> None:
        for _ in range(20):
            cache.put("a/b", "k", text)

    writers = [threading.Thread(target=write, args=(text,)) for text in texts]
    for one in writers:
        one.start()
    while any(one.is_alive() for one in writers):
        seen.add(cache.get("a/b", "k"))
    assert seen <= set(texts)
    assert not list(tmp_path.rglob("*.draft"))


def test_memory_stands_before_the_folder(tmp_path: Path) -> None:
    """It gives what either holds, and drops what is dropped from both."""
    below = FolderCache(tmp_path, SEAL)
    below.put("a/old", "k", b"below")
    cache = LayeredCache(below)
    assert cache.get("a/old", "k") == b"below"
    cache.put("a/new", "k", b"above")
    file_of_new = tmp_path / "a" / "a-new"
    file_of_new.write_bytes(b"harmed")
    assert cache.get("a/new", "k") == b"above"
    assert cache.get("a/new", "other") is None
    cache.keep("a", ["old"])
    assert cache.get("a/new", "k") is None
    assert not file_of_new.exists()


@given(st.lists(st.text()), st.lists(st.text()))
def test_two_fingerprints_are_one_only_for_the_same_parts(one: list[str], other: list[str]) -> None:
    """Where a part ends is counted in."""
    assert (digest(*one) == digest(*other)) == (one == other)
