"""What the judge makes of a course, taken from the cache wherever nothing it rests on has changed."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass, replace
from types import MappingProxyType

from builder.doors.cache import Cache, digest
from builder.doors.frozen import Frozen
from builder.flow.fingerprints import Fingerprints
from builder.judge.coverage import covered, nothing_shown
from builder.judge.judge import Judge
from builder.judge.prove import holes
from builder.model.case import Case
from builder.model.judgement import Covered, Hole, VisitJudgement
from builder.model.library import Course

GROUP = 25
Judged = tuple[VisitJudgement, ...]
NOTHING: Mapping[str, Judged] = MappingProxyType({})

_VISITS = Frozen[Judged](tuple[VisitJudgement, ...])
_HOLES = Frozen[tuple[Hole, ...]](tuple[Hole, ...])
_COVERED = Frozen[tuple[Covered, ...]](tuple[Covered, ...])


@dataclass(frozen=True)
class Worker:
    """One course about to be worked out, with its judge made ready."""

    course: Course
    judge: Judge
    prints: Fingerprints
    cache: Cache

    def answered(self) -> dict[str, Judged]:
        """Every visit of every case as far as it is checked, by the case's id."""
        found = {name: self._answered(case) for name, case in self.course.cases.items()}
        self.cache.keep("answered", found)
        self.cache.keep("told", found)
        return found

    def told(self, answered: Mapping[str, Judged]) -> Told:
        """The same with all there is to tell; each case is told when somebody first asks for it."""
        return Told(self, answered)

    def probed(self, answered: Mapping[str, Judged]) -> Mapping[str, Judged]:
        """The same with what questions are made of; each case is probed when somebody first asks for it."""
        cases = self.course.cases
        return _OneByOne(answered, lambda name: self.judge.probed(cases[name], answered[name]))

    def tell(self, name: str, answered: Judged) -> Judged:
        """All there is to tell of one case."""
        case = self.course.cases[name]
        return self._known(f"told/{name}", self._key(case), lambda: self._tell(case, answered))

    def _tell(self, case: Case, answered: Judged) -> Judged:
        return self.judge.told(case, self.judge.probed(case, answered))

    def holes(self) -> tuple[Hole, ...]:
        """The proof of the whole rule set."""
        known = _HOLES.thawed(self.cache.get("proof/holes", self.prints.content))
        if known is None:
            known = tuple(holes(self.course.content, self.judge.space))
            self.cache.put("proof/holes", self.prints.content, _HOLES.frozen(known))
        return known

    def covered(self, answered: Mapping[str, Judged]) -> tuple[Covered, ...]:
        """What the visits show of each rule; a group of cases is asked for what those before do not show."""
        names, found = list(self.course.cases), nothing_shown(self.course.content.rules)
        for number, start in enumerate(range(0, len(names), GROUP)):
            found = self._group(number, names[start : start + GROUP], answered, found)
        return found

    def _answered(self, case: Case) -> Judged:
        return self._known(f"answered/{case.id}", self._key(case), lambda: self.judge.answered(case))

    def _known(self, slot: str, key: str, work: Callable[[], Judged]) -> Judged:
        known = _VISITS.thawed(self.cache.get(slot, key))
        if known is None:
            known = work()
            if self.cache.keeps:
                self.cache.put(slot, key, _VISITS.frozen(known))
        return known

    def _group(
        self, number: int, names: list[str], answered: Mapping[str, Judged], before: tuple[Covered, ...]
    ) -> tuple[Covered, ...]:
        if all(one.decides and one.near_miss for one in before):
            return before
        cases = {name: self.course.cases[name] for name in names}
        key = digest(*(self._key(case) for case in cases.values()), _COVERED.frozen(before))
        known = _COVERED.thawed(self.cache.get(f"covered/{number}", key))
        if known is None:
            known = covered(self.judge, cases, answered, before)
            self.cache.put(f"covered/{number}", key, _COVERED.frozen(known))
        return known

    def _key(self, case: Case) -> str:
        return digest(self.prints.content, self.prints.cases[case.id])


class _OneByOne(Mapping[str, Judged]):
    """Cases by id, worked out further one by one: many times the work, and seldom are all needed."""

    def __init__(self, answered: Mapping[str, Judged], work: Callable[[str], Judged]) -> None:
        self._answered, self._work = answered, work
        self._found: dict[str, Judged] = {}

    def __getitem__(self, name: str) -> Judged:
        if name not in self._found:
            self._found[name] = self._work(name)
        return self._found[name]

    def __iter__(self) -> Iterator[str]:
        return iter(self._answered)

    def __len__(self) -> int:
        return len(self._answered)


class Told(_OneByOne):
    """Cases by id with all there is to tell of them, each told when somebody first asks for it."""

    def __init__(
        self, worker: Worker, answered: Mapping[str, Judged], found: Mapping[str, Judged] = NOTHING
    ) -> None:
        """`found`: what was told before."""
        super().__init__(answered, lambda name: worker.tell(name, answered[name]))
        self._worker = worker
        self._found.update(found)

    def part(self, names: Iterable[str]) -> Part:
        """Some of the cases, for another process to tell."""
        course, every = self._worker.course, list(names)
        return Part(
            replace(course, cases={name: course.cases[name] for name in every}, places={}),
            self._worker.prints,
            self._worker.cache,
            {name: self._answered[name] for name in every},
            {name: self._found[name] for name in every if name in self._found},
        )


@dataclass(frozen=True)
class Part:
    """Some cases of a course with what is known of them, in plain values that can go to another process."""

    course: Course
    prints: Fingerprints
    cache: Cache
    answered: dict[str, Judged]
    found: dict[str, Judged]

    def told(self) -> Told:
        """The same cases, by a judge of their own."""
        worker = Worker(self.course, Judge(self.course.content), self.prints, self.cache)
        return Told(worker, self.answered, self.found)
