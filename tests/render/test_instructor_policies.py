"""Policies on one sheet, and wherever else they are owed: one text each."""

from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

import pytest

from builder.model.board import BoardRules
from builder.model.library import Course
from builder.model.owed import Where, policies_at
from builder.model.site import SitePage
from builder.render.instructor_policies import policies_page
from builder.render.instructor_station import station_pages
from builder.render.maker import maker
from builder.render.student_start import start_page
from tests.check.checks.test_references_old import BOARD
from tests.demo.built import demo, opened
from tests.render.sample_judged import judged_course, station
from tests.render.sample_site import parsed, said

POLICIES = {
    "refund": "Paid back in nine days.",
    "second_try": "Once more.",
    "practice_clients": "Nobody must.",
}
PLACES: dict[str, Callable[[Course], SitePage]] = {
    "start": lambda course: start_page(maker(course), {}, ()),
    "handout": lambda course: policies_page(maker(course)),
    "station": lambda course: station_pages(maker(course), station())[1],
}


def test_the_sheet_shows_each_policy_and_who_asks_for_it() -> None:
    """With the disclosures; what is asked for and not written is told on screen."""
    tree = parsed(policies_page(maker(judged_course(policies=POLICIES))).body)
    assert [said(one) for one in tree.select(".owed dt")] == [
        "Refund", "Second try", "Practice clients", "Disclosures",
    ]  # fmt: skip
    made = judged_course(policies=POLICIES, boards=["guild"])
    boards = {"guild": BoardRules.model_validate({**BOARD, "policies": ["refund", "weather"]})}
    asked = parsed(policies_page(maker(replace(made, content=replace(made.content, boards=boards)))).body)
    assert [said(one) for one in asked.select(".owed small")] == [f"Asked for by {BOARD['name']}"]
    assert said(asked.select(".aside-clay")[0]) == "Asked for and not written: Weather"


@pytest.mark.parametrize("place", PLACES)
def test_one_text_is_printed_wherever_it_is_owed(place: str) -> None:
    """Changed in the course, it changes in every place."""
    for text in ("Once more.", "Never again."):
        tree = parsed(PLACES[place](judged_course(policies={**POLICIES, "second_try": text})).body)
        assert [said(one) for one in tree.select("dd")].count(text) == 1


def test_every_policy_of_the_demonstration_is_printed_where_its_boards_want_it() -> None:
    """What a body asks for is on the first page and on the sheet; a station's stand on its handout."""
    course = opened().course
    assert course is not None
    asked = {one for name in course.file.boards for one in course.content.boards[name].policies}
    assert asked <= course.file.policies.keys()
    out = demo()[0]
    pages: dict[Where, Path] = {
        "start": out / "publish" / "index.html",
        "handout": out / "private" / "instructor" / "policies.html",
        "station": out / "private" / "instructor" / "stations" / "friction-station-handouts.html",
    }
    for where, path in pages.items():
        tree = parsed(path.read_text(encoding="utf-8"))
        for asked_by in tree.select("dd small"):
            asked_by.extract()
        told = [said(one) for one in tree.select("dd")]
        owed = policies_at(course.file, where)
        assert owed
        assert [title for title, text in owed.items() if " ".join(text.split()) not in told] == []
