"""One practice case as a page: visits that unfold, each decision followed by its reasons."""

from __future__ import annotations

from collections.abc import Callable

from builder.doors.page import markup
from builder.model.practice import PracticeCase, PracticeQuestion, PracticeVisit
from builder.model.site import SitePage
from builder.render.address import of_case
from builder.render.draw.timeline import timelines
from builder.render.maker import Maker


def case_page(made: Maker, case: PracticeCase) -> SitePage:
    """The page of one practice case."""
    return made.page(
        of_case(case.id),
        case.title,
        "case",
        kind="case",
        where=made.say("visit_of", n=1, of=len(case.visits)),
        scripts=("assets/practice.js",),
        reviewed=all(visit.reviewed for visit in case.visits),
        case=case,
        kept=f"caseloom/practice/{made.course.file.id}/{case.id}",
        held={asked.question.id: held(asked) for visit in case.visits for asked in visit.questions},
        timed={visit.id: timed(visit) for visit in case.visits},
        when={visit.id: _when(case, visit) for visit in case.visits},
        timeline=timeline_of(made),
    )


def timeline_of(made: Maker) -> Callable[[PracticeVisit], str]:
    """Draws the timeline of a visit; nothing where it has none."""

    def drawn(visit: PracticeVisit) -> str:
        return markup(timelines(visit.timeline, f"line-{visit.id}", made.say)) if visit.timeline else ""

    return drawn


def held(asked: PracticeQuestion) -> str:
    """What is right of a question, in one line: steps one after another, else whatever may be chosen."""
    titles = {option.id: option.title for option in asked.question.options}
    between = " → " if asked.question.kind == "order" else "; "
    return between.join(titles[one] for one in asked.right)


def _when(case: PracticeCase, visit: PracticeVisit) -> str:
    """What the scene says of client and time, without what the case has said already."""
    return visit.scene.client.removeprefix(case.subtitle).removeprefix(" · ")


def timed(visit: PracticeVisit) -> str:
    """The question after which the timeline is shown: that of the phase, else the last; empty without one."""
    if visit.timeline is None or not visit.questions:
        return ""
    asked = next((one for one in visit.questions if one.topic == "phase"), visit.questions[-1])
    return asked.question.id
