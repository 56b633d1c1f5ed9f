"""Names that must be known elsewhere."""

from pathlib import Path

import pytest

from builder.read.refer.names import REFERENCES
from builder.read.select import select
from builder.read.written import read_written
from tests.read.folders import BASE, changed, read

T, C = "course/cases/thigh.yml", "course/course.yml"
Q = "course/questions/cold_time.yml"

DOUBT = "{id: d, when: {heat: none}, no_later_than: acute, text: T, source: [x], strength: expert}"

# One wrong name for each place in the table: file, what stands there, what is put there instead.
WRONG: dict[str, tuple[str, str, str]] = {
    "Case objectives/*": (T, "objectives: [choose]", "objectives: [x]"),
    "Case visits/*/chosen/*/card": (
        T,
        "{card: cold, written: {minutes: 10",
        "{card: x, written: {minutes: 10",
    ),
    "Case visits/*/wrong/*/card": (
        T,
        "{card: cold, written: {minutes: 40",
        "{card: x, written: {minutes: 40",
    ),
    "Case visits/*/screen/set": (T, "set: short", "set: x"),
    "CourseFile lessons/*/file": (C, "{file: cold.md", "{file: x.md"),
    "CourseFile lessons/*/objectives/*": (C, "title: Cold}\ntests", "title: Cold, objectives: [x]}\ntests"),
    "CourseFile practice/*/cases/*": (C, "tests:", "practice: [{id: a, title: A, cases: [x]}]\ntests:"),
    "CourseFile tests/*/cases/*": (C, "cases: [thigh]", "cases: [x]"),
    "CourseFile tests/*/questions/*": (C, "cases: [thigh]", "cases: [thigh]\n    questions: [x]"),
    "CourseFile tests/*/plan/*/objective": (C, "{objective: choose, topic", "{objective: x, topic"),
    "CourseFile requirements/test": (C, "{test: final", "{test: x"),
    "CourseFile requirements/stations/*": (C, "stations: [cooling]", "stations: [x]"),
    "CourseFile agenda/*/objectives/*": (C, "objectives: [choose]}", "objectives: [x]}"),
    "CourseFile boards/*": (C, "agenda:", "boards: [x]\nagenda:"),
    "CourseFile objectives/*/references/*": (C, 'unsafe choice."}', 'unsafe choice.", references: [x]}'),
    "CourseFile positions/@": (C, "agenda:", "positions: {x: None}\nagenda:"),
    "CourseFile references/*": (C, "agenda:", "references: [x]\nagenda:"),
    "Station case": ("course/stations/cooling.yml", "case: thigh", "case: x"),
    "Station criteria/*/objectives/*": (
        "course/stations/cooling.yml",
        "A cloth]",
        "A cloth], objectives: [x]",
    ),
    "Station objectives/*": ("course/stations/cooling.yml", "minutes:", "objectives: [x]\nminutes:"),
    "AuthorQuestion objective": (Q, "objective: choose", "objective: x"),
    "AuthorQuestion source/*": (Q, "[common_practice]", "[x]"),
    "Card baseline/*/source/*": ("content/cards/ask.yml", "[common_practice]", "[x]"),
    "Rule source/*": ("content/rules/numb_cold.yml", "[common_practice]", "[x]"),
    "Rule options/*/cards/*": ("content/rules/numb_cold.yml", "groups: [cooling]", "cards: [x]"),
    "Rule options/*/groups/*": ("content/rules/numb_cold.yml", "groups: [cooling]", "groups: [x]"),
    "FactBook facts/*/excludes/*": (
        "content/facts.yml",
        'label: Numb skin, group: contraindication, worse_when: "yes"',
        'label: Numb skin, group: contraindication, worse_when: "yes", excludes: [x]',
    ),
    "ScreeningBook sets/*/covers/*": ("content/screening.yml", "[fever]", "[fever, x]"),
    "ScreeningBook sets/*/includes/*": ("content/screening.yml", "covers:", "includes: [x], covers:"),
    "SeverityBook tables/*/measure": ("content/severity.yml", "measure: bend", "measure: x"),
    "SeverityBook tables/*/recalled": (
        "content/severity.yml",
        "measure: bend",
        "measure: bend\n    recalled: x",
    ),
    "SeverityBook tables/*/source/*": ("content/severity.yml", "[own_default]", "[x]"),
    "WordingBook source/*": ("content/wording.yml", "\nsource: [common_practice]", "\nsource: [x]"),
    "WordingBook thresholds/*/source/*": (
        "content/wording.yml",
        "value: 1.5, says: It is so., source: [own_default]",
        "value: 1.5, says: It is so., source: [x]",
    ),
    "PhaseBook source/*": ("content/phases.yml", "\nsource: [own_default]", "\nsource: [x]"),
    "PhaseBook clocks/*/source/*": (
        "content/phases.yml",
        "    source: [own_default]\nsigns",
        "    source: [x]\nsigns",
    ),
    "PhaseBook signs/*/source/*": ("content/phases.yml", "    source: [common_practice]", "    source: [x]"),
    "PhaseBook doubt/*/source/*": (
        "content/phases.yml",
        "aims: ",
        f"doubt: [{DOUBT}]\naims: ",
    ),
}


def test_every_place_is_tried() -> None:
    """No row of the table is without its wrong name below."""
    assert {f"{one.model.__name__} {one.pattern}" for one in REFERENCES} == WRONG.keys()


@pytest.mark.parametrize("place", WRONG)
def test_a_name_of_nothing_is_told(place: str, tmp_path: Path) -> None:
    """Each place where a name may stand is held against what it must name."""
    what = next(one.what for one in REFERENCES if f"{one.model.__name__} {one.pattern}" == place)
    reading = changed(tmp_path / "root", *WRONG[place])
    errors = [one for one in reading.found if one.level == "error"]
    assert [one.check for one in errors] == [f"{what.replace(' ', '_')}_unknown"]
    assert "`x" in errors[0].message


def test_the_small_course_fills_most_places() -> None:
    """The names that are sound in the base are really there to be looked up."""
    filled = {
        path
        for name in (T, C)
        for reference in REFERENCES
        for path, _ in select(read_written(BASE / name, name).value, reference.pattern)
    }
    assert len(filled) >= 10
    assert read(BASE).found == []
