"""The course file: what is taught, to whom, how it is tested, and what the provider answers for."""

from __future__ import annotations

from datetime import date
from typing import Literal

from pydantic import Field

from builder.model.noun import Format, Id, Noun, Share, Text, TimeOfDay

QuestionTopic = Literal["session", "phase", "option", "dose"]
TOPICS: tuple[QuestionTopic, ...] = ("session", "phase", "option", "dose")


class Provider(Noun):
    """Who offers the course and answers for it."""

    name: Text
    number: str = Field(default="", description="The provider or approval number, as text.")
    address: Text
    contact: Text


class Instructor(Noun):
    """Who teaches, with credentials as they are printed."""

    name: Text
    credentials: Text


class Audience(Noun):
    """For whom the course is, and the licence they need."""

    who: Text
    licence: Text


class Objective(Noun):
    """What a participant can do afterwards, measurably."""

    id: Id
    text: Text


class AgendaItem(Noun):
    """One stretch of the timed agenda."""

    day: int = Field(ge=1)
    start: TimeOfDay
    end: TimeOfDay
    title: Text
    kind: Literal["lecture", "hands_on", "test", "break", "meal"]
    objectives: tuple[Id, ...] = ()


class PlanRow(Noun):
    """How many questions of one topic a version draws for one objective."""

    objective: Id
    topic: QuestionTopic
    count: int = Field(ge=1, le=50)
    must_pass: bool = Field(default=False, description="Each of these must be right, whatever the total.")


class CourseTest(Noun):
    """A test that counts: its pool of cases, its plan, its versions and its pass rules."""

    id: Id
    title: Text
    cases: tuple[Id, ...] = Field(min_length=1, description="The pool: cases that appear nowhere else.")
    plan: tuple[PlanRow, ...] = Field(min_length=1)
    versions: int = Field(default=2, ge=1, le=6)
    seed: Text = Field(description="Any words; the draw of every version follows from them.")
    pass_mark: Share
    many_policy: Literal["exact", "plus_minus"] = "plus_minus"
    tries: int = Field(default=2, ge=1, le=9)


class PracticeSet(Noun):
    """Cases to practise on, with reasons after every answer."""

    id: Id
    title: Text
    cases: tuple[Id, ...] = Field(min_length=1)


class Lesson(Noun):
    """One teaching page: its file in `lessons/`, its title, and the objectives it serves."""

    file: Text
    title: Text
    objectives: tuple[Id, ...] = ()


class Requirements(Noun):
    """What a participant must meet for a certificate."""

    test: Id
    stations: tuple[Id, ...] = ()
    attendance: Share


class CourseFile(Noun):
    """`course.yml`."""

    format: Format
    id: Id
    title: Text
    number: str = ""
    language: str = "en"
    level: Text
    provider: Provider
    instructor: Instructor
    audience: Audience
    description: Text
    subjects: Text
    delivery: Text = Field(description="Live, home study or webinar, as boards ask.")
    objectives: tuple[Objective, ...] = Field(min_length=1)
    lessons: tuple[Lesson, ...] = ()
    practice: tuple[PracticeSet, ...] = ()
    tests: tuple[CourseTest, ...] = ()
    requirements: Requirements
    agenda: tuple[AgendaItem, ...] = ()
    boards: tuple[Id, ...] = ("generic",)
    positions: dict[Id, Text] = Field(
        default_factory=dict, description="The course's own side on contested points."
    )
    policies: dict[Id, Text] = Field(default_factory=dict)
    disclosures: Text
    references: tuple[Id, ...] = ()


class BoardRules(Noun):
    """One approving body's rules, as far as hours and attendance need them: dated, with their source."""

    format: Format
    id: Id
    name: Text
    dated: date
    source: Text
    minutes_in_hour: int = Field(ge=1, le=60)
    hour_name: Text
    counted: tuple[Literal["lecture", "hands_on", "test", "break", "meal"], ...]
    attendance_floor: Share
    note: Text


class SiteConfig(Noun):
    """`site_config.yml`: look and defaults of a provider's site."""

    format: Format
    caution: Text
    short_caution: Text
    unreviewed: Text
    colours: dict[Literal["light", "dark"], dict[Id, str]]
