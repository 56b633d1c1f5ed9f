"""Key material in a finished student site: if anything is found, nothing may be published."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping, Sequence

from builder.check.leak.marks import marked
from builder.check.leak.reading import Published, published
from builder.check.leak.withheld import (
    Lookout,
    frame_words,
    of_authors,
    of_content,
    of_keys,
    pool_cases,
    said_on_purpose,
    shown_in_papers,
)
from builder.diagnostic import Diagnostic
from builder.model.key import KeyAnswer, KeyRing
from builder.model.library import Course
from builder.place import Place

SHORT = 60
_TOKEN = re.compile(r"[a-z0-9]+")
OURS = "This is a fault of the program, not of the course: publish nothing, and report it."
THEIRS = "Take the case `{case}` out of the pool of the test, or out of what shows it, and build again."


class Search:
    """Everything withheld by one course, ready to be looked for in file after file."""

    def __init__(self, rings: Sequence[KeyRing], course: Course) -> None:
        cases = pool_cases(course)
        aside = said_on_purpose(course)
        paper = b"".join(one.wording for one in shown_in_papers(cases))
        self.never = Lookout([*of_keys(rings), *of_authors(cases)], aside + paper)
        self.elsewhere = Lookout(shown_in_papers(cases), aside)
        self.in_tests = Lookout(of_content(course), frame_words(course) + paper)
        self.key_editions = [ring.key_edition for ring in rings]
        self.answers = [answer for ring in rings for key in ring.keys for answer in key.answers]
        self.options = {option for answer in self.answers for option in answer.options}
        self.names = {case.id: _address(case.id) for case in cases if case.id not in _own_names(course)}

    def says(self) -> str:
        """All that is looked for, as one text: where it is the same, the same file is as clean as before."""
        looked = (self.never, self.elsewhere, self.in_tests)
        texts = [[(one.text, one.what, one.case) for one in lookout.withheld] for lookout in looked]
        answers = [one.model_dump_json() for one in self.answers]
        return repr([texts, self.key_editions, answers, sorted(self.names)])

    def in_file(self, file: Published) -> Iterator[Diagnostic]:
        """Every leak of one file."""
        searching = "search" in file.name.lower()
        asked = [one for one in self.answers if one.question in file.text]
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

    def _in_test(self, file: Published, asked: list[KeyAnswer]) -> Iterator[Diagnostic]:
        yield from self._texts(file, self.in_tests)
        if "<!--" in file.text:
            yield _leak(file, "A page of a test holds a comment.", OURS, "<!--")
        for answer, how in marked(file.text, asked):
            yield _leak(file, f"Question {answer.question} gives itself away: {how}.", OURS, answer.question)

    def _texts(self, file: Published, lookout: Lookout) -> Iterator[Diagnostic]:
        for one in lookout.in_file(file):
            remedy = THEIRS.format(case=one.case) if one.case and "key" not in one.what else OURS
            yield _leak(file, f"It says {one.what}: {_short(one.text)}", remedy, one.text)

    def _names(self, file: Published) -> Iterator[Diagnostic]:
        for case, pattern in self.names.items():
            named = case in file.text or case.replace("_", "-") in file.text
            found = pattern.search(file.text) if named else None
            if found is not None or _is_named(file.name, case):
                message = f"It names the tested case `{case}`."
                yield _leak(file, message, THEIRS.format(case=case), found[0] if found else "")
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


def _address(case: str) -> re.Pattern[str]:
    """A case's id in an address or, where it is no single word, as a value."""
    slug = re.escape(case).replace("_", "[-_]")
    address = rf"\bcases?/{slug}\b"
    return re.compile(rf"{address}|[\"'=#]{slug}(?=[\"'&<\s])" if "_" in case else address)


def _leak(file: Published, message: str, remedy: str, piece: str) -> Diagnostic:
    line = file.line_of(piece)
    return Diagnostic(
        "key_published", "error", Place(f"publish/{file.name}", line, 1, line, 1), message, remedy
    )


def _short(text: str) -> str:
    return text if len(text) <= SHORT else f"{text[:SHORT]}..."
