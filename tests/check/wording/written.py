"""One author-written question in a small course, with the shipped book of wording."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from types import ModuleType

from builder.check.evidence import Evidence
from builder.model.case import Case
from builder.model.question import AuthorQuestion
from tests.check.small_course import evidence
from tests.check.wording.book import wording

FRAME = {
    "format": 1,
    "id": "asked",
    "objective": "one",
    "level": "apply",
    "use": "practice",
    "source": ["common_practice"],
}
WHY = "So it is taught."


def question(stem: str, right: str | Sequence[str], *wrong: str, name: str = "asked") -> AuthorQuestion:
    """A question; its right options come first."""
    keys = [right] if isinstance(right, str) else list(right)
    options = [{"text": text, "right": text in keys, "because": WHY} for text in (*keys, *wrong)]
    kind = "one" if isinstance(right, str) else "many"
    return AuthorQuestion.model_validate({**FRAME, "id": name, "stem": stem, kind: {"options": options}})


def course_of(
    *questions: AuthorQuestion, language: str = "en", lesson: str = "", cases: Sequence[Case] = ()
) -> Evidence:
    """A course with these questions and one lesson."""
    plain = evidence(*cases, language=language)
    content = replace(plain.course.content, wording=wording())
    by_id = {one.id: one for one in questions}
    return replace(
        plain, course=replace(plain.course, content=content, questions=by_id, lessons={"cold": lesson})
    )


def told(check: ModuleType, stem: str, right: str | Sequence[str], *wrong: str) -> list[str]:
    """What a check says of one question."""
    return [one.message for one in check.check(course_of(question(stem, right, *wrong)))]
