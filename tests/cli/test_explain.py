"""`caseloom explain` in words and as data."""

import json
from pathlib import Path

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


def test_what_is_to_be_reviewed_is_listed(tmp_path: Path) -> None:
    """As text, as data, and as a sheet where a file is named."""
    assert "not yet reviewed" in run("explain", COURSE, "reviews").output
    assert json.loads(run("explain", COURSE, "reviews", "--json").output)["remaining"] > 0
    done = run("explain", COURSE, "reviews", "--out", tmp_path / "sheet.html")
    assert status(done) == 0
    assert (tmp_path / "sheet.html").is_file()
