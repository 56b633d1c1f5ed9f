"""A case for the room: one thing at a time in large type, hands counted, the answer on a key press."""

from __future__ import annotations

from builder.doors.page import markup
from builder.model.practice import Feedback, PracticeCase, PracticeQuestion, PracticeVisit
from builder.model.site import SitePage
from builder.render.draw.timeline import timelines
from builder.render.instructor_address import of_room
from builder.render.maker import Maker


def room_page(made: Maker, case: PracticeCase) -> SitePage:
    """The page that is shown to the whole room; the answers stand in it and are folded until asked for."""

    def timeline(visit: PracticeVisit) -> str:
        return markup(timelines(visit.timeline, f"line-{visit.id}", made.say)) if visit.timeline else ""

    return made.page(
        of_room(case.id),
        case.title,
        "instructor_room",
        kind="room",
        where=made.say("room"),
        scripts=("assets/room.js",),
        search=False,
        reviewed=all(asked.reviewed for visit in case.visits for asked in visit.questions),
        case=case,
        said_of=said_of,
        timed={visit.id: timed_after(visit) for visit in case.visits},
        timeline=timeline,
    )


def said_of(asked: PracticeQuestion) -> dict[str, Feedback]:
    """What is said of each option of a question, by the option's id."""
    return {one.option: one for one in asked.feedback}


def timed_after(visit: PracticeVisit) -> str:
    """The question after which the timeline is shown: that of the phase; empty without one."""
    asked = (one.question.id for one in visit.questions if one.topic == "phase")
    return next(asked, "") if visit.timeline else ""
