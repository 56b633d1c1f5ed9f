"""What a published folder must not say: keys, and whatever an author wrote about what is tested."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from functools import cached_property

from builder.check.leak.reading import Published, words
from builder.model.case import Case
from builder.model.key import KeyRing
from builder.model.library import Course
from builder.model.question import AuthorQuestion

LEAST_WORDS = 2


@dataclass(frozen=True)
class Withheld:
    """One text that may not be said; `case` or `question` is the tested one that it is of, if any."""

    text: str
    what: str
    case: str = ""
    question: str = ""

    @cached_property
    def wording(self) -> bytes:
        """Its words, to look for."""
        return words(self.text)

    @cached_property
    def each(self) -> frozenset[bytes]:
        """Every one of its words."""
        return frozenset(self.wording.split())


class Lookout:
    """Withheld texts, found quickly by the longest word of each."""

    def __init__(self, withheld: Iterable[Withheld], said_on_purpose: bytes) -> None:
        """Leave out what is too short to be told from chance, and what the course says on purpose."""
        self.by_word: dict[bytes, list[Withheld]] = defaultdict(list)
        self.withheld: list[Withheld] = []
        for one in dict.fromkeys(withheld):
            each = one.wording.split()
            if len(each) >= LEAST_WORDS and one.wording not in said_on_purpose:
                self.withheld.append(one)
                self.by_word[max(each, key=len)].append(one)

    def in_file(self, file: Published) -> Iterator[Withheld]:
        """Those that a file says."""
        for word in self.by_word.keys() & file.vocabulary:
            for one in self.by_word[word]:
                if one.each <= file.vocabulary and file.says(one.wording):
                    yield one


def pool_cases(course: Course) -> list[Case]:
    """Every case in the pool of a test."""
    names = dict.fromkeys(name for test in course.file.tests for name in test.cases)
    return [course.cases[name] for name in names if name in course.cases]


def pool_questions(course: Course) -> list[AuthorQuestion]:
    """Every author-written question in the pool of a test."""
    names = dict.fromkeys(name for test in course.file.tests for name in test.questions)
    return [course.questions[name] for name in names if name in course.questions]


def of_written(questions: Iterable[AuthorQuestion]) -> Iterator[Withheld]:
    """The reasons, examples and criteria of tested questions."""
    for question in questions:
        for text in question.told:
            yield Withheld(text, "what the author says of a tested question", question=question.id)


def stems_of(questions: Iterable[AuthorQuestion]) -> Iterator[Withheld]:
    """What tested questions ask, which papers show, and nothing else may."""
    for question in questions:
        yield Withheld(question.stem, "what a tested question asks", question=question.id)


def papers_texts(questions: Iterable[AuthorQuestion]) -> Iterator[str]:
    """All that papers show of tested questions beside what they ask."""
    for question in questions:
        yield from question.shown


def of_keys(rings: Sequence[KeyRing]) -> Iterator[Withheld]:
    """The reasons of every key that name their rules; shorter ones are said in practice too."""
    for ring in rings:
        for key in ring.keys:
            for answer in key.answers:
                texts = [text for text in answer.reasons.values() if "[" in text]
                yield from (Withheld(text, "the reason of a key", answer.case) for text in texts)


def of_authors(cases: Iterable[Case]) -> Iterator[Withheld]:
    """Titles, endings and the author's own words of tested cases."""
    for case in cases:
        yield Withheld(case.title, "the title of a tested case", case.id)
        for visit in case.visits:
            yield Withheld(visit.title, "the title of a tested visit", case.id)
            yield Withheld(visit.next or "", "what happened next in a tested case", case.id)
            for option in (*visit.chosen, *visit.wrong):
                yield Withheld(
                    option.because or "", "the author's word on an option of a tested case", case.id
                )


def shown_in_papers(cases: Iterable[Case]) -> Iterator[Withheld]:
    """What papers show of tested cases, and nothing else may."""
    for case in cases:
        yield Withheld(case.mechanism, "what happened in a tested case", case.id)
        for visit in case.visits:
            yield Withheld(visit.story or "", "the story of a tested visit", case.id)


def of_content(course: Course) -> Iterator[Withheld]:
    """The reasons of cards and rules; pages of a test must be free of them."""
    for card in course.content.cards.values():
        yield from (Withheld(row.why, "the reason of a card") for row in card.baseline)
    yield from (Withheld(rule.why, "the reason of a rule") for rule in course.content.rules.values())


def said_on_purpose(course: Course) -> bytes:
    """The words of everything a course publishes apart from what is tested."""
    tested = {case.id for case in pool_cases(course)}
    content = course.content
    nouns = [course.file, course.site, content.facts, content.screening, content.phases, content.references]
    nouns += [*content.cards.values(), *content.rules.values()]
    nouns += [case for case in course.cases.values() if case.id not in tested]
    texts = [noun.model_dump_json() for noun in nouns]
    texts += [*course.lessons.values(), *content.words.values()]
    texts += [one.model_dump_json() for one in course.questions.values() if one.use == "practice"]
    texts += [f"{station.title}\n{station.participant}" for station in course.stations.values()]
    return b"".join(words(text) for text in texts)


def frame_words(course: Course) -> bytes:
    """The words that stand on every page, tests included."""
    texts = [course.file.model_dump_json(), course.site.model_dump_json(), *course.content.words.values()]
    return b"".join(words(text) for text in texts)
