"""Single files to hand out: every version of a test, or a practice case, each with all it needs inside."""

from __future__ import annotations

from collections.abc import Sequence

from builder.assess.practice import practice_case
from builder.export.single import single_file
from builder.fault import Fault
from builder.flow.opened import Opened
from builder.model.library import Course
from builder.model.paper import Paper, PublishedTest
from builder.model.site import SitePage
from builder.render.address import FLAGS, published
from builder.render.maker import Maker, maker, site_plan
from builder.render.student_case import case_page
from builder.render.student_flags import flags_page
from builder.render.student_paper import paper_alone

HANDOUTS = "handouts"


def handouts_of_tests(
    course: Course, tests: Sequence[PublishedTest], version: str | None = None
) -> dict[str, str]:
    """Every version of the tests, or one, as a file each, by name; made, as the site is, without any key."""
    made = maker(course)
    pairs = [(test, paper) for test in tests for paper in test.papers]
    return dict(_of_paper(made, *pair) for pair in pairs if version in (None, pair[1].version))


def handout_of_case(opened: Opened, name: str) -> dict[str, str]:
    """A practice case as one file, by name, with the page of red flags below it."""
    course = opened.course
    if course is None:
        raise Fault("The course cannot be read.", "Run check, and mend what it names.")
    if all(name not in one.cases for one in course.file.practice):
        raise Fault(f"The course practises on no case `{name}`.", "Name one of a practice set.")
    made = maker(course)
    page = case_page(made, practice_case(course, course.cases[name], opened.judged[name]))
    return dict([_filed(made, page, with_flags=True)])


def _of_paper(made: Maker, test: PublishedTest, paper: Paper) -> tuple[str, str]:
    return _filed(made, paper_alone(made, test, paper), with_flags=False)


def _filed(made: Maker, page: SitePage, *, with_flags: bool) -> tuple[str, str]:
    plan = site_plan(made, [page, flags_page(made)], (), FLAGS)
    name = published(page.address).rpartition("/")[2]
    return name, single_file(plan, page.address, with_flags=with_flags)
