"""Addresses of pages and the ways between them."""

import pytest

from builder.render import address


@pytest.mark.parametrize(
    ("start", "goal", "link"),
    [
        ("index.md", "cards/friction.md", "cards/friction.html"),
        ("cases/landing.md", "cards/friction.md", "../cards/friction.html"),
        ("cases/landing.md", "index.md", "../index.html"),
        ("cards/index.md", "cards/friction.md", "friction.html"),
        ("index.md", "red-flags.md#flag-clot", "red-flags.html#flag-clot"),
        ("tests/final.md", "assets/test.js", "../assets/test.js"),
    ],
)
def test_a_link_is_relative(start: str, goal: str, link: str) -> None:
    """A page leads to another from wherever the site lies."""
    assert address.way(start, goal) == link


def test_every_kind_of_page_has_its_place() -> None:
    """Ids become addresses without underscores; a version's letter is small."""
    assert address.of_case("wire_hamstring") == "cases/wire-hamstring.md"
    assert address.of_card("cold_pack") == "cards/cold-pack.md"
    assert address.of_lesson("phases") == "lessons/phases.md"
    assert address.of_test("final") == "tests/final.md"
    assert address.of_version("final", "B") == "tests/final-b.md"
