"""A test on the student site: the page that takes a personal code, and a page for each version."""

from __future__ import annotations

from builder.doors.page import data_block
from builder.model.paper import Paper, PublishedTest
from builder.model.site import SitePage
from builder.render.address import of_test, of_version, way
from builder.render.maker import Maker, all_reviewed
from builder.render.script_data import about_test

CODES = ("code_wrong", "code_missing", "code_shown", "code_elsewhere", "code_not_kept")
KEEPING = ("kept", "kept_quick", "not_kept", "other_windows")
DRAFTS = ("draft_saved", "draft_damaged", "draft_other", "draft_taken")
REVIEW = ("unanswered", "unfinished", "left_open", "all_answered")
SHEET = ("sheet_ready", "copied", "copy_by_hand", "sheet_copy_lede", "sheet_else_lede")
POSTING = (
    "finish_hand",
    "sending",
    "sending_why",
    "waiting",
    "waiting_why",
    "refused",
    "received",
    "received_as",
)
SHARING = ("pass_first", "pass_saved", "pass_received")
TIME = ("time_left", "time_soon", "time_out", "time_over", "time_none")
SAID = (*CODES, *KEEPING, *DRAFTS, *REVIEW, *SHEET, *POSTING, *SHARING, *TIME)


def paper_pages(made: Maker, test: PublishedTest) -> list[SitePage]:
    """The entry page of a test and the page of every version; none of them can be searched."""
    return [_entry(made, test), *(_version(made, test, paper) for paper in test.papers)]


def _entry(made: Maker, test: PublishedTest) -> SitePage:
    at = of_test(test.test)
    return made.page(
        at,
        test.title,
        "entry",
        kind="entry",
        scripts=("assets/test.js",),
        search=False,
        reviewed=all_reviewed(made.course),
        test=test,
        versions=[
            {"address": of_version(test.test, one.version), "letter": one.version} for one in test.papers
        ],
        minutes=_minutes(made, test),
        data=data_block({"entry": True, **_known(made, test, at)}),
    )


def paper_alone(made: Maker, test: PublishedTest, paper: Paper) -> SitePage:
    """The same page of one version where there is no other page: the code is asked for on it."""
    return _version(made, test, paper, alone=True)


def _version(made: Maker, test: PublishedTest, paper: Paper, *, alone: bool = False) -> SitePage:
    at = of_version(test.test, paper.version)
    asked = [{"q": one.id, "kind": one.kind} for one in paper.questions]
    data = {
        "entry": False,
        "version": paper.version,
        "class": "",
        "questions": asked,
        "minutes": _minutes(made, test),
        "back": "" if alone else way(at, of_test(test.test)),
        **_known(made, test, at),
    }
    if alone:
        data |= {"pages": {paper.version: ""}, "alone": True}
    return made.page(
        at,
        f"{test.title} {paper.version}",
        "version",
        kind="version",
        scripts=("assets/test.js",),
        search=False,
        reviewed=all_reviewed(made.course),
        test=test,
        paper=paper,
        alone=alone,
        minutes=_minutes(made, test),
        data=data_block(data),
    )


def _known(made: Maker, test: PublishedTest, at: str) -> dict[str, object]:
    """What the script of either page must know."""
    pages = {one.version: way(at, of_version(test.test, one.version)) for one in test.papers}
    return {"pages": pages, **about_test(made, test, SAID)}


def _minutes(made: Maker, test: PublishedTest) -> int | None:
    """The time limit of a test, where the course has set one."""
    return next((one.time_limit for one in made.course.file.tests if one.id == test.test), None)
