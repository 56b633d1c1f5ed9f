"""The small demonstration built once for all walks: as it is, and in the made-up language."""

from functools import cache
from pathlib import Path

from builder.flow.build import build
from builder.flow.opened import open_course
from tests.demo.built import fresh_folder
from tests.demo.small import small, small_course
from tests.words.pseudo import LANGUAGE, words_file


@cache
def plain() -> Path:
    """The folder that holds `publish` and `private`."""
    return _built(small())


@cache
def foreign_course() -> Path:
    """The small course with every word around it in the made-up language."""
    course = small_course(fresh_folder() / "course")
    in_language(course, LANGUAGE, words_file())
    return course


def in_language(course: Path, language: str, words: str) -> None:
    """Let a course be in another language, with a words file of its own."""
    file = course / "course.yml"
    text = file.read_text(encoding="utf-8")
    if text.count("\nlanguage: en\n") != 1:
        raise LookupError("The demonstration does not say that it is in English.")
    file.write_text(text.replace("\nlanguage: en\n", f"\nlanguage: {language}\n"), encoding="utf-8")
    (course / "words").mkdir()
    (course / "words" / f"{language}.yml").write_text(words, encoding="utf-8", newline="\n")


@cache
def foreign() -> Path:
    """The same site in the made-up language."""
    return _built(foreign_course())


def _built(course: Path) -> Path:
    out = fresh_folder()
    build(open_course(course), course, out)
    return out
