"""The shape of whatever is explained."""

import pytest
from pydantic import ValidationError

from builder.model.outputs.explain import ExplainedSettings, ExplainOutput

FORMAT = "caseloom/explain/1"
SETTING = {"setting": "language", "value": "en", "from": "course.yml"}


def test_the_second_key_says_which_block_it_is() -> None:
    """Settings are settings, and no case."""
    told = ExplainOutput.model_validate({"format": FORMAT, "settings": [SETTING]})
    assert isinstance(told.root, ExplainedSettings)
    assert told.root.settings[0].origin == "course.yml"


def test_something_else_is_none_of_them() -> None:
    """Neither another format nor another block."""
    for wrong in ({"format": "caseloom/check/1", "settings": []}, {"format": FORMAT, "setings": []}):
        with pytest.raises(ValidationError):
            ExplainOutput.model_validate(wrong)
