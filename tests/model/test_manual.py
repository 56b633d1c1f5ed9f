"""The handbook as values: they are equal by what they say, and cannot be changed."""

from dataclasses import FrozenInstanceError

import pytest

from builder.model.manual import ManualField


def test_what_it_says_stays() -> None:
    """A field of the handbook is one that was written once."""
    field = ManualField("client.age", needed=True, says="Age in years.", example="26")
    assert field == ManualField("client.age", needed=True, says="Age in years.", example="26")
    with pytest.raises(FrozenInstanceError):
        field.needed = False  # type: ignore[misc]
