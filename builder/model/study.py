"""How long a lesson takes: its words at a published reading speed, and its films as long as they run."""

from __future__ import annotations

import re
from collections.abc import Collection
from dataclasses import dataclass
from fractions import Fraction

from builder.model.lesson import LessonTag, lesson_parts, lesson_tags, without_notes
from builder.model.library import Course

# Silent reading of English non-fiction: 238 words a minute, 175 to 300 for most adults; slower in a second
# language and in old age (Brysbaert 2019, J Mem Lang 109:104047, 190 studies of 18,573 people).
WORDS_A_MINUTE = 238
USUAL = (175, 300)
MILLISECONDS = 60_000
HEADINGS = ("i_sources", "references")  # words over what rests behind a lesson and is not studied

_HEADING = re.compile(r"^(#+)[ \t]+(.*?)[ \t]*#*$")
_ASIDE = re.compile(r"^[ \t]*(?:!!!|\?\?\?\+?)[ \t]+\w+[ \t]*", re.MULTILINE)
_PICTURE = re.compile(r"!\[[^\]\n]*\]\([^)\n]*\)")
_LINK = re.compile(r"\[([^\]\n]*)\]\([^)\n]*\)")
_MARKUP = re.compile(r"<[^<>]*>")


@dataclass(frozen=True)
class Study:
    """What there is to study: words, and thousandths of a second of film."""

    words: int = 0
    film: int = 0

    def __add__(self, other: Study) -> Study:
        """Both together."""
        return Study(self.words + other.words, self.film + other.film)

    @property
    def film_minutes(self) -> Fraction:
        """Minutes of film: running time counts one for one."""
        return Fraction(self.film, MILLISECONDS)

    def minutes(self, words_a_minute: int = WORDS_A_MINUTE) -> Fraction:
        """Minutes to read and to watch once, exactly."""
        return Fraction(self.words, words_a_minute) + self.film_minutes


def study_of(course: Course, stem: str) -> Study:
    """What one lesson holds; cards, cases and questions that it places are not counted."""
    text = course.lessons.get(stem, "")
    films = [course.films.get(tag.name) for tag in lesson_tags(text) if tag.kind == "film"]
    spoken = {course.content.words.get(key, "").casefold() for key in HEADINGS}
    return Study(words_in(text, spoken), sum(film.length for film in films if film))


def words_in(text: str, left_out: Collection[str] = ()) -> int:
    """The words that a lesson teaches, without notes, tags, pictures and sections headed by `left_out`."""
    parts = lesson_parts(without_notes(text))
    plain = "".join("\n" if isinstance(part, LessonTag) else part for part in parts)
    for pattern, instead in ((_PICTURE, ""), (_LINK, r"\1"), (_ASIDE, ""), (_MARKUP, " ")):
        plain = pattern.sub(instead, plain)
    pieces = " ".join(_taught(plain, left_out)).replace("|", " ").split()
    return sum(any(letter.isalnum() for letter in piece) for piece in pieces)


def _taught(text: str, left_out: Collection[str]) -> list[str]:
    """The lines that stand under no heading that is left out, nor under a smaller one below it."""
    kept: list[str] = []
    depth = 0
    for line in text.split("\n"):
        heading = _HEADING.match(line)
        if heading and (not depth or len(heading[1]) <= depth):
            depth = len(heading[1]) if heading[2].casefold() in left_out else 0
        if not depth:
            kept.append(line)
    return kept
