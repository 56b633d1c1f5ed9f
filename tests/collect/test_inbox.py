"""An inbox is read with care."""

import json
import os
from pathlib import Path

import pytest

from builder.collect.inbox import LARGEST, batches, listing
from tests.records.made import answers, code_for, sheet_bytes


def test_files_come_in_order_and_in_batches(tmp_path: Path) -> None:
    """Files are read by name, some at a time; what a computer hides there is passed over."""
    for name in ("c.json", "a.json", "b.JSON", ".DS_Store", ".a.json.3f"):
        (tmp_path / name).write_bytes(name.encode())
    assert [[one.name for one in batch] for batch in batches(tmp_path, 2)] == [
        ["a.json", "b.JSON"],
        ["c.json"],
    ]
    assert [path.name for path in listing(tmp_path)] == ["a.json", "b.JSON", "c.json"]


def test_no_inbox_is_an_empty_one(tmp_path: Path) -> None:
    """A class without a folder of answers has none."""
    assert list(batches(tmp_path / "answers", 5)) == []


def test_the_digest_is_of_the_bytes(tmp_path: Path) -> None:
    """The digest is SHA-256: that of `abc` is in the standard's examples (FIPS 180-2, appendix B.1)."""
    (tmp_path / "a.json").write_bytes(b"abc")
    digest = next(batches(tmp_path, 1))[0].digest
    assert digest == "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"


@pytest.mark.parametrize("size", [LARGEST, LARGEST + 1])
def test_a_large_file_is_not_read(tmp_path: Path, size: int) -> None:
    """A file of the largest size is read, one byte more is refused before anything looks inside."""
    (tmp_path / "a.json").write_bytes(b" " * size)
    handed = next(batches(tmp_path, 1))[0]
    assert (len(handed.data), bool(handed.fault)) == ((size, False) if size == LARGEST else (0, True))


def test_only_plain_files_of_our_kind_are_opened(tmp_path: Path) -> None:
    """Folders, links, pipes and other suffixes are named and not opened."""
    (tmp_path / "a.json").mkdir()
    (tmp_path / "b.json").symlink_to(tmp_path / "a.json")
    os.mkfifo(tmp_path / "c.json")
    (tmp_path / "d.pdf").write_bytes(b"%PDF")
    (tmp_path / "e").write_bytes(b"")
    handed = next(batches(tmp_path, 9))
    assert ["plain file" in one.fault for one in handed] == [True, True, True, False, False]
    assert "`.pdf`" in handed[3].fault
    assert "without a suffix" in handed[4].fault


def test_a_pasted_text_is_the_sheet_in_it(tmp_path: Path) -> None:
    """Bytes and digest are those of the file that was pasted; what is not whole is named."""
    sheet = json.dumps(json.loads(sheet_bytes(code_for(1), answers())), separators=(",", ":"))
    (tmp_path / "a.json").write_text(sheet, encoding="utf-8")
    (tmp_path / "b.txt").write_text(f"Hello\n> {sheet[:90]}\n> {sheet[90:]}\n", encoding="utf-8")
    (tmp_path / "c.txt").write_text("Hello", encoding="utf-8")
    handed = next(batches(tmp_path, 9))
    assert handed[0].digest == handed[1].digest
    assert "holds no answer sheet" in handed[2].fault


def test_a_name_that_is_no_text_is_made_one(tmp_path: Path) -> None:
    """A file name of odd bytes can still be printed."""
    Path(os.fsdecode(os.fsencode(tmp_path) + b"/odd\xff.json")).write_bytes(b"{}")
    assert next(batches(tmp_path, 1))[0].name == "odd?.json"
