"""A practical station: what each person in it is told, how it is marked, and the sheet to mark it on."""

from __future__ import annotations

from builder.model.exact import percent
from builder.model.matrix import objectives_of_station
from builder.model.owed import policies_at
from builder.model.site import SitePage
from builder.model.station import Station
from builder.render.instructor_address import of_handouts, of_sheet, of_station, of_visit
from builder.render.instructor_found import client_line, found, screened, when_line
from builder.render.maker import Maker, all_reviewed


def station_pages(made: Maker, station: Station) -> list[SitePage]:
    """The page of a station, what is handed out in it, and its check-off sheet."""
    values: dict[str, object] = {"station": station, "pass_mark": percent(station.pass_mark)}
    values |= {"most": most_points(station), "needed": points_needed(station)}
    values["widest"] = max(len(one.levels) for one in station.criteria)
    values |= {
        "page": of_station(station.id),
        "sheet": of_sheet(station.id),
        "handouts": of_handouts(station.id),
    }
    values["policies"] = policies_at(made.course.file, "station")
    values["client_policies"] = policies_at(made.course.file, "practice_client")
    values |= {"reviewed": all_reviewed(made.course), **_visit(made, station)}
    given, marked = (made.say(f"i_{name}_of", station=station.title) for name in ("handouts", "sheet"))
    return [
        made.page(of_station(station.id), station.title, "instructor_station", kind="station", **values),
        made.page(of_handouts(station.id), given, "instructor_handouts", kind="handouts", **values),
        made.page(of_sheet(station.id), marked, "instructor_sheet", kind="sheet", **values),
    ]


def most_points(station: Station) -> int:
    """The points of a station when everything is done at the highest level."""
    return sum(one.weight * (len(one.levels) - 1) for one in station.criteria)


def points_needed(station: Station) -> int:
    """The fewest whole points that reach the pass mark exactly."""
    return -(-station.pass_mark * most_points(station) // 1)


def _visit(made: Maker, station: Station) -> dict[str, object]:
    """The board of the station's visit, as the participant and the practice client see it."""
    case = made.course.cases[station.case]
    visit = next(one for one in case.visits if one.id == station.visit)
    texts = {one.id: one.text for one in made.course.file.objectives}
    return {
        "who": client_line(made, case),
        "when": when_line(made, visit),
        "story": visit.story or "",
        "mechanism": case.mechanism,
        "found": found(made, case, visit),
        "screened": screened(made, visit),
        "objectives": [texts.get(one, one) for one in objectives_of_station(made.course, station)],
        "visit": of_visit(case.id, visit.id),
        "visit_title": f"{case.title}, {visit.title}",
    }
