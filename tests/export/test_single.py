"""One page as a single file: all it needs inside, no way to anywhere else."""

import re

import pytest

from builder.export.single import POLICY, single_file
from builder.fault import Fault
from builder.model.site import SitePlan
from tests.render.sample_site import one, parsed, plan, said

VERSION, CASE = "tests/final-a.md", "cases/landing.md"


def with_body(body: str, **more: object) -> SitePlan:
    """The sample site with another inside for its practice case."""
    pages = [
        page.model_copy(update={"body": body, **more}) if page.address == CASE else page
        for page in plan().pages
    ]
    return plan().model_copy(update={"pages": tuple(pages)})


@pytest.mark.parametrize("at", [VERSION, CASE])
def test_everything_is_inside(at: str) -> None:
    """No file, no address and no script from elsewhere; the policy allows none either."""
    tree = parsed(single_file(plan(), at, with_flags=at == CASE))
    assert not tree.select("link, [src], [srcset], iframe, object, embed, base")
    assert one(tree, 'meta[http-equiv="Content-Security-Policy"]')["content"] == POLICY
    assert POLICY.startswith("default-src 'none'")
    assert len(tree.select("script:not([type])")) == 1
    assert not re.search(r"url\(|@import|https?://", one(tree, "style").get_text())


@pytest.mark.parametrize("at", [VERSION, CASE])
def test_it_shows_what_the_page_shows(at: str) -> None:
    """The same words under the same title, in the same language, with the caution below."""
    tree = parsed(single_file(plan(), at, with_flags=False))
    page = next(page for page in plan().pages if page.address == at)
    assert said(one(tree, "#page")) == said(parsed(page.body))
    assert page.title in said(one(tree, "title"))
    assert one(tree, "html")["lang"] == "en"
    assert "not medical advice" in said(one(tree, "footer"))


def test_ways_to_other_pages_become_text() -> None:
    """A link would lead nowhere; one within the page, by mail or by telephone stays."""
    body = '<p><a class="x" href="../cards/friction.html"><b>Friction</b></a> <a href="#told">below</a></p>'
    tree = parsed(single_file(with_body(body), CASE, with_flags=True))
    hrefs = [link["href"] for link in tree.select("#page a")]
    assert hrefs == ["#told"]
    assert said(one(tree, "#page")) == "Friction below"


def test_the_red_flags_lie_below() -> None:
    """One tap away, where they are asked for."""
    tree = parsed(single_file(plan(), CASE, with_flags=True))
    assert one(tree, "header a.flags")["href"] == "#red-flags"
    assert "No pulse at the foot" in said(one(tree, "#red-flags"))
    assert not parsed(single_file(plan(), CASE, with_flags=False)).select(".flags, #red-flags")


@pytest.mark.parametrize(
    "body", ['<img src="../media/pad.png" alt="">', "<video poster='x'></video>", '<iframe title="x">']
)
def test_what_a_file_cannot_hold_is_refused(body: str) -> None:
    """A page that shows another file is a fault that says so."""
    with pytest.raises(Fault, match="more than one file can hold"):
        single_file(with_body(body), CASE, with_flags=False)


def test_a_script_cannot_end_its_element() -> None:
    """An end tag in a script stays inside it."""
    assets = {**plan().assets, "assets/practice.js": b"var end = '</script><b>';"}
    made = single_file(plan().model_copy(update={"assets": assets}), CASE, with_flags=False)
    assert made.count("</script>") == 1


def test_a_page_that_is_not_there_is_a_fault() -> None:
    """Named by its address."""
    with pytest.raises(Fault, match=r"cases/none\.md"):
        single_file(plan(), "cases/none.md", with_flags=False)


def test_the_same_plan_gives_the_same_file() -> None:
    """Twice the same text."""
    assert single_file(plan(), VERSION, with_flags=False) == single_file(plan(), VERSION, with_flags=False)
