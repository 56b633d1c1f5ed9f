"""The course file: what is taught, to whom, how it is tested, and what the provider answers for."""

from __future__ import annotations

from typing import Literal

from pydantic import Field

from builder.model.noun import Format, Id, Language, Noun, Share, Text, TimeOfDay
from builder.model.plan import EXAMPLE_TEST, CourseTest

AgendaKind = Literal["lecture", "hands_on", "test", "evaluation", "sign_in", "break", "meal", "sales"]


class Provider(Noun):
    """Who offers the course and answers for it."""

    name: Text = Field(description="The provider as it is printed.", examples=["Lanternfall Clinic Courses"])
    number: str = Field(default="", description="Its number, as text.", examples=["LF-0417"])
    address: Text = Field(description="The postal address.", examples=["1 Lantern Lane, Marrowfield"])
    contact: Text = Field(description="How to reach the provider.", examples=["courses@lanternfall.example"])


class Instructor(Noun):
    """Who teaches, with credentials as they are printed."""

    name: Text = Field(description="The name as it is printed.", examples=["Isaura Penhallow"])
    credentials: Text = Field(
        description="Licence and experience, as printed.",
        examples=["Massage therapist; fourteen seasons"],
    )


class Audience(Noun):
    """For whom the course is, and the licence they need."""

    who: Text = Field(
        description="For whom the course is.",
        examples=["Massage therapists with a year of practice"],
    )
    licence: Text = Field(description="The licence it takes.", examples=["Licensed massage therapist"])


class Objective(Noun):
    """What a participant can do afterwards, measurably."""

    id: Id = Field(description="A short name, which cases, lessons and questions use.", examples=["choose"])
    text: Text = Field(
        description="What a participant can do afterwards: a verb that can be seen, under what condition.",
        examples=["Choose techniques that fit the phase of healing."],
    )
    references: tuple[Id, ...] = Field(
        default=(), description="What is taught for it rests on these.", examples=[["ryan1991"]]
    )


class AgendaItem(Noun):
    """One stretch of the timed agenda."""

    day: int = Field(ge=1, description="The day it is on, from 1.", examples=[1])
    start: TimeOfDay = Field(description="When it begins, in quotes.", examples=["09:00"])
    end: TimeOfDay = Field(description="When it ends, in quotes.", examples=["10:30"])
    title: Text = Field(description="What happens.", examples=["How soft tissue heals"])
    kind: AgendaKind = Field(
        description="What sort of time it is; a board counts some sorts as hours.", examples=["lecture"]
    )
    objectives: tuple[Id, ...] = Field(default=(), description="What it serves.", examples=[["phase"]])


class PracticeSet(Noun):
    """Cases to practise on, with reasons after every answer."""

    id: Id = Field(description="A short name.", examples=["rounds"])
    title: Text = Field(description="The set as it is headed.", examples=["Rounds in the clinic wagon"])
    cases: tuple[Id, ...] = Field(
        min_length=1, description="The cases in it, in order.", examples=[["unicycle_thigh", "stilt_ankle"]]
    )


class Lesson(Noun):
    """One teaching page: its file in `lessons/`, its title, and the objectives it serves."""

    file: Text = Field(description="Its file in `lessons/`.", examples=["phases.md"])
    title: Text = Field(description="The lesson as it is headed.", examples=["Healing phases"])
    objectives: tuple[Id, ...] = Field(default=(), description="What it serves.", examples=[["phase"]])


class Requirements(Noun):
    """What a participant must meet for a certificate."""

    test: Id = Field(description="The test that must be passed.", examples=["final"])
    stations: tuple[Id, ...] = Field(
        default=(), description="The stations that must be passed.", examples=[["friction_station"]]
    )
    attendance: Share = Field(
        description="The share of the counted minutes a participant must be there.", examples=["90 %"]
    )


class CourseFile(Noun):
    """`course.yml`."""

    format: Format
    id: Id = Field(
        description="A short name for the course; it stands in the record for good.",
        examples=["healing_phases"],
    )
    title: Text = Field(description="The course as it is headed.", examples=["Soft Tissue by Phase"])
    number: str = Field(
        default="", description="The course's number with the approving body, as text.", examples=["LF-CE-02"]
    )
    language: Language = Field(
        default="en",
        description="The language, as a tag; the words around the course are taken from its words file.",
        examples=["en"],
    )
    level: Text = Field(description="The level, as boards ask for it.", examples=["Intermediate"])
    provider: Provider = Field(
        description="The provider, who answers for the course.",
        examples=[{"name": "Lanternfall", "address": "1 Lantern Lane", "contact": "hi@lanternfall.example"}],
    )
    instructor: Instructor = Field(
        description="Who teaches.",
        examples=[{"name": "Isaura Penhallow", "credentials": "Licensed massage therapist"}],
    )
    audience: Audience = Field(
        description="For whom it is.",
        examples=[{"who": "Massage therapists", "licence": "Licensed massage therapist"}],
    )
    description: Text = Field(
        description="What it is about, in a few sentences.",
        examples=["Two days on bruised tissue."],
    )
    subjects: Text = Field(
        description="The subjects, as boards ask for them.", examples=["Soft-tissue injuries; client safety"]
    )
    delivery: Text = Field(
        description="Live, home study or webinar, as boards ask.",
        examples=["Live, two days, with hands-on practice"],
    )
    objectives: tuple[Objective, ...] = Field(
        min_length=1,
        description="What a participant can do afterwards.",
        examples=[[{"id": "phase", "text": "Name the phase of healing."}]],
    )
    lessons: tuple[Lesson, ...] = Field(
        default=(),
        description="The teaching pages, in order.",
        examples=[[{"file": "phases.md", "title": "Healing phases"}]],
    )
    practice: tuple[PracticeSet, ...] = Field(
        default=(),
        description="Sets of cases to practise on, with reasons after every answer.",
        examples=[[{"id": "rounds", "title": "Rounds", "cases": ["unicycle_thigh"]}]],
    )
    tests: tuple[CourseTest, ...] = Field(
        default=(), description="The tests that count.", examples=[[EXAMPLE_TEST]]
    )
    requirements: Requirements = Field(
        description="What it takes to get a certificate.",
        examples=[{"test": "final", "attendance": "90 %"}],
    )
    agenda: tuple[AgendaItem, ...] = Field(
        default=(),
        description="The timed agenda, day by day.",
        examples=[
            [{"day": 1, "start": "09:00", "end": "10:30", "title": "How tissue heals", "kind": "lecture"}]
        ],
    )
    boards: tuple[Id, ...] = Field(
        default=("generic",), description="The approving bodies whose rules hold.", examples=[["generic"]]
    )
    positions: dict[Id, Text] = Field(
        default_factory=dict,
        description="The course's own side on contested points.",
        examples=[{"cold_heals": "Cold is for short relief."}],
    )
    policies: dict[Id, Text] = Field(
        default_factory=dict,
        description="The course's policies, each by a short name.",
        examples=[{"refund": "Paid back within 14 days."}],
    )
    disclosures: Text = Field(
        description="Ties to makers or sellers, and what the course lives from.",
        examples=["The provider lives from course fees."],
    )
    references: tuple[Id, ...] = Field(
        default=(), description="What the course rests on, as printed at its end.", examples=[["ryan1991"]]
    )


class SiteConfig(Noun):
    """`site_config.yml`: look and defaults of a provider's site."""

    format: Format
    caution: Text = Field(
        description="What stands at the foot of every page.",
        examples=["This is not medical advice."],
    )
    short_caution: Text = Field(
        description="The same in one line, for sheets.", examples=["Education, not medical advice."]
    )
    unreviewed: Text = Field(
        description="What stands beside everything that no clinician has signed.",
        examples=["Not yet reviewed by a clinician."],
    )
    colours: dict[Literal["light", "dark"], dict[Id, str]] = Field(
        description="The colours of the light and the dark look.",
        examples=[{"light": {"paper": "#faf6ee"}, "dark": {"paper": "#1c1a17"}}],
    )
