"""The shape of what is to fix."""

import pytest
from pydantic import ValidationError

from builder.check.show import as_json
from builder.diagnostic import Diagnostic, Related
from builder.model.outputs.check import CheckOutput
from builder.place import Place

FOUND = Diagnostic(
    "id_twice", "error", Place("a.yml", 3, 2, 3, 9), "Twice.", "Rename one.", ("tests", 0, "id"),
    ("co05",), (Related(Place("b.yml", 1, 1, 1, 1), "First."),),
)  # fmt: skip


def test_what_is_printed_has_the_shape() -> None:
    """Every key of a thing to fix comes back as it was; what is accepted carries its reason."""
    accepted = Diagnostic("meal_missing", "advice", Place("a.yml"), "No meal.", "Add one.", accepted="Short.")
    told = CheckOutput.model_validate(as_json([FOUND, accepted]))
    assert told.model_dump(mode="json") == as_json([FOUND, accepted])
    assert told.accepted[0].because == "Short."


@pytest.mark.parametrize("key", ["line", "message", "level"])
def test_what_lacks_a_key_has_not(key: str) -> None:
    """A program can rely on every key."""
    data = as_json([FOUND])
    del data["to_fix"][0][key]
    with pytest.raises(ValidationError):
        CheckOutput.model_validate(data)
