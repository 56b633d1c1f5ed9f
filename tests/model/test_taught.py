"""A taught class: its people by their first code, and its days."""

import pytest
from pydantic import ValidationError

from builder.model.taught import Participant, TaughtClass

CLASS = {
    "format": 1,
    "id": "spring",
    "title": "Spring",
    "dates": ["2026-11-21"],
    "zone": "America/New_York",
    "place": "The tent",
}


def test_a_person_is_known_by_the_first_code() -> None:
    """Later codes are for later tries and name nobody new."""
    person = Participant(name="Ada", codes=("222222222", "3F9K2MX7Y"))
    assert (person.code, person.name_on_licence, person.report) == ("222222222", "", False)


@pytest.mark.parametrize("codes", [(), None])
def test_a_person_has_a_code(codes: object) -> None:
    """Nobody is on a roster without a personal code."""
    with pytest.raises(ValidationError):
        Participant.model_validate({"name": "Ada", "codes": codes})


@pytest.mark.parametrize("changed", [{"dates": []}, {"dates": ["soon"]}, {"zone": ""}, {"format": 2}])
def test_a_class_has_days_and_a_zone(changed: dict[str, object]) -> None:
    """Without days or zone, attendance would mean nothing."""
    assert len(TaughtClass.model_validate(CLASS).dates) == 1
    with pytest.raises(ValidationError):
        TaughtClass.model_validate({**CLASS, **changed})


def test_what_is_accepted_of_a_row_says_why() -> None:
    """The check, the sheet, a code in the row, and a reason; nothing may be left out."""
    whole = {"check": "email_odd", "file": "roster.csv", "code": "222222222", "because": "As given."}
    assert len(TaughtClass.model_validate({**CLASS, "accepted": [whole]}).accepted) == 1
    for wrong in ({**whole, "file": "class.yml"}, *({**whole, key: ""} for key in whole)):
        with pytest.raises(ValidationError):
            TaughtClass.model_validate({**CLASS, "accepted": [wrong]})
