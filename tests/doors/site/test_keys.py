"""Keys of pages: another key for every page whose bytes differ between two plans."""

import random
from typing import Any

from builder.doors.site import OpenSite
from builder.doors.site.keys import page_keys, shell_key
from builder.model.site import SitePage, SitePlan, SiteSection
from tests.render.sample_site import plan

ROUNDS = 25


def edited(before: SitePlan, chance: random.Random) -> SitePlan:
    """The plan after one edit of any kind."""
    number = chance.randrange(1, len(before.pages))
    page = before.pages[number]
    of_page: dict[str, dict[str, Any]] = {
        "body": {"body": page.body + "<p>more</p>"},
        "title": {"title": page.title + "!"},
        "where": {"where": page.where + "!"},
        "search": {"search": not page.search},
    }
    of_site: dict[str, dict[str, Any]] = {
        "order": {"sections": tuple(turned(one) for one in before.sections)},
        "words": {"words": before.words | {"next": before.words["next"] + "!"}},
        "flags": {"flags": "cards/index.md"},
        "footer": {"footer": "Another end."},
    }
    kind = chance.choice([*of_page, *of_site, "gone"])
    if kind == "gone":
        return without(before, "cards/friction.md")
    if kind in of_site:
        return before.model_copy(update=of_site[kind])
    pages = list(before.pages)
    pages[number] = page.model_copy(update=of_page[kind])
    return before.model_copy(update={"pages": tuple(pages)})


def turned(section: SiteSection) -> SiteSection:
    """The section with its pages the other way round."""
    return SiteSection(title=section.title, pages=tuple(reversed(section.pages)))


def without(before: SitePlan, address: str) -> SitePlan:
    """The plan with one page less."""
    sections = [
        SiteSection(title=one.title, pages=tuple(at for at in one.pages if at != address))
        for one in before.sections
    ]
    pages = tuple(one for one in before.pages if one.address != address)
    return before.model_copy(update={"pages": pages, "sections": tuple(one for one in sections if one.pages)})


def built(site: OpenSite, planned: SitePlan) -> dict[str, bytes]:
    """Every page of a plan."""
    site.turn_to(planned)
    pages = {page.address: site.page(page.address) for page in planned.pages}
    return {address: page.data for address, page in pages.items() if page is not None}


def test_pages_with_one_key_have_the_same_bytes() -> None:
    """After edits of every kind, on pages that were made from nothing but their plan."""
    chance = random.Random(11)  # noqa: S311 - a fixed walk through edits
    for _ in range(ROUNDS):
        before = plan()
        after = edited(edited(before, chance), chance)
        first, second = OpenSite(), OpenSite()
        old, new = built(first, before), built(second, after)
        keys, other = page_keys(before), page_keys(after)
        same = [at for at in old.keys() & new.keys() if keys[at] == other[at]]
        assert [at for at in same if old[at] != new[at]] == []
        first.close()
        second.close()


def test_most_pages_keep_their_key_when_one_is_edited() -> None:
    """The body of a page is nobody else's matter, and its title only that of its neighbours."""
    before = plan()
    page = before.pages[2]
    after = before.model_copy(
        update={
            "pages": tuple(
                one.model_copy(update={"body": "<p>new</p>"}) if one is page else one for one in before.pages
            )
        }
    )
    keys, other = page_keys(before), page_keys(after)
    assert [at for at in keys if keys[at] != other[at]] == [page.address]


def test_a_page_known_by_its_origin_needs_no_body() -> None:
    """The fingerprint of what it was made from stands for it."""
    page = SitePage(address="index.md", title="Start", body="x", made_from="f")
    one = SitePlan(name="n", language="en", pages=(page,), sections=(), assets={}, footer="")
    empty = one.model_copy(update={"pages": (page.model_copy(update={"body": ""}),)})
    other = one.model_copy(update={"pages": (page.model_copy(update={"made_from": "g"}),)})
    assert page_keys(one) == page_keys(empty) != page_keys(other)


def test_the_shell_is_all_but_the_pages() -> None:
    """Other pages leave it, another frame changes it."""
    before = plan()
    assert shell_key(before) == shell_key(before.model_copy(update={"pages": before.pages[:1]}))
    assert shell_key(before) != shell_key(before.model_copy(update={"frame": {"main.html": "x"}}))
