"""Where each policy of a course is owed in print; its one text stands in `course.yml`.

Bodies that approve courses ask that participants can read policies beforehand (start page, flyer) and on the
day (handout, station, sign-in, certificate). Which of them belong where: common practice, no source.
"""

from __future__ import annotations

from typing import Literal

from builder.model.course import CourseFile

Where = Literal["start", "handout", "station", "practice_client", "flyer", "sign_in", "test", "certificate"]
OWED: dict[Where, tuple[str, ...]] = {
    "station": ("practice_clients", "second_try", "accommodation", "complaints"),
    "practice_client": ("practice_clients", "complaints"),
    "flyer": (
        "registration",
        "payment",
        "cancellation",
        "refund",
        "weather",
        "attendance",
        "complaints",
        "accommodation",
        "fairness",
    ),
    "test": ("second_try", "accommodation", "complaints"),
    "sign_in": ("attendance", "privacy"),
    "certificate": ("attendance",),
}


def policies_at(course: CourseFile, where: Where) -> dict[str, str]:
    """By how it is headed, the text of each policy that is owed there; where nothing is set apart, of all."""
    owed = OWED.get(where, tuple(course.policies))
    return {title_of(name): course.policies[name] for name in owed if name in course.policies}


def title_of(name: str) -> str:
    """How a policy is headed."""
    return name.replace("_", " ").capitalize()
