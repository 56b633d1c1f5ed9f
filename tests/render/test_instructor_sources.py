"""The page of sources."""

from tests.render.sample_instructor import private_page
from tests.render.sample_site import one, said

SOURCES = private_page("sources.md")


def test_every_source_is_cited_in_full() -> None:
    """What names no publication comes first."""
    assert [said(node.select("p")[0]) for node in SOURCES.select(".rows > li")] == [
        "Common practice, no source",
        "Example A. A made-up guideline for this sample.",
    ]


def test_what_leans_on_a_source_is_counted() -> None:
    """Rules and cards, each once however many of its rows name the source."""
    assert said(one(SOURCES, "#source-common_practice")).endswith("common_practice · rules: 0, cards: 3")
    assert said(one(SOURCES, "#source-example_2020")).endswith("example_2020 · rules: 2, cards: 0")
