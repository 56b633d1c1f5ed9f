"""The demonstration's answer sheets are what the built site hands over, byte for byte."""

import pytest
from playwright.sync_api import Browser

from tests.demo.built import demo
from tests.demo.write_sheets import ANSWERS, sheets


@pytest.mark.browser
def test_the_shipped_sheets_are_those_the_built_site_hands_over(browser: Browser) -> None:
    """Sitting the built test again on the same clock gives the very files (`make sheets` renews them)."""
    shipped = {path.name: path.read_bytes() for path in sorted(ANSWERS.iterdir())}
    assert dict(sorted(sheets(browser, demo()[0]).items())) == shipped
