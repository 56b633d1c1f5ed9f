"""The rules of one approving body: dated, with their source, and with what of them could not be read."""

from __future__ import annotations

from decimal import Decimal
from typing import Literal, Self

from pydantic import Field, model_validator

from builder.model.course import AgendaKind
from builder.model.noun import Day, Format, Id, Noun, Share, Text, Truth

CourseType = Literal["live", "webinar", "home_study"]
CertificateField = Literal[
    "name",
    "licence number",
    "course",
    "course number",
    "provider",
    "provider number",
    "provider address",
    "provider contact",
    "completed",
    "first day",
    "last day",
    "place",
    "hours",
    "subjects",
    "delivery",
    "kind",
    "instructor",
    "credentials",
    "objectives",
    "to sign",
    "to keep",
    "warning",
]
ListColumn = Literal[
    "licence number",
    "name on licence",
    "name",
    "state",
    "course",
    "course number",
    "completed",
    "hours",
    "certificate",
    "instructor",
]


class HourRules(Noun):
    """What one hour of a body is, and what of an agenda counts towards it."""

    minutes_in_hour: int = Field(ge=1, le=60, description="Minutes of one of its hours.", examples=[50])
    hour_name: Text = Field(description="What it calls an hour, as printed.", examples=["contact hours"])
    counted: tuple[AgendaKind, ...] = Field(
        description="The sorts of agenda time that it counts.", examples=[["lecture", "hands_on", "test"]]
    )
    break_minutes_in_hour: int = Field(
        default=0,
        ge=0,
        le=30,
        description="Of `break` under `counted`: how many minutes of each hour may be break; 0 for all.",
        examples=[10],
    )
    clock_hours_at_most: Truth = Field(
        default=False,
        description="Whether a day can never give more hours than the clock shows, counted time and breaks.",
        examples=["yes"],
    )
    most_in_day: Decimal | None = Field(
        default=None, gt=0, description="The most hours that one day can give.", examples=[7]
    )
    hours_in_unit: int = Field(
        default=1,
        ge=1,
        description="How many of its hours make one of the units that are printed.",
        examples=[10],
    )
    step: Decimal = Field(
        default=Decimal("0.01"), gt=0, description="To which step amounts are rounded.", examples=["0.25"]
    )
    rounded: Literal["down", "nearest"] = Field(
        default="down",
        description="Whether a rest is dropped, or the nearest step is taken.",
        examples=["down"],
    )
    least: Decimal = Field(
        default=Decimal(0), ge=0, description="Under this amount it gives nothing.", examples=["0.1"]
    )
    never_called: tuple[Text, ...] = Field(
        default=(), description="Words for its hours that it forbids.", examples=[["CEU"]]
    )
    semester_hours: int | None = Field(
        default=None, ge=1, description="Its hours for one semester credit of a college.", examples=[15]
    )
    quarter_hours: int | None = Field(
        default=None, ge=1, description="Its hours for one quarter credit of a college.", examples=[10]
    )


class BoardRules(HourRules):
    """One approving body's rules, as far as they could be read."""

    format: Format
    id: Id = Field(description="A short name, the same as the name of its file.", examples=["generic"])
    name: Text = Field(description="The body as printed.", examples=["Board of the Marrowfield Guild"])
    dated: Day = Field(description="The day on which its rules were read.", examples=["2026-11-25"])
    source: Text = Field(
        description="Where its rules stand: the document and its section.",
        examples=["Education rules, section 4"],
    )
    not_seen: Text | None = Field(
        default=None,
        description="What of its rules could not be read, and what stands here instead.",
        examples=["How long records are kept; seven years are assumed."],
    )
    attendance_floor: Share = Field(
        description="The share of the counted minutes below which it gives no hours.", examples=["90 %"]
    )
    hands_on_share: Share | None = Field(
        default=None,
        description="The share of the counted minutes that must be hands-on work.",
        examples=["75 %"],
    )
    course_types: tuple[CourseType, ...] = Field(
        default=("live",), description="The types of course it accepts.", examples=[["live", "webinar"]]
    )
    home_study_limit: Text | None = Field(
        default=None,
        description="How much of what a licensee needs may come from a distance, as it says.",
        examples=["At most 12 hours of a period."],
    )
    pass_mark: Share | None = Field(
        default=None,
        description="The least share of a test that passes, where it sets one.",
        examples=["70 %"],
    )
    retake_limit: int | None = Field(
        default=None, ge=1, description="How often a test may be taken, where it says so.", examples=[3]
    )
    retake_cap: Share | None = Field(
        default=None,
        description="The most that a repeated test can give, where it says so.",
        examples=["77 %"],
    )
    certificate: tuple[CertificateField, ...] = Field(
        default=(),
        description="What a certificate must say, by the columns of the certificate list.",
        examples=[["name", "licence number", "course", "hours"]],
    )
    certificate_days: int | None = Field(
        default=None,
        ge=0,
        description="Days from completion until a certificate must be handed over; 0 for the same day.",
        examples=[0],
    )
    list_columns: tuple[ListColumn, ...] = Field(
        default=(),
        description="The columns of the list of participants that it wants.",
        examples=[["licence number", "name on licence", "completed"]],
    )
    report_days: int | None = Field(
        default=None, ge=1, description="Days from completion until that list is due.", examples=[7]
    )
    keep_years: int | None = Field(
        default=None,
        ge=1,
        description="Years for which records are kept from the end of a course.",
        examples=[6],
    )
    change_days: int | None = Field(
        default=None, ge=1, description="Days within which a change of a course is reported.", examples=[30]
    )
    approval_years: int | None = Field(
        default=None, ge=1, description="For how many years an approval holds.", examples=[3]
    )
    lead_days: int | None = Field(
        default=None, ge=1, description="Days before a course by which it must be sent in.", examples=[60]
    )
    policies: tuple[Id, ...] = Field(
        default=(),
        description="The policies it asks to see, by the short names that courses use.",
        examples=[["refund", "cancellation"]],
    )
    note: Text = Field(
        description="What else has to be known when its rules are used.",
        examples=["Check the living rule first."],
    )

    @model_validator(mode="after")
    def _breaks_are_counted(self) -> Self:
        if self.break_minutes_in_hour and "break" not in self.counted:
            raise ValueError("`break_minutes_in_hour` needs `break` under `counted`")
        if "meal" in self.counted and "break" not in self.counted:
            raise ValueError("a meal that counts where a break does not is hardly meant: see `counted`")
        return self
