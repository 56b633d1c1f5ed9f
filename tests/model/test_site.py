"""A planned site as plain values."""

import pytest
from pydantic import ValidationError

from builder.model.site import SitePage, SitePlan


def test_a_page_is_html_and_searchable_unless_it_says_otherwise() -> None:
    """The usual page needs an address, a title and a body."""
    page = SitePage(address="index.md", title="Start", body="<h1>Start</h1>")
    assert (page.markdown, page.search, page.kind, page.scripts) == (False, True, "page", ())


def test_two_plans_share_nothing() -> None:
    """What one plan holds by default is its own."""
    empty = {"name": "x", "language": "en", "pages": (), "sections": (), "assets": {}, "footer": ""}
    one, other = SitePlan.model_validate(empty), SitePlan.model_validate(empty)
    assert one == other
    assert one.frame is not other.frame
    assert one.words is not other.words


def test_a_page_never_changes() -> None:
    """A planned page is frozen, and knows its keys."""
    page = SitePage(address="index.md", title="Start", body="")
    with pytest.raises(ValidationError):
        page.title = "Other"  # type: ignore[misc]
    with pytest.raises(ValidationError):
        SitePage.model_validate({"address": "a.md", "title": "A", "body": "", "colour": "red"})
