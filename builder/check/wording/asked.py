"""Author-written questions as the wording checks see them: stem, options, and where each stands."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from builder.check.evidence import Evidence, case_file
from builder.model.case import CaseOption
from builder.model.library import Content
from builder.model.question import AuthorQuestion
from builder.model.wording import WordingBook
from builder.place import Path


@dataclass(frozen=True)
class Offered:
    """One option: its words, whether it is right, and its path in the file."""

    text: str
    right: bool
    path: Path


@dataclass(frozen=True)
class Asked:
    """One question with its file; no options where nothing is chosen, none right where a panel judges."""

    file: str
    stem: str
    options: tuple[Offered, ...]

    @property
    def right(self) -> list[Offered]:
        """The right options."""
        return [one for one in self.options if one.right]

    @property
    def wrong(self) -> list[Offered]:
        """The wrong options."""
        return [one for one in self.options if not one.right]


def spoken(evidence: Evidence) -> WordingBook | None:
    """The book of wording, where it speaks the course's language."""
    book = evidence.course.content.wording
    return book if book is not None and book.speaks(evidence.course.file.language) else None


def asked(evidence: Evidence) -> Iterator[tuple[WordingBook, Asked]]:
    """Every author-written question with the book it is held against; none in another language."""
    if (book := spoken(evidence)) is not None:
        for question in evidence.course.questions.values():
            yield book, Asked(f"questions/{question.id}.yml", question.stem, tuple(_offered(question)))


def shown_options(evidence: Evidence) -> Iterator[Asked]:
    """The options of every visit, right and wrong, as they are shown: title and chips."""
    content = evidence.course.content
    for case, index, visit, judged in evidence.visits():
        options = [
            Offered(_shown(content, option), said.right, ("visits", index, part, place))
            for part, written, judgements in (
                ("chosen", visit.chosen, judged.chosen),
                ("wrong", visit.wrong, judged.wrong),
            )
            for place, (option, said) in enumerate(zip(written, judgements, strict=True))
        ]
        yield Asked(case_file(case), "", tuple(options))


def _shown(content: Content, option: CaseOption) -> str:
    card, written = content.cards[option.card], dict(option.written)
    if card.kind == "technique":
        written["site"] = option.site
    chips = [fact.chip(written[name]) for name, fact in content.facts.written.items() if name in written]
    return " ".join((card.name, *chips))


def _offered(question: AuthorQuestion) -> Iterator[Offered]:
    if question.choices is not None:
        for place, one in enumerate(question.choices.options):
            yield Offered(one.text, one.right, (question.kind, "options", place, "text"))
    elif question.panel is not None:
        for place, voted in enumerate(question.panel.options):
            yield Offered(voted.text, right=False, path=("panel", "options", place, "text"))
