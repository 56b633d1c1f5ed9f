"""A tested case may be shown nowhere else."""

from dataclasses import replace

from builder.check.checks.pool_case_shown import check
from builder.check.evidence import Evidence, diagnostic
from builder.model.library import Course
from builder.model.station import Station
from builder.place import Place, Places
from tests.check.leak.site import COURSE

STATION = {
    "format": 1,
    "id": "friction",
    "title": "T",
    "case": "beta",
    "visit": "v1",
    "minutes": 8,
    "participant": "P",
    "practice_client": "C",
    "examiner": "E",
    "criteria": [{"id": "one", "title": "T", "levels": ["no", "yes"]}],
    "automatic_fails": [{"id": "hurt", "seen": "S"}],
    "pass_mark": "75 %",
}


def found(course: Course) -> list[tuple[str, int]]:
    """File and line of everything found."""
    evidence = Evidence(course, {})
    places = [diagnostic(evidence, "pool_case_shown", "error", one).place for one in check(evidence)]
    return [(place.file, place.line) for place in places]


def test_a_case_apart_is_silent() -> None:
    """Pool and practice that share nothing are fine."""
    assert found(COURSE) == []


def test_a_case_that_is_practised_too_is_found_in_its_set() -> None:
    """The place is the entry of the practice set."""
    both = COURSE.file.practice[0].model_copy(update={"cases": ("practised", "beta")})
    file = COURSE.file.model_copy(update={"practice": (both,)})
    entry = Place("course.yml", 22, 29)
    places = {"course.yml": Places(Place("course.yml"), {("practice", 0, "cases", 1): entry})}
    assert found(replace(COURSE, file=file, places=places)) == [("course.yml", 22)]


def test_a_case_that_a_lesson_places_is_found_at_its_line() -> None:
    """The tag is found; the same word in a sentence is not one."""
    text = "The beta wave.\n\n[case practised]\n\n[case beta]\n"
    assert found(replace(COURSE, lessons={"first": text})) == [("lessons/first.md", 5)]


def test_a_case_on_a_station_is_found() -> None:
    """What an examiner reads out is no longer a test."""
    station = Station.model_validate(STATION)
    assert found(replace(COURSE, stations={"friction": station})) == [("stations/friction.yml", 1)]
