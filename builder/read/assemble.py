"""Puts a course together from the files that hold; a case that leans on a faulty card is left out too."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import TypeVar

from builder.diagnostic import Diagnostic
from builder.model.board import BoardRules
from builder.model.card import Card
from builder.model.case import Case
from builder.model.course import CourseFile, SiteConfig
from builder.model.fact import FactBook, ScreeningBook
from builder.model.library import Content, Course
from builder.model.question import AuthorQuestion
from builder.model.review import ReviewBook
from builder.model.reviewable import signed_content
from builder.model.rule import Rule
from builder.model.station import Station
from builder.model.tables import PhaseBook, ReferenceBook, SeverityBook
from builder.model.wording import WordingBook
from builder.place import Places
from builder.read.shelf import Shelf

K = TypeVar("K", AuthorQuestion, Card, Case, Rule, Station, BoardRules)

JUDGED_BY = (FactBook, PhaseBook, SeverityBook)


def assemble(
    shelf: Shelf, words: dict[str, str] | None, found: Iterable[Diagnostic], places: dict[str, Places]
) -> Course | None:
    """The course, or None where a file it cannot do without makes no noun, or nothing can be judged by."""
    faulty = frozenset(one.place.file for one in found if one.level == "error")
    if any(one.file in faulty for book in JUDGED_BY for one in shelf.of(book)):
        return None
    file, site, content = shelf.noun(CourseFile), shelf.noun(SiteConfig), _content(shelf, words, faulty)
    if file is None or site is None or content is None:
        return None
    cases = {
        name: case for name, case in _sound(shelf, Case, faulty).items() if _has_cards(case, content.cards)
    }
    stations = _sound(shelf, Station, faulty)
    lessons = {stem: str(lesson.value) for stem, lesson in shelf.lessons.items()}
    questions = _sound(shelf, AuthorQuestion, faulty)
    return Course(file, cases, stations, lessons, site, content, places, shelf.noun(ReviewBook), questions)


def _content(shelf: Shelf, words: dict[str, str] | None, faulty: frozenset[str]) -> Content | None:
    facts, screening = shelf.noun(FactBook), shelf.noun(ScreeningBook)
    phases, severity, references = shelf.noun(PhaseBook), shelf.noun(SeverityBook), shelf.noun(ReferenceBook)
    if not (facts and screening and phases and severity and references and words is not None):
        return None
    rules = _sound(shelf, Rule, faulty)
    files = (one for one in shelf.of(Rule) if one.file not in faulty and not one.file.startswith("content/"))
    own = frozenset(one.id for one in files)
    cards, boards = _sound(shelf, Card, faulty), _sound(shelf, BoardRules, faulty)
    wording = shelf.noun(WordingBook)
    content = Content(
        facts, screening, phases, severity, references, cards, rules, boards, words, own, wording
    )
    return signed_content(content, shelf.noun(ReviewBook))


def _sound(shelf: Shelf, model: type[K], faulty: frozenset[str]) -> dict[str, K]:
    nouns = (
        entry.noun for entry in shelf.entries if entry.model is model and entry.written.file not in faulty
    )
    return {noun.id: noun for noun in nouns if isinstance(noun, model)}


def _has_cards(case: Case, cards: Mapping[str, Card]) -> bool:
    return all(option.card in cards for visit in case.visits for option in (*visit.chosen, *visit.wrong))
