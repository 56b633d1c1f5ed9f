"""The words of the interface."""

from pathlib import Path

from builder.read.words import read_words


def read(folder: Path, text: str) -> tuple[dict[str, str] | None, list[tuple[str, int]]]:
    """The texts of a file, and what is found in it."""
    (folder / "words.yml").write_text(text, encoding="utf-8")
    words = read_words(folder / "words.yml", "content/words.yml")
    return words.texts, [(one.check, one.place.line) for one in words.found]


def test_words_are_texts_by_id(tmp_path: Path) -> None:
    """The format is no text."""
    assert read(tmp_path, "format: 1\nnext: Next\nyes: Yes\n") == ({"next": "Next", "yes": "Yes"}, [])


def test_what_is_no_text_is_placed(tmp_path: Path) -> None:
    """A number, a list and a broken file give no words."""
    assert read(tmp_path, "next: 1\nback: [a]\n") == (None, [("text_expected", 1), ("text_expected", 2)])
    assert read(tmp_path, "next: 'a\n") == (None, [("yaml_open_quote", 1)])
    assert read(tmp_path, "- a\n") == (None, [("block_expected", 1)])
