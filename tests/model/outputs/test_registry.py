"""Every shape that is handed out is in the list."""

import re

import pytest

from builder.model.outputs.registry import OUTPUTS
from tests.house.plan import ROOT


@pytest.mark.parametrize("name", OUTPUTS)
def test_a_shape_names_its_own_format(name: str) -> None:
    """`caseloom/NAME/1` stands in its schema and no other does."""
    schema = str(OUTPUTS[name].model.model_json_schema())
    assert set(re.findall(r"'caseloom/([a-z]+)/\d'", schema)) == {name}


def test_no_format_is_printed_that_has_no_shape() -> None:
    """Read off the source, scripts included."""
    files = [path for ending in ("py", "js") for path in (ROOT / "builder").rglob(f"*.{ending}")]
    found = {
        name
        for path in files
        for name in re.findall(r"[\"']caseloom/([a-z]+)/1[\"']", path.read_text(encoding="utf-8"))
    }
    assert found == OUTPUTS.keys()
