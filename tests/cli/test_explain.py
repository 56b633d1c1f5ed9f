"""`caseloom explain` in words and as data."""

import json
from pathlib import Path

from builder.fault import Fault
from tests.cli.run import run, status
from tests.demo.small import small


def test_a_case_is_told_visit_by_visit() -> None:
    """Phase, severity, session and every option, with the rules behind them."""
    done = run("explain", small(), "unicycle_thigh")
    assert status(done) == 0
    assert done.output.count("  Phase ") == 4
    assert "Would change it:" in done.output


def test_the_data_has_its_fixed_shape() -> None:
    """The shape is `caseloom/explain/1`, with every card of the library under each visit."""
    data = json.loads(run("explain", small(), "clown_shin", "--json").output)
    (visit, *_) = data["visits"]
    assert data["format"] == "caseloom/explain/1"
    assert visit["session"]["answer"] == "refer"
    assert {"refer", "friction", "cold_pack"} <= visit["cards"].keys()


def test_what_is_to_be_reviewed_is_listed(tmp_path: Path) -> None:
    """As text, as data, and as a sheet where a file is named."""
    assert "not yet reviewed" in run("explain", small(), "reviews").output
    assert json.loads(run("explain", small(), "reviews", "--json").output)["remaining"] > 0
    done = run("explain", small(), "reviews", "--out", tmp_path / "sheet.html")
    assert status(done) == 0
    assert (tmp_path / "sheet.html").is_file()


def test_the_stop_rules_are_laid_against_the_cards() -> None:
    """The table of proof, as text and as data."""
    assert "0 left open" in run("explain", small(), "flags").output
    assert json.loads(run("explain", small(), "flags", "--json").output)["open"] == 0


def test_a_check_is_told_with_both_examples() -> None:
    """What it says, why, and what it finds; as data too."""
    done = run("explain", small(), "check", "declared_phase")
    assert status(done) == 0
    assert "Why: Whoever writes a case" in done.output
    assert done.output.index("phase: remodelling") < done.output.index("phase: late_repair")
    data = json.loads(run("explain", small(), "check", "yaml_tab", "--json").output)
    assert (data["format"], data["level"]) == ("caseloom/explain/1", "error")


def test_one_visit_is_told_alone() -> None:
    """By its id; the nearest is suggested for one that is not there."""
    told = json.loads(run("explain", small(), "unicycle_thigh", "back_on_stage", "--json").output)
    assert [visit["id"] for visit in told["visits"]] == ["back_on_stage"]
    wrong = run("explain", small(), "unicycle_thigh", "back_on_stge")
    assert isinstance(wrong.exception, Fault)
    assert "back_on_stage" in wrong.exception.remedy


def test_content_is_told_by_its_name() -> None:
    """A rule, a card, a policy and the settings; a name after what takes none is said to belong nowhere."""
    assert "Fires" in run("explain", small(), "rule", "fever_today").output
    assert "Answer" in run("explain", small(), "card", "glide").output
    assert "(course.yml)" in run("explain", small(), "settings").output
    assert json.loads(run("explain", small(), "policy", "--json").output)["policies"]
    assert isinstance(run("explain", small(), "flags", "more").exception, Fault)
