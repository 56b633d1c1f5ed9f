"""Every source with its whole citation and what leans on it, and the lists that are only taught."""

from __future__ import annotations

from collections import Counter

from builder.model.library import Content
from builder.model.site import SitePage
from builder.render.instructor_address import SOURCES
from builder.render.maker import Maker
from builder.render.source import contested_text, rests_on


def sources_page(made: Maker) -> SitePage:
    """The sources in order of their citations; those that name no publication come first."""
    content = made.course.content
    rules, cards = _counted(content)
    lists = Counter(name for one in content.severity.background.values() for name in set(one.source))
    known = sorted(
        content.references.sources.items(),
        key=lambda pair: (pair[1].year is not None, pair[1].cite.casefold()),
    )
    rows = [
        {"id": name, "source": one, "rules": rules[name], "cards": cards[name], "lists": lists[name]}
        for name, one in known
    ]
    title, taught = made.say("i_sources"), _taught(made)
    reviewed = all(one.reviewed for one in content.severity.background.values())
    return made.page(
        SOURCES, title, "instructor_sources", kind="sources", reviewed=reviewed, rows=rows, taught=taught
    )


def _taught(made: Maker) -> list[dict[str, object]]:
    """The background lists, with what each rests on and both sides where it is contested."""
    return [
        {
            "list": one,
            "rests_on": rests_on(made, one.source, one.strength),
            "contested": contested_text(made, one.contested),
        }
        for one in made.course.content.severity.background.values()
    ]


def _counted(content: Content) -> tuple[Counter[str], Counter[str]]:
    """By source, how many rules and how many cards name it, each once."""
    rules = Counter(name for rule in content.rules.values() for name in set(rule.source))
    cards = Counter(
        name
        for card in content.cards.values()
        for name in {one for row in card.baseline for one in row.source}
    )
    return rules, cards
