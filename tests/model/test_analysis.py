"""An analysis is plain data that names its format."""

import json

from builder.model.analysis import Analysis, Figure


def test_an_analysis_names_its_format() -> None:
    """Whoever reads the JSON learns what it is, and a missing figure is null."""
    assert (
        json.loads(Analysis(klass="spring", versions=()).model_dump_json())["format"] == "caseloom/analysis/1"
    )
    assert json.loads(Figure(value=None, note="Too few.").model_dump_json())["value"] is None
