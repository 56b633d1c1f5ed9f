"""Square codes say what they were made of, to a reader of other hands."""

import pytest
import zxingcpp
from playwright.sync_api import Browser

from builder.doors.qr import square
from tests.doors.pixels import pixels_of

pytestmark = pytest.mark.browser


@pytest.mark.parametrize(
    "text", ["http://192.168.43.1:8029/#class=spring", "http://10.0.0.2:8029/#class=s%C3%A9"]
)
def test_a_phone_reads_what_was_written(browser: Browser, text: str) -> None:
    """From the picture as a browser draws it, on a dark page too."""
    context = browser.new_context(viewport={"width": 400, "height": 400}, color_scheme="dark")
    page = context.new_page()
    page.set_content(f"<body style='background:#111'>{square(text)}</body>")
    found = zxingcpp.read_barcodes(pixels_of(page))
    context.close()
    assert [one.text for one in found] == [text]


def test_it_holds_no_style_of_its_own() -> None:
    """A page that allows no styles inside shows it all the same."""
    assert "style=" not in square("a")
    assert 'class="square"' in square("a")
