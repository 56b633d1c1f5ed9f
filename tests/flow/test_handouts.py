"""Single files of tests and cases, made of papers alone."""

import json

import pytest

from builder.fault import Fault
from builder.flow.handouts import handout_of_case, handouts_of_tests
from builder.flow.opened import Opened
from tests.demo.built import opened
from tests.render.sample_cases import published_test
from tests.render.sample_site import one, parsed
from tests.render.samples import course


def test_each_version_is_a_file() -> None:
    """Or one of them alone, which still knows how many there are: a code is told apart by that."""
    assert set(handouts_of_tests(course(), [published_test()])) == {"final-a.html", "final-b.html"}
    files = handouts_of_tests(course(), [published_test()], "B")
    assert set(files) == {"final-b.html"}
    data = json.loads(one(parsed(files["final-b.html"]), "#test-data").get_text())
    assert (data["versions"], data["version"], data["alone"], data["pages"]) == (2, "B", True, {"B": ""})


def test_a_test_carries_no_red_flags_of_the_rules() -> None:
    """What the rules say of flags could answer a question; the caution stands instead."""
    file = handouts_of_tests(course(), [published_test()])["final-a.html"]
    assert "No pulse at the foot" not in file
    assert "stop at a red flag" in file


def test_a_practice_case_is_a_file() -> None:
    """Whole, with its reasons and the red flags."""
    (name,) = handout_of_case(opened(), "unicycle_thigh")
    assert name == "unicycle-thigh.html"


def test_a_case_of_no_practice_set_is_none() -> None:
    """A tested case least of all."""
    book = opened().course
    assert book is not None
    for name in (book.file.tests[0].cases[0], "nothing"):
        with pytest.raises(Fault, match="practises on no case"):
            handout_of_case(opened(), name)
    with pytest.raises(Fault, match="cannot be read"):
        handout_of_case(Opened(None, {}, (), {}), "unicycle_thigh")
