"""How a source is cited shortly, and what a severity table may hold."""

from typing import Any

import pytest
from pydantic import ValidationError

from builder.model.tables import Reference, SeverityTable
from tests.judge.small import SEVERITY


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


@pytest.mark.parametrize(
    ("changed", "said"),
    [
        (
            {
                "bands": [
                    {"grade": "mild", "when": {"swelling": "none"}},
                    {"grade": "severe", "when": {"knee_flexion": 1}},
                ]
            },
            "under `raised`",
        ),
        (
            {"bands": [{"grade": "mild", "when": {"any": [{"knee_flexion": 1}, {"swelling": "none"}]}}]},
            "under `raised`",
        ),
        ({"raised": [{"grade": "severe", "when": {"swelling": "rising"}}]}, "beside `least"),
    ],
)
def test_a_table_grades_by_its_measure(changed: dict[str, Any], said: str) -> None:
    """Bands bound the measure alone, and only a table of least grades is raised by anything else."""
    table = SEVERITY["tables"]["thigh"]
    assert SeverityTable.model_validate(table).measure == "knee_flexion"
    with pytest.raises(ValidationError, match=said):
        SeverityTable.model_validate({**table, **changed})
