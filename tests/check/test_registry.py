"""The registry: every check once, in order, with its level."""

from pathlib import Path
from types import ModuleType

import pytest

import builder.check.checks
from builder.check.registry import CHECKS, name_of, run_checks
from builder.diagnostic import LEVELS
from tests.check.small_course import evidence
from tests.judge.small import case

FILES = sorted(path.stem for path in Path(builder.check.checks.__path__[0]).glob("[a-z]*.py"))


def test_every_check_is_registered_once_and_in_order() -> None:
    """A file in the folder is a check, and nothing else is."""
    assert [name_of(check) for check in CHECKS] == FILES
    assert len(set(FILES)) == len(FILES) > 10


@pytest.mark.parametrize("check", CHECKS, ids=name_of)
def test_every_check_has_a_level_and_says_what_it_is_for(check: ModuleType) -> None:
    """Its level is a known one, and both the file and its function say in words what they find."""
    assert check.LEVEL in LEVELS
    assert check.__doc__
    assert check.check.__doc__


def test_findings_bear_the_name_and_level_of_their_check() -> None:
    """A check says only what is wrong; who says it is added here."""
    told = run_checks(evidence(case({"chosen": [{"card": "stroke"}], "phase": "none"})))
    mine = [(one.check, one.level, one.path) for one in told if one.place.file == "cases/bruise.yml"]
    assert mine == [
        ("chosen_not_right", "error", ("visits", 0, "chosen", 0)),
        ("declared_phase", "error", ("visits", 0, "phase")),
    ]
    assert ("not_reviewed", "advice", ()) in [(one.check, one.level, one.path) for one in told]
