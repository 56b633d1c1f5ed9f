"""Conditions wherever they stand."""

from pathlib import Path

import pytest

from tests.read.folders import changed, put, read


@pytest.mark.parametrize(
    ("file", "old", "new", "place"),
    [
        ("content/rules/numb_cold.yml", "when: {numb: yes}", "when: {numb: true}", (4, 14)),
        ("content/rules/numb_cold.yml", "answer: barred", "needs: {barrier: maybe}", (7, 22)),
        ("content/rules/numb_cold.yml", "given: {numb: no}", "given: {numb: on}", (13, 31)),
        ("content/cards/cold.yml", "{at_most: 20}", "{at_most: 200}", (14, 33)),
        ("content/phases.yml", "{injury: strain}", "{injury: strained}", (2, 26)),
        ("content/phases.yml", "when: {heat: clear}", "when: {heat: hot}", (12, 18)),
        ("content/severity.yml", "region: thigh}", "region: knee}", (5, 42)),
        ("content/severity.yml", "{over: 90}", "{over: 900}", (10, 43)),
    ],
)
def test_a_wrong_value_is_told_where_it_stands(
    file: str, old: str, new: str, place: tuple[int, int], tmp_path: Path
) -> None:
    """Each kind of file has its conditions looked at, to the very value."""
    (fault,) = changed(tmp_path / "root", file, old, new).found
    assert (fault.place.line, fault.place.column) == place


def test_without_facts_nothing_is_said_of_conditions(tmp_path: Path) -> None:
    """Where the facts cannot be read, no name can be called unknown."""
    reading = read(put(tmp_path / "root", {"content/facts.yml": "format: 'x\n"}))
    assert [one.check for one in reading.found] == ["yaml_open_quote"]
