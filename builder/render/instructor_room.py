"""A case for the room: one thing at a time in large type, hands counted, the answer on a key press."""

from __future__ import annotations

from builder.model.practice import Feedback, PracticeCase, PracticeQuestion
from builder.model.site import SitePage
from builder.render.instructor_address import of_room
from builder.render.maker import Maker
from builder.render.student_case import timed, timeline_of


def room_page(made: Maker, case: PracticeCase) -> SitePage:
    """The page that is shown to the whole room; the answers stand in it and are folded until asked for."""
    return made.page(
        of_room(case.id),
        case.title,
        "instructor_room",
        kind="room",
        where=made.say("room"),
        scripts=("assets/room.js",),
        search=False,
        reviewed=all(visit.reviewed for visit in case.visits),
        case=case,
        said_of=said_of,
        timed={visit.id: timed(visit) for visit in case.visits},
        timeline=timeline_of(made),
    )


def said_of(asked: PracticeQuestion) -> dict[str, Feedback]:
    """What is said of each option of a question, by the option's id."""
    return {one.option: one for one in asked.feedback}
