"""Right answers that favour one position."""

from builder.check.checks import key_position
from builder.check.evidence import Finding
from builder.model.question import AuthorQuestion
from tests.check.wording.written import FRAME, WHY, course_of


def found(*counts: int, language: str = "en") -> list[Finding]:
    """What is said of a course with so many right answers in each position."""
    places = [place for place, count in enumerate(counts) for _ in range(count)]
    made = [
        AuthorQuestion.model_validate(
            {
                **FRAME,
                "id": f"q{number}",
                "stem": "Which?",
                "one": {
                    "options": [
                        {"text": f"Way {one}", "right": one == place, "because": WHY}
                        for one in range(len(counts))
                    ]
                },
            }
        )
        for number, place in enumerate(places)
    ]
    return list(key_position.check(course_of(*made, language=language)))


def test_an_uneven_spread_is_told_with_its_counts() -> None:
    """Twenty by chi-square, eight exactly."""
    (one,) = found(3, 12, 4, 1)
    assert one.message.startswith("In 20 questions of 4 options the right one stands 3, 12, 4, 1 times")
    assert len(found(0, 1, 6, 1)) == 1


def test_what_chance_explains_is_silent() -> None:
    """An even spread, a mild one, few of many options, and another language."""
    assert found(8, 6, 4, 2) == []
    assert found(1, 0, 0, 0) == []
    assert found(9, 0, 0, 0, 0, 0) == []
    assert found(3, 12, 4, 1, language="nb") == []
