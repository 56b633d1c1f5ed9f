"""The shape of what the host prints."""

import pytest
from pydantic import ValidationError

from builder.model.outputs.host import HostOutput

OPENED = {
    "format": "caseloom/host/1",
    "event": "opened",
    "class": "spring",
    "line": "",
    "ways": {"instructor": "http://127.0.0.1:8028/?key=k", "hall": "", "addresses": ["192.168.43.1"]},
    "counts": {"sheets": 0, "people": 0, "of": 8, "set_aside": 0},
}


def test_every_key_is_there_or_it_is_refused() -> None:
    """The shape is taken whole, and refused without any one of its keys."""
    assert HostOutput.model_validate(OPENED).model_dump(mode="json", by_alias=True) == OPENED
    for key in OPENED:
        with pytest.raises(ValidationError):
            HostOutput.model_validate({name: value for name, value in OPENED.items() if name != key})
