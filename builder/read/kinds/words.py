"""The words of the interface in another language than English, or a course's own."""

from __future__ import annotations

from builder.model.kind import Example, Kind

_FILE = "words/en.yml"
_GOOD = (
    'format: 1\nnext: Onward\nquestions_in_all: {one: "Only {n} question.", other: "{n} questions in all."}\n'
)

OF_WORDS: tuple[Kind, ...] = (
    Kind(
        "words_untranslated",
        "warning",
        "What has no text in the language of the course is shown in English, and a page in two languages is "
        "hard to read.",
        Example("course.yml", "language: nb"),
        Example("course.yml", "language: en-GB"),
        "Words of the interface have no text in the language of the course.",
    ),
    Kind(
        "words_not_used",
        "advice",
        "A text that no page says is mostly a misspelt name: the page goes on saying what it said before.",
        Example(_FILE, "format: 1\nnxt: Onward\n"),
        Example(_FILE, _GOOD),
    ),
    Kind(
        "words_blanks",
        "error",
        "A page fills the blanks of a text by their names. One that it does not know would stay empty.",
        Example(_FILE, 'format: 1\nquestions_in_all: "{number} questions in all."\n'),
        Example(_FILE, _GOOD),
    ),
)
