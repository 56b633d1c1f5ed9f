"""Every source with its whole citation, and how many rules and cards lean on it."""

from __future__ import annotations

from collections import Counter

from builder.model.library import Content
from builder.model.site import SitePage
from builder.render.instructor_address import SOURCES
from builder.render.maker import Maker


def sources_page(made: Maker) -> SitePage:
    """The sources in order of their citations; those that name no publication come first."""
    content = made.course.content
    rules, cards = _counted(content)
    known = sorted(
        content.references.sources.items(),
        key=lambda pair: (pair[1].year is not None, pair[1].cite.casefold()),
    )
    rows = [{"id": name, "source": one, "rules": rules[name], "cards": cards[name]} for name, one in known]
    return made.page(SOURCES, made.say("i_sources"), "instructor_sources", kind="sources", rows=rows)


def _counted(content: Content) -> tuple[Counter[str], Counter[str]]:
    """By source, how many rules and how many cards name it, each once."""
    rules = Counter(name for rule in content.rules.values() for name in set(rule.source))
    cards = Counter(
        name
        for card in content.cards.values()
        for name in {one for row in card.baseline for one in row.source}
    )
    return rules, cards
