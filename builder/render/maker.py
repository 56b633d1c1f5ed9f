"""Makes the pages of one site: templates, words and links bound together, and the plan they end in."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field
from types import MappingProxyType

from builder.doors.page import Fill, filler, markup
from builder.model.library import Course
from builder.model.paper import BoardCell
from builder.model.practice import PlacedQuestion
from builder.model.reviewable import unsigned
from builder.model.site import SitePage, SitePlan, SiteSection
from builder.render import address
from builder.render.assets import LOOK, assets, frame, with_kinds
from builder.render.board import absent, found
from builder.render.draw.finding import drawing
from builder.render.emphasis import emphasised
from builder.render.told import changes_of, told_rows
from builder.render.wording import Say, speaker


@dataclass(frozen=True)
class Maker:
    """Fills page templates for one course; every page it makes wears the same frame.

    `placed` are the practice questions that a lesson may place, by the author's name for each.
    """

    course: Course
    say: Say
    fill: Fill
    placed: Mapping[str, PlacedQuestion] = field(default_factory=dict)

    def page(self, at: str, title: str, template: str, **values: object) -> SitePage:
        """A page from a template in `look/pages`, given by keywords.

        Fields of a page are its own; `reviewed`: a clinician has looked; all else is for the template.
        """
        fields = {name: values.pop(name) for name in ("kind", "where", "scripts", "search") if name in values}
        reviewed = bool(values.pop("reviewed", False))
        given = values | {"course": self.course, "to": self.links(at)}
        body = self.fill(f"pages/{template}.html", given) + self.unreviewed(reviewed=reviewed)
        named = {"address": at, "title": title, "where": title}
        page = SitePage.model_validate({**named, "body": body, **fields})
        return page.model_copy(update={"scripts": with_kinds(page.scripts)})

    def links(self, at: str) -> Callable[[str], str]:
        """A function that gives the relative link from the page `at` to another."""
        return lambda goal: address.way(at, goal)

    def unreviewed(self, *, reviewed: bool) -> str:
        """The line that no clinician has reviewed what a page rests on."""
        return "" if reviewed else self.fill("parts/unreviewed.html", {"text": self.course.site.unreviewed})


def maker(course: Course, placed: Mapping[str, PlacedQuestion] = MappingProxyType({})) -> Maker:
    """The maker of a course's pages."""
    say = speaker(course.content.words)
    facts = course.content.facts.facts

    def drawn(cell: BoardCell) -> str:
        return markup(drawing(cell, facts.get(cell.fact)))

    known = {"say": say, "drawing": drawn, "told_rows": told_rows, "changes_of": changes_of}
    board = {"found": found(facts), "absent": absent(facts)}
    return Maker(course, say, filler(LOOK, {**known, **board, "emphasised": emphasised}), placed)


def all_reviewed(course: Course) -> bool:
    """Whether a clinician has reviewed all of the content that the course rests on."""
    return not unsigned(course.content)


def site_plan(
    made: Maker, pages: Sequence[SitePage], sections: Sequence[SiteSection], flags: str
) -> SitePlan:
    """The plan of a site: its pages in the frame, with look and scripts; sections without pages fall away."""
    course = made.course
    scripts = sorted({script for page in pages for script in page.scripts})
    return SitePlan(
        name=course.file.title,
        language=course.file.language,
        pages=tuple(pages),
        sections=tuple(section for section in sections if section.pages),
        assets=assets(course.site.colours, scripts),
        footer=f"{course.site.caution}\n{made.say('contact', text=course.file.provider.contact)}",
        frame=frame(),
        words=course.content.words,
        flags=flags,
    )
