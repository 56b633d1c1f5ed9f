"""What does not hold in a class: its days, and what its examiners marked."""

from __future__ import annotations

from functools import partial

from builder.model.kind import Kind, kind
from builder.read.kinds.syntax import CLASS, OF_THE_CLASS

_of_class = partial(kind, where=CLASS, good=OF_THE_CLASS)
_MARKED = """
format: 1
station: cooling
code: %s
examiner: Tamsin Oakfell
marked: {%s}
seen: [%s]
"""
_of_sheet = partial(
    kind, where="classes/may/stations/vantornel.yml", good=_MARKED % ("QZVNRBLAD", "cloth: 1", "bare_skin")
)
_TWO_DAYS = """
agenda:
  - {day: 1, start: 09:00, end: 10:00, title: Cold, kind: lecture, objectives: [choose]}
  - {day: %s, start: 10:00, end: 11:00, title: Wraps, kind: hands_on, objectives: [choose]}
"""

OF_CLASSES: tuple[Kind, ...] = (
    _of_class(
        "dates_order",
        "The days of a class are numbered as they stand. Out of order, attendance would count for "
        "another day.",
        bad=OF_THE_CLASS.replace("[2026-05-02]", "[2026-05-02, 2026-05-01]"),
    ),
    kind(
        "class_days",
        "Every day of the agenda needs a date, or its minutes cannot be attended.",
        "course.yml",
        bad=_TWO_DAYS % 2,
        good=_TWO_DAYS % 1,
    ),
    _of_class(
        "zone_unknown",
        "Times are proven by the zone's name, since offsets change with the season.",
        bad=OF_THE_CLASS.replace("New_York", "New_Yrok"),
    ),
    _of_sheet(
        "criterion_unknown",
        "A mark under a name that the station does not have would be lost.",
        bad=_MARKED % ("QZVNRBLAD", "cloth: 1, clothh: 1", "bare_skin"),
    ),
    _of_sheet(
        "level_unknown",
        "Each level of a criterion is described. A mark outside them was seen by nobody.",
        bad=_MARKED % ("QZVNRBLAD", "cloth: 5", "bare_skin"),
    ),
    _of_sheet(
        "criterion_not_marked",
        "What is not marked earns nothing. If it was seen, the participant loses points by a slip.",
        bad=_MARKED % ("QZVNRBLAD", "", "bare_skin"),
        level="warning",
    ),
    _of_sheet(
        "automatic_fail_unknown",
        "An automatic fail decides over a person. It has to be one that the station names.",
        bad=_MARKED % ("QZVNRBLAD", "cloth: 1", "bare_skn"),
    ),
)
