"""Guessers who see only what is published score as chance would, neither better nor worse.

A guesser who is wrong more often than chance tells as much: never choose what they choose.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from functools import cache
from math import sqrt
from pathlib import Path
from tempfile import mkdtemp

import pytest
from bs4 import BeautifulSoup
from bs4.element import Tag

from builder.assess.papers import papers_and_keys
from builder.doors.site import build_site
from builder.model.key import KeyRing
from builder.model.plan import CourseTest
from builder.render.address import of_lesson, of_version, published
from builder.render.student import student_site
from builder.render.student_start import stem_of
from tests.demo.built import opened

SECRET = bytes(range(32))
GROUPS, VERSIONS = 6, 6
LEAST = 200
WITHIN = 2.58  # two-sided, one in a hundred
PLAN = ("session", "option", "phase", "dose", "ask_first", "stop")


@dataclass(frozen=True)
class Asked:
    """One question as its page shows it: the options by id, and the text of all that follows on the page."""

    id: str
    options: Mapping[str, str]
    titles: Mapping[str, str]
    later: str
    about: str

    @property
    def sign(self) -> tuple[str, ...]:
        """What tells it from other questions, whatever its ids and the order of its options."""
        return (self.about, *sorted(self.options.values()))


@dataclass(frozen=True)
class Published:
    """All that a guesser has, and the keys that they do not have."""

    asked: tuple[tuple[Asked, frozenset[str]], ...]
    lessons: str


Weigh = Callable[[Asked, str, str], int]


def longest(asked: Asked, option: str, _lessons: str) -> int:
    """How many letters an option has."""
    return len(asked.options[option])


def most_taught(asked: Asked, option: str, lessons: str) -> int:
    """How often the lessons say the name of an option."""
    return lessons.count(asked.titles[option])


def most_used_later(asked: Asked, option: str, _lessons: str) -> int:
    """How often the questions that follow say the name of an option."""
    return asked.later.count(asked.titles[option])


def hits(weigh: Weigh) -> float:
    """How often a guesser is right who takes what weighs most, and draws a lot between equals."""
    total = 0.0
    for asked, right in site().asked:
        weights = {one: weigh(asked, one, site().lessons) for one in asked.options}
        best = {one for one, weight in weights.items() if weight == max(weights.values())}
        total += len(best & right) / len(best)
    return total


def chance() -> tuple[float, float]:
    """How often blind lots are right, and how far that spreads."""
    shares = [len(right) / len(asked.options) for asked, right in site().asked]
    return sum(shares), sqrt(sum(one * (1 - one) for one in shares))


@cache
def site() -> Published:
    """A site whose tests ask about the demonstration's cases, balanced as a careful author would."""
    known = opened()
    assert known.course is not None
    cases = balanced({name: [one.session.answer for one in visits] for name, visits in known.judged.items()})
    tests = tuple(_test(number, cases[number::GROUPS]) for number in range(GROUPS))
    file = known.course.file.model_copy(update={"tests": tests, "practice": ()})
    course = replace(known.course, file=file, lessons=_without_cases(known.course.lessons))
    drawn = papers_and_keys(course, known.judged, SECRET)
    folder = Path(mkdtemp(prefix="caseloom-blind-"))
    build_site(student_site(course, (), tuple(one for one, _ in drawn)), folder)
    lessons = " ".join(
        _page(folder, of_lesson(stem_of(one.file))).get_text(" ").lower() for one in course.file.lessons
    )
    return Published(tuple(_every(folder, [ring for _, ring in drawn])), lessons)


def balanced(sessions: Mapping[str, Sequence[str]]) -> list[str]:
    """The cases, without some that only go on, so that no answer is right more than two times in five."""
    kept = dict(sorted(sessions.items(), key=lambda one: (set(one[1]) == {"go_on"}, len(one[1]), one[0])))
    while True:
        every = [answer for visits in kept.values() for answer in visits]
        if every.count("go_on") * 5 <= len(every) * 2:
            return sorted(kept)
        kept.popitem()


def _test(number: int, cases: Sequence[str]) -> CourseTest:
    rows = [
        {"objective": objective, "topic": topic, "count": 1}
        for topic in PLAN
        for objective in ("choose", "refer", "phase")
    ]
    given = {"id": f"blind{number}", "title": "Blind", "cases": cases, "plan": rows, "versions": VERSIONS}
    return CourseTest.model_validate({**given, "seed": f"blind {number}", "pass_mark": "75 %"})


def _without_cases(lessons: Mapping[str, str]) -> dict[str, str]:
    """The lessons without the lines that place what this site does not have."""
    return {
        stem: "\n".join(
            line
            for line in text.split("\n")
            if not line.startswith(("[case", "[figure", "[question", "[test"))
        )
        for stem, text in lessons.items()
    }


def _every(folder: Path, rings: Sequence[KeyRing]) -> Iterator[tuple[Asked, frozenset[str]]]:
    """Every question of one right answer, each once, with what is right."""
    seen: set[tuple[str, ...]] = set()
    for ring in rings:
        for key in ring.keys:
            right = {one.question: frozenset(one.right) for one in key.answers if one.kind == "one"}
            for asked in _asked(_page(folder, of_version(ring.test, key.version))):
                if asked.id in right and asked.sign not in seen:
                    seen.add(asked.sign)
                    yield asked, right[asked.id]


def _asked(page: BeautifulSoup) -> Iterator[Asked]:
    sections = page.select("section.question")
    for place, section in enumerate(sections):
        labels = {str(one["value"]): one.find_parent("label") for one in section.select("input[type=radio]")}
        found = {name: label for name, label in labels.items() if isinstance(label, Tag)}
        if found:
            yield Asked(
                id=str(section["id"]),
                options={name: _text(label) for name, label in found.items()},
                titles={name: _text(label.select_one("b")).lower() for name, label in found.items()},
                later=" ".join(one.get_text(" ").lower() for one in sections[place + 1 :]),
                about=" ".join(_text(one) for one in section.select("p, dl, legend")),
            )


def _text(tag: Tag | None) -> str:
    return " ".join(tag.get_text(" ").split()) if tag else ""


def _page(folder: Path, address: str) -> BeautifulSoup:
    return BeautifulSoup((folder / published(address)).read_text(encoding="utf-8"), "html.parser")


@pytest.mark.parametrize("weigh", [longest, most_taught, most_used_later])
def test_a_guesser_scores_as_chance_would(weigh: Weigh, capsys: pytest.CaptureFixture[str]) -> None:
    """Their hits lie within what all but one in a hundred guessers would reach, lucky or unlucky."""
    count, (expected, spread) = len(site().asked), chance()
    assert count >= LEAST
    off = (hits(weigh) - expected) / spread
    with capsys.disabled():
        told = f"{hits(weigh):.1f} of {count} right, {expected:.1f} by chance"
        print(f"\n{weigh.__name__}: {told} ({off:+.2f} deviations)")
    assert abs(off) <= WITHIN


def test_a_guesser_who_knows_something_is_noticed() -> None:
    """Whoever is told one key in four, and draws lots for the rest, does not pass for a guesser."""
    expected, spread = chance()
    known = [asked.id for asked, _ in site().asked[::4]]
    told = sum(1.0 if asked.id in known else len(right) / len(asked.options) for asked, right in site().asked)
    assert (told - expected) / spread > WITHIN
