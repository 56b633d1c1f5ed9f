"""Key material in a finished student site: if anything is found, nothing may be published."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping, Sequence

from builder.check.leak.marks import marked
from builder.check.leak.reading import Published, published, words
from builder.check.leak.withheld import (
    Lookout,
    frame_words,
    of_authors,
    of_content,
    of_keys,
    of_written,
    papers_texts,
    pool_cases,
    pool_questions,
    said_on_purpose,
    shown_in_papers,
    stems_of,
)
from builder.diagnostic import Diagnostic
from builder.model.key import KeyAnswer, KeyRing
from builder.model.library import Course
from builder.place import Place

SHORT = 60
_TOKEN = re.compile(r"[a-z0-9]+")
OURS = "This is a fault of the program, not of the course: publish nothing, and report it."
THEIRS = "Take the {what} `{name}` out of the pool of the test, or out of what shows it, and build again."


class Search:
    """Everything withheld by one course, ready to be looked for in file after file."""

    def __init__(self, rings: Sequence[KeyRing], course: Course) -> None:
        cases, questions = pool_cases(course), pool_questions(course)
        aside = said_on_purpose(course)
        shown = [*shown_in_papers(cases), *stems_of(questions)]
        paper = b"".join(one.wording for one in shown) + b"".join(map(words, papers_texts(questions)))
        self.never = Lookout([*of_keys(rings), *of_authors(cases), *of_written(questions)], aside + paper)
        self.elsewhere = Lookout(shown, aside)
        self.in_tests = Lookout(of_content(course), frame_words(course) + paper)
        self.key_editions = [ring.key_edition for ring in rings]
        self.answers = [answer for ring in rings for key in ring.keys for answer in key.answers]
        self.ids = {(one.question[0], len(one.question)) for one in self.answers}
        self.options = {option for answer in self.answers for option in answer.options}
        own = _own_names(course)
        tested = [("case", one.id) for one in cases] + [("question", one.id) for one in questions]
        self.names = {(what, name): _address(what, name) for what, name in tested if name not in own}

    def says(self) -> str:
        """All that is looked for, as one text: where it is the same, the same file is as clean as before."""
        looked = (self.never, self.elsewhere, self.in_tests)
        texts = [[(one.text, one.what, one.case) for one in lookout.withheld] for lookout in looked]
        answers = [one.model_dump_json() for one in self.answers]
        return repr([texts, self.key_editions, answers, sorted(self.names)])

    def in_file(self, file: Published) -> Iterator[Diagnostic]:
        """Every leak of one file."""
        searching = "search" in file.name.lower()
        asked = self._asked(file.text)
        yield from self._names(file)
        yield from self._texts(file, self.never)
        for edition in self.key_editions:
            if edition in file.text and re.search(rf"(?<!\w){edition}(?!\w)", file.text):
                yield _leak(file, "The key edition stands here.", OURS, edition)
        if searching or not asked:
            yield from self._texts(file, self.elsewhere)
        if asked and searching:
            yield _leak(file, "A test can be searched here.", OURS, asked[0].question)
        if asked:
            yield from self._in_test(file, asked)

    def _asked(self, text: str) -> list[KeyAnswer]:
        """The answers whose question stands in a text; looked for wherever its first letter does."""
        there: set[str] = set()
        for first, length in self.ids:
            at = text.find(first)
            while at >= 0:
                there.add(text[at : at + length])
                at = text.find(first, at + 1)
        return [one for one in self.answers if one.question in there]

    def _in_test(self, file: Published, asked: list[KeyAnswer]) -> Iterator[Diagnostic]:
        yield from self._texts(file, self.in_tests)
        if "<!--" in file.text:
            yield _leak(file, "A page of a test holds a comment.", OURS, "<!--")
        for answer, how in marked(file.text, asked):
            yield _leak(file, f"Question {answer.question} gives itself away: {how}.", OURS, answer.question)

    def _texts(self, file: Published, lookout: Lookout) -> Iterator[Diagnostic]:
        for one in lookout.in_file(file):
            remedy = OURS
            if (one.case or one.question) and "key" not in one.what:
                what = "case" if one.case else "question"
                remedy = THEIRS.format(what=what, name=one.case or one.question)
            yield _leak(file, f"It says {one.what}: {_short(one.text)}", remedy, one.text)

    def _names(self, file: Published) -> Iterator[Diagnostic]:
        low = file.text.replace("-", "_")
        for (what, name), pattern in self.names.items():
            found = pattern.search(file.text) if name in low else None
            if found is not None or _is_named(file.name, name):
                message = f"It names the tested {what} `{name}`."
                yield _leak(file, message, THEIRS.format(what=what, name=name), found[0] if found else "")
        if self.options & set(_TOKEN.findall(file.name)):
            yield _leak(file, "It is named after an option of a test.", OURS, "")


def find_leaks(files: Mapping[str, bytes], rings: Sequence[KeyRing], course: Course) -> list[Diagnostic]:
    """Every place of a published folder that gives a key away; files are keyed by their address in it."""
    return leaks_in(files, Search(rings, course))


def leaks_in(files: Mapping[str, bytes], search: Search) -> list[Diagnostic]:
    """As `find_leaks`, by a search that was made ready before."""
    return [leak for name, data in sorted(files.items()) for leak in search.in_file(published(name, data))]


def _own_names(course: Course) -> set[str]:
    """Names that pages bear on purpose, and that say nothing of a tested case of the same name."""
    lessons = {lesson.file.removesuffix(".md").rpartition("/")[2] for lesson in course.file.lessons}
    tests = {test.id for test in course.file.tests}
    practice = {one.id for one in course.file.practice}
    return lessons | tests | practice | set(course.content.cards) | set(course.stations)


def _is_named(file: str, case: str) -> bool:
    """Whether a file or folder bears a case's id; a single word must be all of its name."""
    steps = [step.partition(".")[0].replace("-", "_") for step in file.split("/")]
    return case in steps or ("_" in case and any(f"_{case}_" in f"_{step}_" for step in steps))


def _address(what: str, name: str) -> re.Pattern[str]:
    """An id in an address or, where it is no single word, as a value."""
    slug = re.escape(name).replace("_", "[-_]")
    address = rf"\b{what}s?/{slug}\b"
    return re.compile(rf"{address}|[\"'=#]{slug}(?=[\"'&<\s])" if "_" in name else address)


def _leak(file: Published, message: str, remedy: str, piece: str) -> Diagnostic:
    line = file.line_of(piece)
    return Diagnostic(
        "key_published", "error", Place(f"publish/{file.name}", line, 1, line, 1), message, remedy
    )


def _short(text: str) -> str:
    return text if len(text) <= SHORT else f"{text[:SHORT]}..."
