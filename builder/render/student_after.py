"""After the course: when to come back, with what, and what one set out to change."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import date

from builder.disk import fingerprint
from builder.doors.page import data_block, markup
from builder.model.after import INTERVALS, Interval, Reminder, SpacedSet, uid_of
from builder.model.course import CourseFile
from builder.model.practice import PracticeCase
from builder.model.site import SitePage
from builder.render.address import of_case, published
from builder.render.after_address import AFTER, CHANGES, OWN_SHEET, SCRIPT, of_interval
from builder.render.assets import with_kinds
from builder.render.maker import Maker, all_reviewed
from builder.render.student_own import changes_page, kept_at, own_sheet_page
from builder.render.student_question import SCRIPT as ASKING
from builder.render.student_question import question_part


def after_pages(made: Maker, sets: Sequence[SpacedSet], cases: Mapping[str, PracticeCase]) -> list[SitePage]:
    """Every page for the time after the course; none where nothing is practised."""
    if not sets:
        return []
    spaced = [_spaced_page(made, one, cases) for one in sets]
    return [_first_page(made), *spaced, changes_page(made), own_sheet_page(made)]


def reminders(made: Maker, last: date) -> tuple[Reminder, ...]:
    """The day of each set, counted from the last day of the course."""
    key = _key(made.course.file)
    return tuple(
        Reminder(uid_of(key, last, one), one.after(last), _title(made, one), _text(made, one))
        for one in INTERVALS
    )


def _first_page(made: Maker) -> SitePage:
    return made.page(
        AFTER,
        made.say("after"),
        "after",
        kind="after",
        scripts=(SCRIPT,),
        reviewed=True,
        kept=kept_at(made),
        intervals=[(one, made.say(f"after_{one.id}"), of_interval(one)) for one in INTERVALS],
        changes=CHANGES,
        own_sheet=OWN_SHEET,
        data=_data(made),
    )


def _spaced_page(made: Maker, spaced: SpacedSet, cases: Mapping[str, PracticeCase]) -> SitePage:
    interval = spaced.interval
    return made.page(
        of_interval(interval),
        made.say(f"after_{interval.id}"),
        "spaced",
        kind="spaced",
        scripts=with_kinds((SCRIPT, ASKING)) if spaced.questions else (SCRIPT,),
        reviewed=all_reviewed(made.course),
        kept=kept_at(made),
        interval=interval,
        cases=[(of_case(name), cases[name]) for name in spaced.cases if name in cases],
        questions=[markup(question_part(made, made.course.questions[name])) for name in spaced.questions],
        changes=CHANGES,
        first=AFTER,
    )


def _data(made: Maker) -> str:
    """What the script needs to write the days of any course day into a calendar file."""
    course = made.course.file
    rows = [
        {
            "id": one.id,
            "days": one.days,
            "months": one.months,
            "title": _title(made, one),
            "text": _text(made, one),
        }
        for one in INTERVALS
    ]
    data = {"key": _key(course), "file": f"{course.id}.ics", "language": course.language, "days": rows}
    return data_block(data)


def _key(course: CourseFile) -> str:
    """What keeps the events of this course apart from those of every other."""
    return fingerprint(f"{course.provider.name}\n{course.id}")[:16]


def _title(made: Maker, interval: Interval) -> str:
    return made.say("after_event", course=made.course.file.title, interval=made.say(f"after_{interval.id}"))


def _text(made: Maker, interval: Interval) -> str:
    return made.say("after_event_text", page=published(of_interval(interval)))
