"""The two sites of a course, planned anew only where something has changed since they were last built."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from pathlib import Path
from types import MappingProxyType

from builder.assess.placed import placed_questions
from builder.assess.practice import practice_cases, room_cases
from builder.assess.spaced import spaced_sets
from builder.disk import taken_over
from builder.doors.cache import Cache, digest
from builder.doors.frozen import Frozen
from builder.doors.site.keys import page_keys
from builder.doors.tool import tool_fingerprint
from builder.flow.fingerprints import Fingerprints
from builder.model.judgement import VisitJudgement
from builder.model.key import KeyRing
from builder.model.lesson import lesson_tags
from builder.model.library import Course
from builder.model.paper import PublishedTest
from builder.model.practice import PracticeCase
from builder.model.site import Finished, SitePage, SitePlan
from builder.render.address import of_case, published
from builder.render.instructor import instructor_site
from builder.render.instructor_address import of_room
from builder.render.student import student_site


@dataclass(frozen=True)
class Laid:
    """The page of a case as it was laid out, and the practice case of it; visits may be left out."""

    page: SitePage
    case: PracticeCase | None = None


NONE_LAID: Mapping[str, Laid] = MappingProxyType({})


@dataclass(frozen=True)
class Standing:
    """One page as it was last built: its key, and what others need to know of it without laying it out."""

    key: str
    finished: Finished
    laid: Laid


@dataclass(frozen=True)
class Record:
    """One site as it was last built; `searched` is all that its files were found not to say."""

    pages: dict[str, Standing] = field(default_factory=dict)
    searched: str = ""

    @property
    def laid(self) -> dict[str, Laid]:
        """Every page as it was laid out."""
        return {at: one.laid for at, one in self.pages.items()}


_RECORD = Frozen[Record](Record)


def read_record(cache: Cache, side: str) -> Record:
    """What is known of the last build of a site."""
    return _RECORD.thawed(cache.get(f"site/{side}", tool_fingerprint())) or Record()


def write_record(cache: Cache, side: str, record: Record) -> None:
    """Keep what is known of a site that was built."""
    cache.put(f"site/{side}", tool_fingerprint(), _RECORD.frozen(record))


@dataclass(frozen=True)
class Tests:
    """The tests of a course as they are published, with their keys."""

    published: tuple[PublishedTest, ...]
    rings: tuple[KeyRing, ...]


@dataclass(frozen=True)
class Planner:
    """Plans both sites of one opened course."""

    course: Course
    judged: Mapping[str, tuple[VisitJudgement, ...]]
    prints: Fingerprints
    tests: Tests

    def student(self, known: Mapping[str, Laid]) -> tuple[SitePlan, dict[str, PracticeCase]]:
        """The student site, and its practice cases by their page."""
        cases = {of_case(name): name for name in self.course.cases}
        drawn = self._drawn()
        heads = {cases[at]: one.case for at, one in known.items() if one.case and cases[at] not in drawn}
        practice = practice_cases(self.course, self.judged, heads)
        pages = {cases[at]: one.page for at, one in known.items() if one.case is not None}
        placed, spaced = placed_questions(self.course), spaced_sets(self.course)
        plan = student_site(self.course, practice, self.tests.published, pages, placed, spaced)
        return self._signed("student", plan), {of_case(one.id): one for one in practice}

    def _drawn(self) -> set[str]:
        """The cases that a lesson draws: it needs their visits, even where their own page stands."""
        tags = (tag for text in self.course.lessons.values() for tag in lesson_tags(text))
        return {tag.name for tag in tags if tag.kind == "figure"}

    def instructor(self, known: Mapping[str, Laid]) -> SitePlan:
        """The instructor site."""
        pages = {at: one.page for at, one in known.items()}
        published, rings = self.tests.published, self.tests.rings
        shown = {name for name in self.course.cases if of_room(name) in pages}
        rooms = room_cases(self.course, self.judged, shown)
        plan = instructor_site(self.course, self.judged, published, rings, pages, rooms)
        return self._signed("instructor", plan)

    def unchanged(self, side: str, laid: Mapping[str, Laid]) -> dict[str, Laid]:
        """The pages of cases that would be laid out as they were."""
        origins = self._origins(side)
        return {at: one for at, one in laid.items() if one.page.made_from == origins.get(at, " ")}

    def missing(self, student: Record, instructor: Record) -> Iterator[str]:
        """The cases of which some page does not stand as it was last built."""
        shown, kept = self.unchanged("student", student.laid), self.unchanged("instructor", instructor.laid)
        practised = {name for one in self.course.file.practice for name in one.cases}
        tested = {name for one in self.course.file.tests for name in one.cases}
        for name in self.course.cases:
            at_hand = of_case(name) in kept and (name in tested or of_room(name) in kept)
            if not at_hand or (name in practised and of_case(name) not in shown):
                yield name

    def _signed(self, side: str, plan: SitePlan) -> SitePlan:
        origins = self._origins(side)
        pages = (page.model_copy(update={"made_from": origins.get(page.address, "")}) for page in plan.pages)
        return plan.model_copy(update={"pages": tuple(pages)})

    def _origins(self, side: str) -> dict[str, str]:
        """For the page of every case, the fingerprint of all it is made from."""
        frame = self.prints.frame
        prints = {name: digest(side, frame, case) for name, case in self.prints.cases.items()}
        return {at(name): one for name, one in prints.items() for at in (of_case, of_room)}


@dataclass(frozen=True)
class Site:
    """One site about to be built: its plan, and the pages that stand already in the folder to fill."""

    plan: SitePlan
    keys: dict[str, str]
    ready: dict[str, Finished]
    practice: Mapping[str, PracticeCase]

    @property
    def left(self) -> int:
        """How many pages are still to be made."""
        return len(self.plan.pages) - len(self.ready)

    def record(self, finished: tuple[Finished, ...], searched: str) -> Record:
        """What to keep of it once it is built."""
        pages = {page.address: page for page in self.plan.pages}
        return Record({one.address: self._standing(one, pages[one.address]) for one in finished}, searched)

    def _standing(self, finished: Finished, page: SitePage) -> Standing:
        case = self.practice.get(page.address)
        laid = Laid(
            page.model_copy(update={"body": ""}), case.model_copy(update={"visits": ()}) if case else None
        )
        return Standing(self.keys[page.address], finished, laid)


def student_to_build(
    planner: Planner, record: Record, old: Path, draft: Path, fresh: Mapping[str, Laid] = NONE_LAID
) -> Site:
    """The student site with what stands taken over from `old` into `draft`, and all else laid out.

    `fresh`: what has been laid out just now.
    """
    known = {**planner.unchanged("student", record.laid), **fresh}
    plan, practice = planner.student(known)
    keys, ready = _ready(plan, record, old, draft)
    if lost := known.keys() - ready.keys() - fresh.keys():
        plan, practice = planner.student({at: one for at, one in known.items() if at not in lost})
    return Site(_lightened(plan, ready), keys, ready, practice)


def instructor_to_build(
    planner: Planner, record: Record, old: Path, draft: Path, fresh: Mapping[str, Laid] = NONE_LAID
) -> Site:
    """The same of the instructor site."""
    known = {**planner.unchanged("instructor", record.laid), **fresh}
    plan = planner.instructor(known)
    keys, ready = _ready(plan, record, old, draft)
    if lost := known.keys() - ready.keys() - fresh.keys():
        plan = planner.instructor({at: one for at, one in known.items() if at not in lost})
    return Site(_lightened(plan, ready), keys, ready, {})


def _ready(
    plan: SitePlan, record: Record, old: Path, draft: Path
) -> tuple[dict[str, str], dict[str, Finished]]:
    """The key of every page, and those that stand in `old` just as they would be built."""
    keys = page_keys(plan)
    same = [at for at, key in keys.items() if at in record.pages and record.pages[at].key == key]
    return keys, {at: record.pages[at].finished for at in same if _taken(record.pages[at], old, draft)}


def _taken(standing: Standing, old: Path, draft: Path) -> bool:
    """Whether a page could be taken over whole; the draft itself is looked at, so no other can slip in."""
    name = published(standing.finished.address)
    path = draft / name
    if taken_over(old / name, path) and digest(path.read_bytes()) == standing.finished.digest:
        return True
    path.unlink(missing_ok=True)
    return False


def _lightened(plan: SitePlan, ready: Mapping[str, Finished]) -> SitePlan:
    """The plan without the insides of pages that stand already."""
    pages = (page.model_copy(update={"body": ""}) if page.address in ready else page for page in plan.pages)
    return plan.model_copy(update={"pages": tuple(pages)})
