"""The whole of what a course rests on, once read: content and course together."""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass, field
from functools import cached_property

from builder.model.board import BoardRules
from builder.model.card import Card
from builder.model.case import Case
from builder.model.condition import atoms
from builder.model.course import CourseFile, SiteConfig
from builder.model.fact import FactBook, ScreeningBook
from builder.model.film import Film
from builder.model.question import AuthorQuestion
from builder.model.review import ReviewBook
from builder.model.rule import Rule
from builder.model.station import Station
from builder.model.tables import PhaseBook, ReferenceBook, SeverityBook
from builder.model.wording import WordingBook
from builder.place import Places


@dataclass(frozen=True)
class Content:
    """The clinical content: shipped, with a course's own rules and cards added; keyed by id."""

    facts: FactBook
    screening: ScreeningBook
    phases: PhaseBook
    severity: SeverityBook
    references: ReferenceBook
    cards: dict[str, Card]
    rules: dict[str, Rule]
    boards: dict[str, BoardRules]
    words: dict[str, str]
    own_rules: frozenset[str] = frozenset()
    wording: WordingBook | None = None

    @cached_property
    def about(self) -> dict[str, tuple[Rule, ...]]:
        """The rules about options that address each card, by its id."""
        some = [rule for rule in self.rules.values() if rule.options]
        return {
            name: tuple(rule for rule in some if any(one.addresses(card) for one in rule.options))
            for name, card in self.cards.items()
        }

    @cached_property
    def of_session(self) -> tuple[Rule, ...]:
        """The rules that may stop a session or make it ask: those that refer, and those of consent."""
        facts = self.facts.facts
        consents = {name for name, fact in facts.items() if fact.group == "consent"}
        return tuple(
            rule
            for rule in self.rules.values()
            if rule.session or any(atom.name in consents for atom in atoms(rule.when))
        )


@dataclass(frozen=True)
class Course:
    """One course as its files say it; `places` is keyed by relative file name, `lessons` by file stem."""

    file: CourseFile
    cases: dict[str, Case]
    stations: dict[str, Station]
    lessons: dict[str, str]
    site: SiteConfig
    content: Content
    places: dict[str, Places] = field(default_factory=dict)
    reviews: ReviewBook | None = None
    questions: dict[str, AuthorQuestion] = field(default_factory=dict)
    media: frozenset[str] = frozenset()
    films: dict[str, Film] = field(default_factory=dict)

    @cached_property
    def times_chosen(self) -> Counter[str]:
        """How many visits that go on choose each card, by its id."""
        visits = (visit for case in self.cases.values() for visit in case.visits)
        chosen = ({option.card for option in visit.chosen} for visit in visits)
        return Counter(name for names in chosen if not names & self._ending for name in names)

    @cached_property
    def _ending(self) -> frozenset[str]:
        """The cards by which a session is not gone on with."""
        cards = self.content.cards.values()
        return frozenset(card.id for card in cards if set(card.serves) <= {"refer", "ask"})
