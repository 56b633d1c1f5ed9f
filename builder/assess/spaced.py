"""What to come back to after the course: drawn from what is practised, never from what is tested."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence

from builder.assess.draw import Draw
from builder.model.after import INTERVALS, SpacedSet
from builder.model.library import Course

METHOD = "spaced_draw_1"
CASES, QUESTIONS = 3, 2  # own default: about a quarter of an hour


def spaced_sets(course: Course) -> tuple[SpacedSet, ...]:
    """A set for each interval, by the method `spaced_draw_1`; empty where nothing is practised.

    The pool stands in the order that the draw gives for the seed `spaced_draw_1|<course id>|<sort>`. Each set
    takes from those left what adds most objectives to the set, the first of equals; a pool that is used
    up begins again, without what the set has already.
    """
    cases = _Pool(course.file.id, "cases", _practised(course))
    questions = _Pool(course.file.id, "questions", _asked(course))
    if not cases.of and not questions.of:
        return ()
    return tuple(SpacedSet(one, cases.take(CASES), questions.take(QUESTIONS)) for one in INTERVALS)


def _practised(course: Course) -> dict[str, frozenset[str]]:
    """The practice cases with their objectives; none that is in a test."""
    tested = {name for test in course.file.tests for name in test.cases}
    named = dict.fromkeys(name for one in course.file.practice for name in one.cases)
    return {
        name: frozenset(course.cases[name].objectives)
        for name in named
        if name in course.cases and name not in tested
    }


def _asked(course: Course) -> dict[str, frozenset[str]]:
    """The practice questions with their objective; none that is kept for a test."""
    tested = {name for test in course.file.tests for name in test.questions}
    return {
        name: frozenset({one.objective})
        for name, one in sorted(course.questions.items())
        if one.use == "practice" and name not in tested
    }


class _Pool:
    """Things to take from, in a drawn order."""

    def __init__(self, course: str, sort: str, of: Mapping[str, frozenset[str]]) -> None:
        self.of = of
        self._order = Draw(f"{METHOD}|{course}|{sort}").shuffled(list(of))
        self._left: list[str] = []

    def take(self, most: int) -> tuple[str, ...]:
        """So many of them, each once, or as many as there are."""
        taken: list[str] = []
        while len(taken) < min(most, len(self.of)):
            here = [name for name in self._left if name not in taken]
            if not here:
                self._left, here = list(self._order), [name for name in self._order if name not in taken]
            best = self._best(here, taken)
            taken.append(best)
            self._left.remove(best)
        return tuple(taken)

    def _best(self, here: Sequence[str], taken: Iterable[str]) -> str:
        seen = {objective for name in taken for objective in self.of[name]}
        return max(here, key=lambda name: len(self.of[name] - seen))
