"""An invented class for tests: course, keys, people, and answer sheets as bytes."""

from __future__ import annotations

import json
from collections.abc import Mapping
from datetime import UTC, date, datetime, time
from fractions import Fraction

from builder.model.answers import AnswerSheet
from builder.model.board import BoardRules
from builder.model.code import ALPHABET, LENGTH, check_character
from builder.model.course import AgendaItem, CourseFile
from builder.model.handed import checksum
from builder.model.key import Key, KeyAnswer, KeyRing
from builder.model.marking import Marked
from builder.model.records import ClassFolder, Terms
from builder.model.station import AutomaticFail, Criterion, Station, StationSheet
from builder.model.taught import Participant, Presence, TaughtClass

NOW = datetime(2026, 6, 9, 12, 0, tzinfo=UTC)
VERSIONS = "AB"
OPTIONS = ("o1", "o2", "o3", "o4")
RIGHT = "o1"

Value = str | list[str] | None

COURSE = CourseFile.model_validate(
    {
        "format": 1,
        "id": "falls",
        "title": "Falls and Landings",
        "number": "C-17",
        "level": "Second course",
        "provider": {
            "name": "Lanternfall Clinic",
            "number": "P-0042",
            "address": "Wagon 3",
            "contact": "clinic@lanternfall.example",
        },
        "instructor": {"name": "Odile Marrow", "credentials": "LMT"},
        "audience": {"who": "Massage therapists", "licence": "massage"},
        "description": "Injuries of a circus, by phase.",
        "subjects": "Soft-tissue injury",
        "delivery": "Live",
        "objectives": [{"id": "phase", "text": "Name the phase"}, {"id": "dose", "text": "Choose the dose"}],
        "tests": [
            {
                "id": "final",
                "title": "Final test",
                "cases": ["a"],
                "plan": [{"objective": "phase", "topic": "phase", "count": 1}],
                "seed": "lantern",
                "pass_mark": "70 %",
            }
        ],
        "requirements": {"test": "final", "stations": ["wrap"], "attendance": "90 %"},
        "disclosures": "None",
    }
)

BOARD = BoardRules(
    format=1,
    id="generic",
    name="Generic rules",
    dated=date(2026, 1, 1),
    source="own default",
    minutes_in_hour=50,
    hour_name="hours of 50 minutes",
    counted=("lecture", "hands_on", "test"),
    attendance_floor=Fraction(1, 2),
    note="For tests.",
)

STATION = Station(
    format=1,
    id="wrap",
    title="A wrap",
    case="a",
    visit="v1",
    minutes=8,
    participant="Wrap it.",
    practice_client="Sit.",
    examiner="Watch.",
    criteria=(
        Criterion(id="toes", title="Starts at the toes", levels=("no", "yes"), weight=3),
        Criterion(id="overlap", title="Overlap", levels=("no", "partly", "yes")),
    ),
    automatic_fails=(AutomaticFail(id="numb", seen="Went on though the toes were numb."),),
    pass_mark=Fraction(3, 4),
)


def agenda_of(*rows: tuple[int, str, str, str]) -> tuple[AgendaItem, ...]:
    """An agenda from rows of day, start, end and kind."""
    return tuple(
        AgendaItem.model_validate({"day": day, "start": start, "end": end, "title": kind, "kind": kind})
        for day, start, end, kind in rows
    )


AGENDA = agenda_of(
    (1, "09:00", "12:00", "lecture"), (1, "12:00", "13:00", "meal"), (1, "13:00", "15:00", "hands_on")
)


def terms(agenda: tuple[AgendaItem, ...] = AGENDA, **changed: object) -> Terms:
    """The terms of the invented course, with some of its fields changed."""
    course = COURSE.model_copy(update={"agenda": agenda, **changed})
    return Terms(course=course, boards=(BOARD,), stations=(STATION,))


def code_for(number: int, version: str = "A") -> str:
    """A personal code of a version, another for every number."""
    letters = []
    for _ in range(LENGTH - 1):
        number, digit = divmod(number, len(ALPHABET))
        letters.append(ALPHABET[digit])
    body = "".join(letters) + ALPHABET[VERSIONS.index(version)]
    return body + check_character(body)


def key_answer(question: str, **changed: object) -> KeyAnswer:
    """The key of one question: the first option is right, the question is no must-pass one."""
    plain: dict[str, object] = {
        "question": question,
        "kind": "one",
        "right": (RIGHT,),
        "options": OPTIONS,
        "policy": "plus_minus",
        "must_pass": False,
        "objective": "phase",
        "topic": "phase",
        "case": "a",
        "visit": "v1",
        "reasons": {},
    }
    return KeyAnswer.model_validate({**plain, **changed})


def ring(questions: int = 10, must_pass: int = 1, **changed: object) -> KeyRing:
    """A key ring of two versions, whose first questions must be right."""
    keys = tuple(
        Key(
            test="final",
            version=version,
            answers=tuple(
                key_answer(f"{version.lower()}{at}", must_pass=at <= must_pass)
                for at in range(1, questions + 1)
            ),
        )
        for version in VERSIONS
    )
    plain: dict[str, object] = {
        "test": "final",
        "edition": "k7q2m9xa",
        "key_edition": "first",
        "pass_mark": "70 %",
        "tries": 2,
        "keys": keys,
    }
    return KeyRing.model_validate({**plain, **changed})


RUBRIC = {
    "asked": "What do you tell her?",
    "example": "I do not work on it today.",
    "criteria": (
        {"id": "stops", "title": "Stops", "levels": ("No", "In part", "Yes"), "weight": 2},
        {"id": "plain", "title": "Speaks plainly", "levels": ("No", "Yes")},
    ),
}


def written_answer(question: str, **changed: object) -> KeyAnswer:
    """The key of a question that is answered in words, called `tell_her` by its author."""
    plain = {"kind": "text", "right": (), "options": (), "policy": "rubric", "rubric": RUBRIC}
    return key_answer(question, **plain, case="", visit="", topic="written", written="tell_her", **changed)


def marked(code: str, answer: str, **levels: int) -> tuple[Marked, ...]:
    """What a person marked of the answer to `tell_her` in the final test."""
    place = {"code": code, "test": "final", "question": "tell_her", "by": "Ansel Fathom", "answer": answer}
    return tuple(
        Marked.model_validate({**place, "criterion": one, "level": at}) for one, at in levels.items()
    )


def person(number: int, *versions: str, name: str = "") -> Participant:
    """A participant with one code for each version named, by default one of version A."""
    codes = tuple(code_for(100 * number + at, version) for at, version in enumerate(versions or ("A",)))
    return Participant(name=name or f"Person {number}", licence=f"00{number}", codes=codes)


def folder(*people: Participant, **changed: object) -> ClassFolder:
    """The spring class with these people, all present, all through the station."""
    taught = TaughtClass(
        format=1,
        id="spring",
        title="Spring",
        dates=(date(2026, 6, 6),),
        zone="America/New_York",
        place="The big tent",
    )
    whole = ClassFolder(
        course="falls",
        taught=taught,
        participants=people,
        presences=tuple(presence(one) for one in people),
        station_sheets=tuple(station_sheet(one) for one in people),
    )
    return whole.model_copy(update=changed)


def presence(one: Participant, arrived: str = "08:55", left: str = "15:00") -> Presence:
    """One day's presence, in the class's own time."""
    day = date(2026, 6, 6)
    return Presence(
        code=one.code,
        day=1,
        arrived=datetime.combine(day, time.fromisoformat(arrived)),
        left=datetime.combine(day, time.fromisoformat(left)),
    )


def station_sheet(one: Participant, *seen: str, **marked: int) -> StationSheet:
    """An examiner's sheet, with full points unless other ones are given."""
    return StationSheet(
        format=1,
        station="wrap",
        code=one.code,
        examiner="Ansel Fathom",
        marked=marked or {"toes": 1, "overlap": 2},
        seen=seen,
    )


def answers(version: str = "A", questions: int = 10, wrong: int = 0) -> dict[str, Value]:
    """Answers to every question, the last ones wrong."""
    return {
        f"{version.lower()}{at}": RIGHT if at <= questions - wrong else "o2" for at in range(1, questions + 1)
    }


def sheet_bytes(code: str, given: Mapping[str, Value], /, **changed: object) -> bytes:
    """An answer sheet as the site hands it over, its checksum fitting unless one is given."""
    version = VERSIONS[ALPHABET.index(code[LENGTH - 1]) % len(VERSIONS)]
    plain: dict[str, object] = {
        "format": "caseloom/answers/1",
        "sheet": f"{ALPHABET.index(code[0]):032x}",
        "rev": 1,
        "edition": "k7q2m9xa",
        "test": "final",
        "version": version,
        "class": "spring",
        "code": code,
        "started": "2026-06-06T15:02:11-04:00",
        "finished": "2026-06-06T15:41:55-04:00",
        "zone": "America/New_York",
        "answers": [
            {"q": q, "kind": "many" if isinstance(value, list) else "one", "value": value}
            for q, value in given.items()
        ],
        "crc32": "00000000",
    }
    made = {**plain, **changed}
    if "crc32" not in changed:
        made["crc32"] = checksum(AnswerSheet.model_validate(made))
    return json.dumps(made, indent=1).encode("utf-8")


GOLDEN_DAY = agenda_of(
    (1, "08:00", "08:15", "sign_in"),
    (1, "08:15", "08:30", "test"),
    (1, "08:30", "10:00", "lecture"),
    (1, "10:00", "10:15", "break"),
    (1, "10:15", "12:15", "hands_on"),
    (1, "12:15", "13:15", "meal"),
    (1, "13:15", "15:00", "hands_on"),
    (1, "15:00", "15:15", "break"),
    (1, "15:15", "16:45", "hands_on"),
    (1, "16:45", "17:00", "evaluation"),
)
