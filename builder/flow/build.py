"""Building a course: papers and keys drawn apart, both sites built, no key given away."""

from __future__ import annotations

import secrets
from concurrent.futures import ProcessPoolExecutor
from dataclasses import dataclass
from multiprocessing import get_context
from pathlib import Path

from builder.assess.papers import papers_and_keys
from builder.assess.practice import practice_cases
from builder.check.leaks import find_leaks
from builder.diagnostic import Diagnostic
from builder.disk import swapped_in, write_text
from builder.doors.site import build_site
from builder.fault import Fault
from builder.flow.opened import Opened
from builder.model.key import KeyRing
from builder.model.library import Course
from builder.model.paper import PublishedTest
from builder.render.instructor import instructor_site
from builder.render.student import student_site

SECRET = Path("private") / "draw_secret"


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


def build(opened: Opened, folder: Path, out: Path) -> Built:
    """Write `out/publish` and `out/private`; both stand whole at the end, or the ones before stay."""
    if opened.course is None or not opened.sound:
        raise Fault("The course has errors to fix.", "Run check, mend them, and build again.")
    course = opened.course
    drawn = papers_and_keys(course, opened.judged, read_secret(folder))
    published, rings = tuple(one for one, _ in drawn), tuple(ring for _, ring in drawn)
    student = student_site(course, practice_cases(course, opened.judged), published)
    instructor = instructor_site(course, opened.judged, published, rings)
    targets = out / "publish", out / "private" / "instructor"
    with swapped_in(targets[0]) as draft, swapped_in(targets[1]) as private_draft:
        with ProcessPoolExecutor(2, mp_context=get_context("spawn")) as pool:
            for done in [
                pool.submit(build_site, student, draft),
                pool.submit(build_site, instructor, private_draft),
            ]:
                done.result()
        refuse_keys(draft, rings, course)
    write_keys(out / "private", published, rings)
    editions = {one.test: one.edition for one in published}
    return Built(targets[0], targets[1], editions, len(student.pages) + len(instructor.pages))


def refuse_keys(site: Path, rings: tuple[KeyRing, ...], course: Course) -> None:
    """Stop a build whose student side holds anything of a key."""
    files = {
        path.relative_to(site).as_posix(): path.read_bytes()
        for path in sorted(site.rglob("*"))
        if path.is_file()
    }
    if leaks := find_leaks(files, rings, course):
        raise KeyInPublished(leaks)


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
