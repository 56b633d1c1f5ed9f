"""How a source is cited shortly."""

import pytest

from builder.model.tables import Reference


@pytest.mark.parametrize(
    ("cite", "year", "short"),
    [
        ("Ryan JB et al. Quadriceps contusions. Am J Sports Med 1991;19:299", 1991, "Ryan JB et al, 1991"),
        ("A tool, sixth edition (2023). Br J", 2023, "A tool, sixth edition, 2023"),
        ("Rule 7 of 2024. Texas", 2024, "Rule 7 of 2024"),
        ("Common practice, no source", None, "Common practice, no source"),
        ("Long words. More words", None, "Long words. More words"),
    ],
)
def test_a_source_is_cited_up_to_its_first_stop(cite: str, year: int | None, short: str) -> None:
    """Head and year, the year once; whole where no year dates it."""
    assert Reference(cite=cite, year=year).short == short
