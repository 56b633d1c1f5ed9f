"""The list for review as one printable page of HTML, with room to sign beside each entry."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import groupby

from builder.doors.page import markup
from builder.render.maker import Maker
from builder.render.review_entry import Listed
from builder.render.review_list import remaining, standing

REVIEWERS = 3


def as_sheet(made: Maker, entries: list[Listed]) -> str:
    """The sheet: how to sign, room for those who do, then every entry under the name of its part."""
    say, course = made.say, made.course
    left = say("review_left", n=remaining(entries), all=len(entries))
    return made.fill(
        "pages/review_sheet.html",
        {
            "course": course,
            "first": entries[0],
            "left": left,
            "reviewers": REVIEWERS,
            "sources": sorted(
                (one.cite for one in course.content.references.sources.values()), key=str.casefold
            ),
            "parts": list(_parts(made, entries)),
            "head": css_text(f"{say('review_title')} · {course.file.title}"),
            "page_of": [css_text(part) for part in say("review_page").split("#")],
            "foot": css_text(course.site.short_caution),
        },
    )


def css_text(text: str) -> str:
    """A text as it may stand in a style sheet, between quotes, and end nothing."""
    kept = (one if one.isalnum() or one in " .,:;·-–’" else f"\\{ord(one):x} " for one in text)
    return markup(f'"{"".join(kept)}"')


def _parts(made: Maker, entries: list[Listed]) -> Iterator[tuple[str, list[tuple[Listed, str]]]]:
    for part, some in groupby(entries, key=lambda one: one.part):
        yield made.say(f"review_part_{part}"), [(one, standing(made, one)) for one in some]
