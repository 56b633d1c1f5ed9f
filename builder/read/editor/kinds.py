"""Every sort of file that an author writes, and what it is called to an editor."""

from __future__ import annotations

from typing import NamedTuple

from builder.model.board import BoardRules
from builder.model.card import Card
from builder.model.case import Case
from builder.model.course import CourseFile, SiteConfig
from builder.model.fact import FactBook, ScreeningBook
from builder.model.noun import Noun
from builder.model.question import AuthorQuestion
from builder.model.review import ReviewBook
from builder.model.rule import Rule
from builder.model.station import Station, StationSheet
from builder.model.tables import PhaseBook, ReferenceBook, SeverityBook
from builder.model.taught import TaughtClass
from builder.model.wording import WordingBook


class FileKind(NamedTuple):
    """A sort of file: the noun it makes, where such files lie (a pattern), and its title."""

    model: type[Noun]
    where: str
    title: str


KINDS: dict[str, FileKind] = {
    "course": FileKind(CourseFile, "course.yml", "A course"),
    "case": FileKind(Case, "cases/*.yml", "A case"),
    "question": FileKind(AuthorQuestion, "questions/*.yml", "A question that belongs to no case"),
    "station": FileKind(Station, "stations/*.yml", "A practical station"),
    "rule": FileKind(Rule, "rules/*.yml", "A rule"),
    "card": FileKind(Card, "cards/*.yml", "A card: one technique or action"),
    "board": FileKind(BoardRules, "boards/*.yml", "The rules of an approving body"),
    "reviews": FileKind(ReviewBook, "reviews.yml", "What clinicians have signed"),
    "site_config": FileKind(SiteConfig, "site_config.yml", "The look of a provider's site"),
    "class": FileKind(TaughtClass, "classes/*/class.yml", "A class: one run of the course"),
    "station_sheet": FileKind(
        StationSheet, "classes/*/stations/*.yml", "What an examiner saw of a participant"
    ),
    "facts": FileKind(FactBook, "facts.yml", "Every fact that may be recorded"),
    "screening": FileKind(ScreeningBook, "screening.yml", "The screening sets"),
    "phases": FileKind(PhaseBook, "phases.yml", "Clocks and signs of the phases"),
    "severity": FileKind(SeverityBook, "severity.yml", "Published severity tables"),
    "references": FileKind(ReferenceBook, "references.yml", "The sources"),
    "wording": FileKind(WordingBook, "wording.yml", "How questions should be worded"),
}
WORDS = "words"
