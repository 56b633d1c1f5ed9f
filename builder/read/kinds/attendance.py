"""What does not hold in the list of who came and left when."""

from __future__ import annotations

from functools import partial

from builder.model.kind import Kind, kind

_HEAD = "code,day,arrived,left\n"
_ROW = "QZVNRBLAD,1,2026-05-02T08:55-04:00,2026-05-02T10:05-04:00\n"
_of_attendance = partial(kind, where="classes/may/attendance.csv", good=_HEAD + _ROW)

OF_ATTENDANCE: tuple[Kind, ...] = (
    _of_attendance(
        "sheet_empty",
        "A sheet begins with the names of its columns. Without them no row can be read.",
        bad="\n\n",
    ),
    _of_attendance(
        "sheet_column_missing",
        "Without this column nobody's minutes could be counted.",
        bad=(_HEAD + _ROW).replace(",left", "").replace(",2026-05-02T10:05-04:00", ""),
    ),
    _of_attendance(
        "code_unknown",
        "Minutes are counted for a person in the list. This code belongs to nobody in it.",
        bad=_HEAD + _ROW.replace("QZVNRBLAD", "WSBVCVQMF"),
    ),
    _of_attendance(
        "day_unknown",
        "Minutes are counted for a day of the class. It has no such day.",
        bad=_HEAD + _ROW.replace(",1,", ",2,"),
    ),
    _of_attendance(
        "times_reversed",
        "Nobody leaves before they came. One of the two times is mistyped.",
        bad=_HEAD + _ROW.replace("T10:05", "T08:05"),
    ),
    _of_attendance(
        "wrong_day",
        "The date of a row has to be the date of its day, or the minutes count for a day that was not.",
        bad=_HEAD + _ROW.replace("05-02", "05-03"),
    ),
    _of_attendance(
        "offset_odd",
        "The offset is not the one that this place had on that day. A board may ask why.",
        bad=_HEAD + _ROW.replace("-04:00", "-05:00"),
        level="warning",
    ),
    _of_attendance(
        "times_overlap",
        "Nobody is in a room twice at once. Counted together, the minutes would be too many.",
        bad=_HEAD + _ROW + _ROW.replace("T08:55", "T09:55").replace("T10:05", "T10:30"),
    ),
)
