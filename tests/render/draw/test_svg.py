"""The pieces of SVG are well formed and escaped."""

from builder.render.draw.svg import ornament, picture, tag, text
from tests.render.sample_site import one, parsed


def test_an_element_is_written_as_xml() -> None:
    """Underscores become dashes, a trailing one is dropped, numbers lose idle decimals."""
    assert (
        tag("path", d="M0 0", stroke_width=2.0, class_="go") == '<path d="M0 0" stroke-width="2" class="go"/>'
    )


def test_words_are_escaped() -> None:
    """Neither a text nor a name can break out."""
    drawn = picture(text("a < b & c", 1, 2), 10, 20.5, 'so "named" <')
    read = one(parsed(drawn), "svg")
    assert read["aria-label"] == 'so "named" <'
    assert one(read, "text").get_text() == "a < b & c"
    assert read["viewbox"] == "0 0 10 20.5"


def test_an_ornament_is_not_read_out() -> None:
    """A drawing beside its own words stays silent."""
    assert 'aria-hidden="true"' in ornament("", 1, 1)
