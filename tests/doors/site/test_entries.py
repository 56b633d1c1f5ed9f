"""What search knows of a page is what Material's own parser would have it know."""

import json
from collections.abc import Sequence
from html import escape

import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as some
from material.plugins.search.plugin import SearchIndex
from mkdocs.structure.toc import TableOfContents

from builder.doors.site.entries import entries, sections
from builder.model.site import SitePage
from tests.render.sample_instructor import private_plan
from tests.render.sample_site import plan

PAGES = [one for one in (*plan().pages, *private_plan().pages) if not one.markdown]
NAMES = ("div", "section", "p", "h1", "h2", "h3", "li", "ul", "pre", "svg", "title", "sub")
MARKS = ("", ' id="x"', ' ID="&lt;y" class="b"', " data-search-exclude", ' id="z" data-search-exclude')
TEXTS = ("words", " ", "\n", " \n ", "one\ntwo", "&amp; &lt;b&gt; &#8211; &", "5 > 4", "ä ☞", "<br>", "<br/>")
ODD_NAMES = ("script", "object", "a", "div", "p", "textarea", "linearGradient")
ODD_MARKS = (' class="linenodiv"', ' class="headerlink"', " b='c'", " d=e", ' CLASS="x" id')
ODD = ("<!-- seen -->", '<img alt="5 > 4">', "a < b", "<p", "</>", "</p >", '<path d="M0"/>', "<p/>", "<?x?>")


class Shown:
    """As much of a page as Material looks at."""

    def __init__(self, html: str) -> None:
        """Keep the inside."""
        self.meta: dict[str, object] = {}
        self.title = "Title"
        self.content, self.url, self.toc = html, "a/b.html", TableOfContents([])


def theirs(html: str) -> tuple[str, ...] | type[Exception]:
    """What Material itself puts into its index, or how it fails."""
    index = SearchIndex()
    try:
        index.add_entry_from_context(Shown(html))
    except (ValueError, IndexError) as error:
        return type(error)
    return tuple(json.dumps(one, separators=(",", ":"), default=str) for one in index.entries)


def ours(html: str) -> tuple[str, ...] | type[Exception]:
    """What we put into it, or how we fail."""
    try:
        return entries(html, "a/b.html", "Title")
    except (ValueError, IndexError) as error:
        return type(error)


@pytest.mark.parametrize("page", PAGES, ids=lambda page: page.address)
def test_a_page_of_ours_is_read_as_material_reads_it(page: SitePage) -> None:
    """Every kind of page of both sites."""
    assert ours(page.body) == theirs(page.body)


def markup(names: Sequence[str], marks: Sequence[str], leaves: Sequence[str]) -> some.SearchStrategy[str]:
    """Markup of these tags, sound or not, nested some levels deep."""
    tag = some.tuples(some.sampled_from(names), some.sampled_from(marks))

    def around(inner: some.SearchStrategy[str]) -> some.SearchStrategy[str]:
        whole = some.tuples(tag, inner).map(lambda one: f"<{one[0][0]}{one[0][1]}>{one[1]}</{one[0][0]}>")
        return whole | some.lists(inner, max_size=5).map("".join)

    open_tag = tag.map(lambda one: f"<{one[0]}{one[1]}>")
    return some.recursive(some.sampled_from(leaves) | open_tag, around, max_leaves=30)


@settings(max_examples=400)
@example('<h2 id="x">one <b> </b> <i>two</i></h2><p> <b> </b></p>')
@example('<h2 id="x">one</h2><div class="linenodiv">1</div>two')
@example('<p>0<div><div><h2 id="a">A</h2></div><div><div><div><h3 id="b">B</h3></div>1</div></div></div>')
@given(markup(NAMES, MARKS, TEXTS))
def test_plain_markup_is_read_as_material_reads_it(html: str) -> None:
    """Headings in and beside each other, what is left out of search, and tags that never close."""
    assert ours(html) == theirs(html)


@given(markup((*NAMES, *ODD_NAMES), (*MARKS, *ODD_MARKS), (*TEXTS, *ODD)))
def test_any_markup_is_read_as_material_reads_it(html: str) -> None:
    """What is plain by us, all else by Material itself."""
    assert ours(html) == theirs(html)


@given(some.text(max_size=40))
def test_any_text_is_found_as_it_is_written(text: str) -> None:
    """Escaped for a page and back, but for its white space."""
    said = sections(f'<section><h2 id="x">{escape(text)}</h2><span>{escape(text)}</span></section>')
    assert ours(f"<div>{escape(text)}</div>") == theirs(f"<div>{escape(text)}</div>")
    assert said[-1].id == "x"
