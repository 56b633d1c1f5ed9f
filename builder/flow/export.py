"""Taking a test, a case or the student site out of the tool, as files that stand by themselves."""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path

from builder.assess.papers import papers_and_keys
from builder.check.leaks import Search
from builder.disk import swapped_in, write_text
from builder.doors.site import leave_site
from builder.fault import Fault
from builder.flow.build import copy_media, read_secret, refuse_in, refuse_keys
from builder.flow.fingerprints import fingerprints
from builder.flow.handouts import HANDOUTS, handout_of_case, handouts_of_tests
from builder.flow.opened import Opened
from builder.flow.sides import Planner, Tests
from builder.model.key import KeyRing
from builder.model.library import Course
from builder.model.paper import PublishedTest

SOURCE = "site_source"
MEND = "Run check, mend them, and try again."


def export_tests(
    opened: Opened, folder: Path, out: Path, test: str | None, version: str | None
) -> list[Path]:
    """Write each version of each test as one file, or those of `test`, or its `version` alone."""
    course, tests, rings = _drawn(opened, folder)
    chosen = [one for one in tests if test in (None, one.test)]
    if not chosen:
        named = ", ".join(f"`{one.test}`" for one in tests) or "none"
        raise Fault(f"The course has no test `{test}`.", f"It has: {named}.")
    files = handouts_of_tests(course, chosen, version and version.upper())
    if not files:
        raise Fault(f"There is no version `{version}`.", "Name one that the test has, such as A.")
    return _written(out, files, Search(rings, course))


def export_case(opened: Opened, folder: Path, out: Path, name: str | None) -> list[Path]:
    """Write one practice case as one file."""
    course, _, rings = _drawn(opened, folder)
    if name is None:
        raise Fault("No case is named.", "Name one of a practice set.")
    return _written(out, handout_of_case(opened, name), Search(rings, course))


def export_site(opened: Opened, folder: Path, out: Path, name: str | None) -> list[Path]:
    """Write the student site as a folder that plain `mkdocs build` builds."""
    if name is not None:
        raise Fault(f"`{name}` belongs to nothing here.", "Write `site` alone.")
    course, tests, rings = _drawn(opened, folder)
    plan, _ = Planner(course, opened.judged, fingerprints(course), Tests(tests, rings)).student({})
    with swapped_in(out / SOURCE) as draft:
        leave_site(plan, draft)
        copy_media(folder, draft / "docs", plan.media)
        refuse_keys(draft, Search(rings, course))
    return [out / SOURCE / "mkdocs.yml"]


def _drawn(opened: Opened, folder: Path) -> tuple[Course, tuple[PublishedTest, ...], tuple[KeyRing, ...]]:
    if opened.course is None or not opened.sound:
        raise Fault("The course has errors to fix.", MEND)
    drawn = papers_and_keys(opened.course, opened.judged, read_secret(folder))
    return opened.course, tuple(one for one, _ in drawn), tuple(ring for _, ring in drawn)


def _written(out: Path, files: Mapping[str, str], search: Search) -> list[Path]:
    """The files, beside those of earlier exports; nothing is written where a key would be given away."""
    refuse_in({name: text.encode() for name, text in files.items()}, search)
    paths = {out / "private" / HANDOUTS / name: text for name, text in files.items()}
    for path, text in paths.items():
        write_text(path, text)
    return sorted(paths)
