"""The shapes of what is written or listed."""

import pytest
from pydantic import BaseModel, ValidationError

from builder.model.outputs.made import BuildOutput, FlagsOutput, ReviewsOutput, SchemaOutput

SOUND: dict[type[BaseModel], dict[str, object]] = {
    BuildOutput: {"format": "caseloom/build/1", "publish": "out/publish", "editions": {"final": "k7q2m9xa"}},
    FlagsOutput: {"format": "caseloom/flags/1", "open": 0, "flags": {"fever_today": {"glide": True}}},
    ReviewsOutput: {
        "format": "caseloom/reviews/1", "remaining": 1,
        "entries": [{"part": "rules", "id": "fever_today", "fingerprint": "9b1c"}],
    },
    SchemaOutput: {"format": "caseloom/schema/1", "folder": "shapes", "changed": ["case.json"]},
}  # fmt: skip


@pytest.mark.parametrize("model", SOUND, ids=lambda one: one.__name__)
def test_every_key_is_there_or_it_is_refused(model: type[BaseModel]) -> None:
    """Each shape is taken whole, and refused without any one of its keys."""
    data = SOUND[model]
    assert model.model_validate(data).model_dump(mode="json") == data
    for key in data:
        with pytest.raises(ValidationError):
            model.model_validate({name: value for name, value in data.items() if name != key})
