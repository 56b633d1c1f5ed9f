"""Building a course: papers and keys drawn apart, both sites built, no key given away."""

from __future__ import annotations

import secrets
import shutil
from collections.abc import Mapping
from collections.abc import Set as AbstractSet
from dataclasses import dataclass
from pathlib import Path

from builder.assess.papers import papers_and_keys
from builder.check.leaks import Search, leaks_in
from builder.diagnostic import Diagnostic
from builder.disk import read_ends, swapped_in, write_text, write_tree
from builder.doors.cache import Cache, NoCache, digest
from builder.doors.site import build_site
from builder.fault import Fault
from builder.flow.after import write_calendars
from builder.flow.crew import Crew, helpers
from builder.flow.fingerprints import fingerprints
from builder.flow.handouts import HANDOUTS, handouts_of_tests
from builder.flow.opened import Opened
from builder.flow.shares import laid_out
from builder.flow.sides import (
    Planner,
    Site,
    Tests,
    instructor_to_build,
    read_record,
    student_to_build,
    write_record,
)
from builder.model.film import ENDINGS
from builder.model.key import KeyRing
from builder.model.paper import PublishedTest
from builder.model.site import Finished, SitePlan
from builder.render.address import published

SECRET = Path("private") / "draw_secret"
FILM_ENDS = 256_000  # bytes at either end of a film
MANY = 150  # fewer files are searched sooner than handed to another process
PARTS = 8  # of the files, to be searched side by side
ALONE = 40  # so few pages are made sooner than another process is started


@dataclass(frozen=True)
class Built:
    """What a build wrote."""

    publish: Path
    instructor: Path
    editions: dict[str, str]
    pages: int

    def lines(self) -> list[str]:
        """What was written, for a terminal."""
        tests = ", ".join(f"{test} (edition {edition})" for test, edition in self.editions.items()) or "none"
        return [
            f"Built {self.pages} pages; tests: {tests}.",
            f"  students    {self.publish / 'index.html'}",
            f"  instructor  {self.instructor / 'index.html'}",
        ]


class KeyInPublished(Fault):
    """The finished student site held key material, so nothing of it was kept."""

    def __init__(self, leaks: list[Diagnostic]) -> None:
        """Name every place where it was found."""
        named = "\n".join(f"  {leak.place.file}: {leak.message} {leak.remedy}" for leak in leaks)
        super().__init__(f"Nothing was published: {len(leaks)} places give a key away.", f"\n{named}")
        self.leaks = leaks


def build(opened: Opened, folder: Path, out: Path, cache: Cache | None = None) -> Built:
    """Write `out/publish` and `out/private`; both stand whole at the end, or the ones before stay.

    With a cache the same bytes come out, sooner where pages stand already as they would be built.
    """
    if opened.course is None or not opened.sound:
        raise Fault("The course has errors to fix.", "Run check, mend them, and build again.")
    course, kept = opened.course, cache or NoCache()
    drawn = papers_and_keys(course, opened.judged, read_secret(folder))
    tests = Tests(tuple(one for one, _ in drawn), tuple(ring for _, ring in drawn))
    planner = Planner(course, opened.judged, fingerprints(course), tests)
    targets = out / "publish", out / "private" / "instructor"
    before = read_record(kept, "student"), read_record(kept, "instructor")
    search = Search(tests.rings, course)
    looked = digest(search.says())
    with Crew(helpers()) as crew, swapped_in(targets[0]) as draft, swapped_in(targets[1]) as private_draft:
        fresh = laid_out(crew, planner, *before)
        student = student_to_build(planner, before[0], targets[0], draft, fresh.student)
        instructor = instructor_to_build(planner, before[1], targets[1], private_draft, fresh.instructor)
        copy_media(folder, draft, student.plan.media)
        finished = _pressed(crew, (student, draft), (instructor, private_draft))
        clean = student.ready if before[0].searched == looked else {}
        refuse_keys(draft, search, {published(at) for at in clean}, crew)
    write_handouts(out / "private", handouts_of_tests(course, tests.published), search)
    write_keys(out / "private", tests.published, tests.rings)
    write_calendars(course, folder, out / "private")
    write_record(kept, "student", student.record(finished[0], looked))
    write_record(kept, "instructor", instructor.record(finished[1], looked))
    editions = {one.test: one.edition for one in tests.published}
    return Built(targets[0], targets[1], editions, len(student.plan.pages) + len(instructor.plan.pages))


def copy_media(folder: Path, draft: Path, names: tuple[str, ...]) -> None:
    """Put the files that pages show beside them."""
    for name in names:
        (draft / name).parent.mkdir(parents=True, exist_ok=True)
        shutil.copyfile(folder / name, draft / name)


def _pressed(crew: Crew, *sites: tuple[Site, Path]) -> list[tuple[Finished, ...]]:
    """Every site built into its folder; side by side where that saves time."""
    works = [(site.plan, draft, site.ready) for site, draft in sites]
    if sum(site.left for site, _ in sites) < ALONE:
        return [_press(work) for work in works]
    return crew.done(_press, works)


def _press(work: tuple[SitePlan, Path, Mapping[str, Finished]]) -> tuple[Finished, ...]:
    return build_site(*work)


def refuse_keys(
    site: Path, search: Search, clean: AbstractSet[str] = frozenset(), crew: Crew | None = None
) -> None:
    """Stop a build whose student side holds anything of a key; files known to be clean are passed over.

    The words of a film stand on its page; of the film itself both ends are searched, where containers keep
    titles and notes.
    """
    every = sorted(path.relative_to(site).as_posix() for path in site.rglob("*") if path.is_file())
    names = [name for name in every if name not in clean]
    parts = PARTS if len(names) >= MANY else 1
    works = [(site, names[part::parts], search) for part in range(parts)]
    found = (crew or Crew(0)).done(_found, works)
    if leaks := sorted((leak for some in found for leak in some), key=lambda one: one.place.file):
        raise KeyInPublished(leaks)


def _found(work: tuple[Path, list[str], Search]) -> list[Diagnostic]:
    site, names, search = work
    return leaks_in({name: _searched(site / name) for name in names}, search)


def refuse_in(files: Mapping[str, bytes], search: Search) -> None:
    """Stop where any of these files, by address, holds anything of a key."""
    if leaks := leaks_in(files, search):
        raise KeyInPublished(leaks)


def write_handouts(private: Path, files: Mapping[str, str], search: Search) -> None:
    """Keep the single files of every version beside the instructor site, if none gives a key away."""
    refuse_in({name: text.encode() for name, text in files.items()}, search)
    with swapped_in(private / HANDOUTS) as draft:
        write_tree(draft, files)


def _searched(path: Path) -> bytes:
    return read_ends(path, FILM_ENDS) if path.suffix.lower() in ENDINGS else path.read_bytes()


def write_keys(private: Path, published: tuple[PublishedTest, ...], rings: tuple[KeyRing, ...]) -> None:
    """Keep the papers and keys of this edition on the private side."""
    for test in published:
        write_text(
            private / "papers" / f"{test.test}-{test.edition}.json", test.model_dump_json(indent=1) + "\n"
        )
    for ring in rings:
        write_text(
            private / "keys" / f"{ring.test}-{ring.edition}.json", ring.model_dump_json(indent=1) + "\n"
        )


def read_secret(folder: Path) -> bytes:
    """The private secret of a course's versions; made once where there is none."""
    path = folder / SECRET
    if not path.exists():
        write_text(path, secrets.token_hex(32) + "\n")
    try:
        return bytes.fromhex(path.read_text(encoding="utf-8").strip())
    except ValueError:
        raise Fault(
            f"{SECRET.as_posix()} is damaged.", "Restore it from your back-up: versions depend on it."
        ) from None
