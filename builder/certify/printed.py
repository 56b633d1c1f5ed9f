"""What a certificate says: every field that any of the approving bodies we know asks for."""

from __future__ import annotations

from datetime import date

from builder.model.board import BoardRules
from builder.model.course import CourseFile
from builder.model.exact import places
from builder.model.hours import board_hours
from builder.model.records import ClassFolder, Decision, Terms

KEEP = "Keep this certificate for seven years; your board may ask for it."
WARNING = "Giving or using a false certificate can cost a licence."


def printed(terms: Terms, folder: ClassFolder, decision: Decision, issued: date) -> dict[str, str]:
    """The fields of a certificate by column, without whatever is personal."""
    course = terms.course
    return {
        **_course(course),
        **_class(folder),
        **_hours(course, terms.boards),
        "kind": kind(decision),
        "issued": issued.isoformat(),
        "to sign": course.instructor.name,
        "to keep": KEEP,
        "warning": WARNING,
    }


def kind(decision: Decision) -> str:
    """Achievement where a required test was passed, else completion."""
    tests = [one.met for one in decision.requirements if one.kind == "test"]
    return "achievement" if tests and all(tests) else "completion"


def _course(course: CourseFile) -> dict[str, str]:
    return {
        "course": course.title,
        "course number": course.number,
        "provider": course.provider.name,
        "provider number": course.provider.number,
        "provider address": course.provider.address,
        "provider contact": course.provider.contact,
        "subjects": course.subjects,
        "delivery": course.delivery,
        "instructor": course.instructor.name,
        "credentials": course.instructor.credentials,
        "objectives": "; ".join(objective.text.rstrip(".") for objective in course.objectives),
    }


def _class(folder: ClassFolder) -> dict[str, str]:
    taught = folder.taught
    return {
        "first day": min(taught.dates).isoformat(),
        "last day": max(taught.dates).isoformat(),
        "completed": max(taught.dates).isoformat(),
        "place": taught.place,
        "approval number": taught.approval,
    }


def _hours(course: CourseFile, boards: tuple[BoardRules, ...]) -> dict[str, str]:
    first, *others = boards
    return {
        "hours": _amount(course, first),
        "hour unit": first.hour_name,
        "hours by the rules of": first.name,
        "other hours": "; ".join(f"{_amount(course, one)} ({one.hour_name}, {one.name})" for one in others),
    }


def _amount(course: CourseFile, board: BoardRules) -> str:
    return places(board_hours(course.agenda, board).amount, 2)
