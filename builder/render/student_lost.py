"""The page for an address at which there is nothing, as static hosts show it in place of any page."""

from __future__ import annotations

from builder.model.paper import PublishedTest
from builder.model.site import SitePage
from builder.render import address
from builder.render.maker import Maker, all_reviewed


def lost_page(made: Maker, tests: tuple[PublishedTest, ...]) -> SitePage:
    """The ways on from nowhere: the start, the red flags, the tests."""
    ways = [(address.START, made.say("start")), (address.FLAGS, made.say("flags"))]
    return made.page(
        address.LOST,
        made.say("lost"),
        "lost",
        kind="lost",
        search=False,
        reviewed=all_reviewed(made.course),
        ways=[*ways, *((address.of_test(test.test), test.title) for test in tests)],
    )
