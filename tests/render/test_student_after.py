"""The pages for the time after the course."""

import json
from datetime import date

from bs4 import BeautifulSoup

from builder.model.after import INTERVALS, SpacedSet
from builder.model.site import SitePage
from builder.render.maker import maker
from builder.render.student import student_site
from builder.render.student_after import after_pages, reminders
from tests.render.sample_cases import practice_case
from tests.render.sample_site import one, parsed, said
from tests.render.samples import course

SETS = tuple(SpacedSet(interval, ("landing",), ()) for interval in INTERVALS)


def pages() -> dict[str, SitePage]:
    """Every page by its address."""
    made = maker(course())
    return {page.address: page for page in after_pages(made, SETS, {"landing": practice_case()})}


def body(address: str) -> BeautifulSoup:
    """The inside of one page."""
    return parsed(pages()[address].body)


def test_nothing_to_come_back_to_gives_no_page() -> None:
    """A course that practises nothing has none of it, and no step on its first page."""
    assert after_pages(maker(course()), (), {}) == []
    assert not any(
        page.address.startswith("after/") for page in student_site(course(lessons=[]), (), ()).pages
    )


def test_the_four_days_are_told_without_a_script() -> None:
    """Each with the way to its page, and how to count; the form for a date is not there until a script is."""
    tree = body("after/index.md")
    assert [(said(link.b), link["href"]) for link in tree.select(".due a") if link.b] == [
        ("One day after", "one-day.html"),
        ("One week after", "one-week.html"),
        ("One month after", "one-month.html"),
        ("Three months after", "three-months.html"),
    ]
    assert "the day after your last day" in said(tree)
    assert one(tree, "form.ended").has_attr("hidden")
    assert not one(tree, ".without").has_attr("hidden")


def test_a_set_leads_to_its_cases_undecided() -> None:
    """And back to what one set out to change."""
    tree = body("after/one-week.md")
    assert one(tree, ".list a")["href"] == "../cases/landing.html#blank"
    assert "../after/my-changes.html" in {link["href"] for link in tree.select("a")} | {
        f"../after/{link['href']}" for link in tree.select("a")
    }
    assert "Nothing is written down on this device." in said(tree)


def test_the_script_is_given_what_it_needs_to_write_a_calendar() -> None:
    """The words of each day, and a key that no other course has; nothing in it can end its element."""
    text = one(body("after/index.md"), "#after-data").string or ""
    data = json.loads(text)
    assert "<" not in text
    assert [(row["id"], row["days"], row["months"]) for row in data["days"]] == [
        ("day", 1, 0), ("week", 7, 0), ("month", 0, 1), ("quarter", 0, 3),
    ]  # fmt: skip
    other = course(provider={"name": "Another", "address": "Elsewhere", "contact": "none"})
    assert reminders(maker(other), date(2026, 4, 19))[0].uid != f"{data['key']}-20260419-day@caseloom"
    assert reminders(maker(course()), date(2026, 4, 19))[0].uid == f"{data['key']}-20260419-day@caseloom"


def test_the_site_lists_them_in_a_part_of_their_own() -> None:
    """After the tests; the first page leads there last."""
    plan = student_site(course(lessons=[]), (practice_case(),), (), spaced=SETS)
    assert plan.sections[-1].title == "After the course"
    assert len(plan.sections[-1].pages) == 7
    start = parsed(next(page.body for page in plan.pages if page.address == "index.md"))
    links = [link["href"] for link in start.select("a") if str(link["href"]).startswith("after/")]
    assert links == ["after/index.html", "after/my-changes.html", "after/my-sheet.html"]
