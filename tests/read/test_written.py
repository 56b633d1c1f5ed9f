"""One file as written, and what it is."""

from pathlib import Path

from builder.model.case import Client
from builder.place import Place
from builder.read.written import as_entry, read_written


def entry_of(folder: Path, data: bytes, name: str = "cases/thigh.yml") -> tuple[bool, list[tuple[str, int]]]:
    """Whether a file makes a noun, and what is found in it by check and line."""
    path = folder / "a.yml"
    path.write_bytes(data)
    entry = as_entry(Client, read_written(path, name))
    return entry.noun is not None, [(one.check, one.place.line) for one in entry.found]


def test_a_sound_file_makes_a_noun(tmp_path: Path) -> None:
    """Nothing is found in it."""
    assert entry_of(tmp_path, b"role: Rider\nage: 30\n") == (True, [])


def test_faults_of_text_and_of_sense_come_together(tmp_path: Path) -> None:
    """A shortcut, a key twice and an unknown key are all told, each once."""
    data = b"role: &x Rider\nage: 30\nage: old\nnick: y\n"
    assert entry_of(tmp_path, data) == (
        False,
        [("yaml_anchor", 1), ("yaml_key_twice", 3), ("number_expected", 3), ("key_unknown", 4)],
    )


def test_what_cannot_be_parsed_is_not_judged(tmp_path: Path) -> None:
    """Broken syntax is told alone: keys that were not reached are not called missing."""
    assert entry_of(tmp_path, b'role: "Rider\n') == (False, [("yaml_open_quote", 1)])


def test_a_file_that_cannot_be_read_is_said(tmp_path: Path) -> None:
    """A missing file and one that is far too large are things to fix, not crashes."""
    missing = read_written(tmp_path / "none.yml", "none.yml")
    assert [(one.check, one.place) for one in missing.found] == [("file_unreadable", Place("none.yml"))]
    assert not entry_of(tmp_path, b"#" * 1_000_001)[0]
    assert entry_of(tmp_path, b"#" * 2_000_000)[1] == [("file_unreadable", 1)]


def test_the_id_is_the_written_one_or_the_name(tmp_path: Path) -> None:
    """A file without a proper id is known by its name."""
    path = tmp_path / "a.yml"
    for data, name in ((b"id: other\n", "other"), (b"id: [x]\n", "thigh"), (b"- x\n", "thigh")):
        path.write_bytes(data)
        assert read_written(path, "cases/thigh.yml").id == name


def test_faults_are_made_at_values_and_keys(tmp_path: Path) -> None:
    """A Diagnostic carries path and place, and may name another place."""
    (tmp_path / "a.yml").write_bytes(b"role: Rider\n")
    written = read_written(tmp_path / "a.yml", "a.yml")
    at_value = written.fault("c", ("role",), ("Message.", "Remedy."))
    at_key = written.fault("c", ("role",), ("Message.", "Remedy."), key=True, level="advice")
    assert (at_value.place.column, at_key.place.column) == (7, 1)
    assert (at_value.level, at_key.level, at_key.path) == ("error", "advice", ("role",))
    assert written.beside(at_key, at_value.place, "Here.").related[0].place.column == 7
