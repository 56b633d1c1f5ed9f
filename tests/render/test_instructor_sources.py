"""The page of sources."""

from tests.render.sample_instructor import private_page
from tests.render.sample_site import one, said

SOURCES = private_page("sources.md")


def test_every_source_is_cited_in_full() -> None:
    """What names no publication comes first."""
    assert [said(node.select("p")[0]) for node in SOURCES.select(".rows > li[id]")] == [
        "Common practice, no source",
        "Example A. A made-up guideline for this sample.",
    ]


def test_what_leans_on_a_source_is_counted() -> None:
    """Rules and cards, each once however many of its rows name the source."""
    assert said(one(SOURCES, "#source-common_practice")).endswith("common_practice · rules: 0, cards: 3")
    assert said(one(SOURCES, "#source-example_2020")).endswith(
        "example_2020 · rules: 2, cards: 0 background lists: 1"
    )


def test_what_is_only_taught_is_told_with_its_rows_source_and_both_sides() -> None:
    """A background list shows on whom it was studied, its rows with points, its note and what it rests on."""
    told = said(one(SOURCES, "details.more"))
    for part in (
        "A made-up score",
        "Nobody.",
        "First · A sign. · points: 1",
        "Second · No sign.",
        "Reported.",
    ):
        assert part in told
    assert "It clears nobody." in told
    assert "Example A." in told
