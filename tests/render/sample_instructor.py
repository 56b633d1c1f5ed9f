"""The instructor site of the samples, planned and built once for the tests that look at it."""

from functools import cache
from pathlib import Path
from tempfile import mkdtemp

from bs4 import BeautifulSoup

from builder.doors.site import build_site
from builder.model.site import SitePlan
from builder.render.instructor import instructor_site
from tests.render.sample_cases import practice_case, published_test
from tests.render.sample_judged import judged, judged_course, ring
from tests.render.sample_site import parsed


@cache
def private_plan() -> SitePlan:
    """The plan of the sample's instructor site."""
    return instructor_site(
        judged_course(), judged(), (published_test(),), (ring(),), rooms={"landing": practice_case()}
    )


def private_page(address: str) -> BeautifulSoup:
    """The inside of one planned page, parsed."""
    return parsed(next(one for one in private_plan().pages if one.address == address).body)


@cache
def built_private() -> Path:
    """The sample's instructor site, built into a folder of its own."""
    folder = Path(mkdtemp(prefix="caseloom-private-"))
    build_site(private_plan(), folder)
    return folder
