"""The words of the interface: English, another language over it, a course's own over both."""

from pathlib import Path

import pytest

from builder.model.words import as_english, said
from builder.read.words import Words, read_words

ENGLISH = 'format: 1\nnext: Next\nof: "{n} of {all}"\ndays: {one: "{n} day", other: "{n} days"}\n'


def put(root: Path, **files: str) -> Path:
    """Words files below a folder, by language."""
    for language, text in files.items():
        path = root / "words" / f"{language.replace('_', '-')}.yml"
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(text, encoding="utf-8")
    return root


def read(folder: Path, language: str = "en", **own: str) -> Words:
    """The words of a course with these files over the English above."""
    return read_words(put(folder / "content", en=ENGLISH), put(folder, **own), language, "course.yml")


def found(words: Words) -> list[tuple[str, str, int]]:
    """What is to fix, and where."""
    return [(one.check, one.place.file, one.place.line) for one in words.found]


def test_words_are_texts_by_id_and_the_format_is_none(tmp_path: Path) -> None:
    """A pair gives the text for one by its id and `.one`."""
    words = read(tmp_path)
    assert words.texts == {
        "next": "Next",
        "of": "{n} of {all}",
        "days": "{n} days",
        "days.one": "{n} day",
    }
    assert found(words) == []


@pytest.mark.parametrize(
    ("text", "faults"),
    [
        ("next: 1\nof: [a]\n", [("text_expected", 1), ("text_expected", 2)]),
        ("next: 'a\n", [("yaml_open_quote", 1)]),
        ("- a\n", [("block_expected", 1)]),
        ("days: {one: a}\n", [("text_expected", 1)]),
    ],
)
def test_what_is_no_text_is_placed_and_gives_no_words(
    tmp_path: Path, text: str, faults: list[tuple[str, int]]
) -> None:
    """In the file under all others; in one above it the others still stand."""
    words = read_words(put(tmp_path, en=text))
    assert (words.texts, [(one.check, one.place.line) for one in words.found]) == (None, faults)
    over = read(tmp_path / "over", en=text)
    assert over.texts == read(tmp_path / "plain").texts
    assert [(check, line) for check, _, line in found(over)] == faults


def test_a_course_may_say_it_otherwise(tmp_path: Path) -> None:
    """Its own English stands over the shipped one; nothing has to be there twice."""
    words = read(tmp_path, en="format: 1\nnext: Onward\n")
    assert words.texts is not None
    assert (words.texts["next"], words.texts["of"]) == ("Onward", "{n} of {all}")
    assert found(words) == []


def test_a_translation_is_taken_by_language_and_country(tmp_path: Path) -> None:
    """What is said of the country stands over what is said of the language."""
    own = {"nb": 'next: Neste\nof: "{n} av {all}"\ndays: "{n} d"\n', "nb_NO": "next: Videre\n"}
    words = read(tmp_path, "nb-NO", **own)
    assert words.texts == {"next": "Videre", "of": "{n} av {all}", "days": "{n} d"}
    assert found(words) == []


def test_what_is_not_translated_is_told_and_marked_as_english(tmp_path: Path) -> None:
    """At the translation, or at the course where there is none."""
    words = read(tmp_path, "nb", nb='next: Neste\ndays: {one: "{n} dag", other: "{n} dager"}\n')
    assert words.texts is not None
    assert words.texts["of"] == as_english("{n} of {all}")
    assert said(words.texts, "days", n=1) == "1 dag"
    assert found(words) == [("words_untranslated", "words/nb.yml", 1)]
    assert "words/nb.yml" in words.found[0].remedy
    assert "`of`" in words.found[0].message
    assert found(read(tmp_path / "none", "nb")) == [("words_untranslated", "course.yml", 1)]


@pytest.mark.parametrize(
    ("text", "fault"),
    [
        ("nxt: Neste\n", "words_not_used"),
        ('of: "{n} av {alle}"\n', "words_blanks"),
        ('of: "{n} av {"\n', "words_blanks"),
        ('of: "{n:>9} av {all}"\n', "words_blanks"),
        ('next: "{}"\n', "words_blanks"),
        ('days: {one: "{m} d", other: "{n} d"}\n', "words_blanks"),
    ],
)
def test_names_and_blanks_must_be_those_of_the_english(tmp_path: Path, text: str, fault: str) -> None:
    """A text that no page says, and a blank that nothing fills; fewer blanks are sound."""
    assert found(read(tmp_path, en=text)) == [(fault, "words/en.yml", 1)]
    assert found(read(tmp_path / "fewer", en="of: of all\n")) == []


def test_a_language_cannot_lead_out_of_the_folder(tmp_path: Path) -> None:
    """A course whose language is no tag is refused; no file is looked for by such a name."""
    (tmp_path / "secret.yml").write_text("next: Told\n", encoding="utf-8")
    words = read(tmp_path, "../secret")
    assert "Told" not in str(words.texts)
