"""Files on disk: bounded reading, whole writing, folders swapped in."""

import hashlib
import os
from pathlib import Path

import pytest

from builder.disk import (
    fingerprint,
    keep_bytes,
    read_bytes,
    read_ends,
    shipped,
    swapped_in,
    taken_over,
    write_bytes,
    write_text,
    write_tree,
)
from builder.fault import Fault


def names(folder: Path) -> list[str]:
    """Everything in a folder, hidden drafts included."""
    return sorted(path.name for path in folder.iterdir())


def fill(folder: Path) -> None:
    """An old folder with one file."""
    write_text(folder / "old.txt", "old")


def test_what_is_kept_is_on_the_disk_with_its_name(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """The bytes are forced to the disk before the name is given, and then the name."""
    forced: list[list[str]] = []
    real = os.fsync

    def fsync(handle: int) -> None:
        forced.append(names(tmp_path))
        real(handle)

    monkeypatch.setattr(os, "fsync", fsync)
    keep_bytes(tmp_path / "sheet.json", b"x")
    assert [["sheet.json" in seen] for seen in forced] == [[False], [True]]
    assert names(tmp_path) == ["sheet.json"]


def test_of_a_large_file_both_ends_are_read(tmp_path: Path) -> None:
    """A small one whole, and nothing twice."""
    path = tmp_path / "a"
    path.write_bytes(b"0123456789")
    assert read_ends(path, 5) == b"0123456789"
    assert read_ends(path, 4) == b"0123\n6789"
    path.write_bytes(b"")
    assert read_ends(path, 4) == b""


def test_reading_is_bounded(tmp_path: Path) -> None:
    """A file of exactly the limit is read, one byte more is refused by name and size."""
    write_bytes(tmp_path / "sheet.json", b"x" * 2000)
    assert read_bytes(tmp_path / "sheet.json", 2000) == b"x" * 2000
    with pytest.raises(Fault, match=r"^sheet\.json is larger than 1,999 bytes\. Split it"):
        read_bytes(tmp_path / "sheet.json", 1999)


@pytest.mark.parametrize("name", ["gone.yml", "folder", "folder/inside"])
def test_what_cannot_be_read_is_a_fault(tmp_path: Path, name: str) -> None:
    """A file that is not there, and a folder, are told in one plain line."""
    (tmp_path / "folder").mkdir()
    with pytest.raises(Fault, match=r"cannot be read: .+\. Check that it is there"):
        read_bytes(tmp_path / name, 10)


def test_a_text_is_written_byte_for_byte(tmp_path: Path) -> None:
    """UTF-8, line ends as given, in folders that are made on the way; no draft is left."""
    write_text(tmp_path / "a" / "b" / "größe.txt", "1\n2\r\n°")
    assert (tmp_path / "a" / "b" / "größe.txt").read_bytes() == b"1\n2\r\n\xc2\xb0"
    assert names(tmp_path / "a" / "b") == ["größe.txt"]


@pytest.mark.parametrize("step", ["os.fsync", "pathlib.Path.replace"])
def test_a_write_that_fails_leaves_the_old(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, step: str
) -> None:
    """Whether the disk fails while writing or while putting in place, the old file stands whole."""
    file = tmp_path / "record.txt"
    write_text(file, "old")

    def fail(*_: object) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(step, fail)
    with pytest.raises(OSError, match="No space left"):
        write_text(file, "new and longer")
    assert file.read_bytes() == b"old"
    assert names(tmp_path) == ["record.txt"]


def test_a_tree_is_written_under_its_root(tmp_path: Path) -> None:
    """Texts and bytes land under the names they are given."""
    write_tree(tmp_path / "site", {"index.html": "é", "css/a.css": b"\x00"})
    assert (tmp_path / "site" / "index.html").read_bytes() == "é".encode()
    assert (tmp_path / "site" / "css" / "a.css").read_bytes() == b"\x00"


def test_a_folder_is_swapped_in_whole(tmp_path: Path) -> None:
    """While it is filled the old one stands; then nothing of the old is left."""
    target = tmp_path / "out" / "publish"
    fill(target)
    with swapped_in(target) as fresh:
        write_text(fresh / "new.txt", "new")
        assert names(target) == ["old.txt"]
    assert names(target) == ["new.txt"]
    assert names(tmp_path / "out") == ["publish"]


def test_a_folder_is_swapped_in_where_none_was(tmp_path: Path) -> None:
    """The first build needs no old folder, nor its parents."""
    with swapped_in(tmp_path / "out" / "publish") as fresh:
        write_text(fresh / "new.txt", "new")
    assert names(tmp_path / "out" / "publish") == ["new.txt"]


def test_an_exception_keeps_the_old_folder(tmp_path: Path) -> None:
    """What was half made is thrown away, and the exception goes on."""
    target = tmp_path / "publish"
    fill(target)

    def build() -> None:
        with swapped_in(target) as fresh:
            write_text(fresh / "half.txt", "half")
            raise Fault("A page could not be built.")

    with pytest.raises(Fault, match="could not be built"):
        build()
    assert names(target) == ["old.txt"]
    assert names(tmp_path) == ["publish"]


def test_a_swap_that_fails_brings_the_old_folder_back(tmp_path: Path) -> None:
    """When the new folder cannot take its place, the old one is put back."""
    target = tmp_path / "publish"
    fill(target)

    def build() -> None:
        with swapped_in(target) as fresh:
            fresh.rmdir()

    with pytest.raises(FileNotFoundError):
        build()
    assert names(target) == ["old.txt"]
    assert names(tmp_path) == ["publish"]


@pytest.mark.parametrize("name", ["content", "site_config.yml", "demo_course"])
def test_what_the_tool_brings_is_found(name: str) -> None:
    """Content, settings and demo are found without knowing where one stands."""
    assert shipped(name).exists()


def test_a_part_that_is_missing_is_a_fault() -> None:
    """A broken installation is told as such."""
    with pytest.raises(Fault, match=r"own nothing is missing\. Install caseloom again\."):
        shipped("nothing")


def test_a_fingerprint_is_over_the_text() -> None:
    """The SHA-256 of the UTF-8 text, as hex."""
    assert fingerprint("é") == hashlib.sha256(b"\xc3\xa9").hexdigest()


def test_a_file_is_taken_over_by_link_or_copy(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """The bytes are the same either way; what is not there is not taken over."""
    (tmp_path / "a").write_bytes(b"x")
    assert taken_over(tmp_path / "a", tmp_path / "one" / "b")
    assert not taken_over(tmp_path / "none", tmp_path / "c")
    monkeypatch.setattr(Path, "hardlink_to", lambda *_: (_ for _ in ()).throw(OSError()))
    assert taken_over(tmp_path / "a", tmp_path / "two" / "b")
    assert (tmp_path / "one" / "b").read_bytes() == (tmp_path / "two" / "b").read_bytes() == b"x"
