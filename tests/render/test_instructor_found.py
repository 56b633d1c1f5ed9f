"""What was known on a visit."""

from decimal import Decimal

import pytest

from builder.model.case import Visit
from builder.render.instructor_found import client_line, consented, found, screened, when_line
from builder.render.maker import Maker, maker
from tests.render.sample_judged import case, judged_course

MADE = maker(judged_course())
LANDING = case("landing")


def visit(**changed: object) -> Visit:
    """The first visit, changed."""
    return LANDING.visits[0].model_copy(update=changed)


def with_screen() -> Maker:
    """A maker whose course knows a screening set."""
    made = judged_course()
    book = {"format": 1, "sets": {"lower": {"name": "Lower limb", "date": "2026-11-01", "covers": ["heat"]}}}
    screening = type(made.content.screening).model_validate(book)
    content = type(made.content)(**{**vars(made.content), "screening": screening})
    return maker(type(made)(**{**vars(made), "content": content}))


def test_who_the_client_is() -> None:
    """Work, age and what is hurt."""
    assert client_line(MADE, LANDING) == "Acrobat base, 24 · right thigh"


def test_times_are_exact() -> None:
    """No hour is lost, and a second injury is told before the first."""
    first, second = LANDING.visits
    assert when_line(MADE, first) == "30 hours after the injury"
    assert when_line(MADE, second) == (
        "20 hours after it was hurt again, 4 days and 4 hours after the first injury"
    )


def test_findings_and_history_stand_in_the_order_of_the_facts() -> None:
    """Recorded values in words; what the facts file does not declare is left out."""
    assert found(MADE, LANDING, LANDING.visits[0]) == [
        ("Swelling", "still rising"),
        ("Knee bends to", "72°"),
        ("Pain at rest", "3 of 10"),
    ]


def test_a_finding_of_the_day_stands_before_history() -> None:
    """What was found today is told, not what was true before."""
    today = visit(findings={"pain": Decimal(7)})
    assert found(MADE, LANDING, today) == [("Pain at rest", "7 of 10")]


@pytest.mark.parametrize(("consent", "word"), [("yes", "given"), ("no", "not given"), (None, "not recorded")])
def test_consent_is_told_as_recorded(consent: str | None, word: str) -> None:
    """Silence is never told as a yes."""
    assert consented(MADE, visit(consent=consent)) == [("Consent", word)]


def test_no_screen_is_told() -> None:
    """A visit without a screen says so."""
    assert screened(MADE, visit(screen=None)) == [("Screening", "none recorded")]


@pytest.mark.parametrize(
    ("excepted", "rows"),
    [
        ({}, [("Screening", "Lower limb: all no")]),
        (
            {"calf_pain": "yes"},
            [("Calf pain", "yes"), ("Screening", "Lower limb: all no, except what is listed here")],
        ),
    ],
)
def test_a_screen_lists_what_is_not_no(excepted: dict[str, str], rows: list[tuple[str, str]]) -> None:
    """A clean screen is one line; every exception is a line of its own."""
    screen = Visit.model_validate(
        visit().model_dump() | {"screen": {"set": "lower", "all_no_except": excepted}}
    )
    assert screened(with_screen(), screen) == rows
