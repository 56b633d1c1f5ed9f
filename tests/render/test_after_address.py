"""Where the pages for the time after the course stand."""

from builder.model.after import INTERVALS
from builder.render.after_address import AFTER, CHANGES, OWN_SHEET, of_interval


def test_every_page_has_an_address_of_its_own() -> None:
    """All in one folder, named for a reader."""
    pages = [AFTER, CHANGES, OWN_SHEET, *map(of_interval, INTERVALS)]
    assert len({*pages}) == len(pages)
    assert all(page.startswith("after/") for page in pages)
    assert of_interval(INTERVALS[3]) == "after/three-months.md"
