"""`caseloom explain` in words and as data."""

import json

from tests.cli.run import run, status
from tests.demo.built import COURSE


def test_a_case_is_told_visit_by_visit() -> None:
    """Phase, severity, session and every option, with the rules behind them."""
    done = run("explain", COURSE, "unicycle_thigh")
    assert status(done) == 0
    assert done.output.count("  Phase ") == 4
    assert "would change it:" in done.output


def test_the_data_has_its_fixed_shape() -> None:
    """The shape is `caseloom/explain/1`, with every card of the library under each visit."""
    data = json.loads(run("explain", COURSE, "clown_shin", "--json").output)
    (visit, *_) = data["visits"]
    assert data["format"] == "caseloom/explain/1"
    assert visit["session"]["answer"] == "refer"
    assert {"refer", "friction", "cold_pack"} <= visit["cards"].keys()
