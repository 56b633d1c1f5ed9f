"""Fingerprints of parsed, normalised values: what an answer rests on, whatever its files look like."""

from __future__ import annotations

from collections.abc import Mapping
from collections.abc import Set as AbstractSet
from dataclasses import dataclass, fields, is_dataclass

from builder.doors.cache import digest
from builder.doors.tool import tool_fingerprint
from builder.model.library import Content, Course
from builder.model.noun import Noun
from builder.place import Places


@dataclass(frozen=True)
class Fingerprints:
    """Of one course: its clinical content, everything but its cases, and each case by its id.

    All of them hold the fingerprint of the tool, so that another version shares nothing.
    """

    content: str
    frame: str
    cases: Mapping[str, str]


def fingerprints(course: Course) -> Fingerprints:
    """The fingerprints of a course as read."""
    content = of_content(course.content)
    rest = {
        one.name: _plain(getattr(course, one.name))
        for one in fields(course)
        if one.name not in ("cases", "places", "content")
    }
    cases = {name: digest(repr(_plain(case))) for name, case in course.cases.items()}
    return Fingerprints(content, digest(content, repr(rest)), cases)


def of_content(content: Content) -> str:
    """The fingerprint of all that cases are judged by, and of the tool that judges."""
    return digest(tool_fingerprint(), repr(_plain(content)))


def _plain(value: object) -> object:
    """Plain data that says all there is to a value; numbers and words stay apart."""
    if isinstance(value, Noun):
        return value.model_dump()
    if isinstance(value, Mapping):
        return [(key, _plain(one)) for key, one in value.items()]
    if isinstance(value, AbstractSet):
        return sorted(map(repr, value))
    if isinstance(value, list | tuple):
        return [_plain(one) for one in value]
    if is_dataclass(value) and not isinstance(value, type | Places):
        return [(one.name, _plain(getattr(value, one.name))) for one in fields(value)]
    return value
