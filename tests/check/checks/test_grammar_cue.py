"""Stems whose grammar fits some options alone."""

import pytest

from builder.check.checks import grammar_cue
from tests.check.wording.written import told


@pytest.mark.parametrize(
    ("stem", "right", "wrong"),
    [
        ("A pack lies on an", "open wound", ["bruise", "calf"]),
        ("The client has a:", "bruise", ["ulcer", "edge of bone"]),
        ("It swells within an", "hour", ["day", "week"]),
        ("It is best judged by a", "uniform scale", ["eye", "inch"]),
        ("The bones of the forearm are", "radius and ulna", ["the femur", "the talus"]),
        ("Which of these is a sign?", "swelling", ["fevers", "rashes"]),
    ],
)
def test_a_cue_is_told(stem: str, right: str, wrong: list[str]) -> None:
    """By the article, heard and not only seen, or by number."""
    assert len(told(grammar_cue, stem, right, *wrong)) == 1


@pytest.mark.parametrize(
    ("stem", "right", "wrong"),
    [
        ("A pack lies on an", "arm", ["elbow", "ankle"]),
        ("A pack lies on a(n)", "arm", ["leg", "wrist"]),
        ("A pack lies on a/an", "arm", ["leg", "wrist"]),
        ("What is a pack?", "ice in a bag", ["a stroke", "a wrap"]),
        ("The bones of the forearm are", "radius and ulna", ["tibia and fibula", "talus and cuboid"]),
        ("The muscles of the thigh are", "strong", ["weak", "short"]),
    ],
)
def test_what_fits_every_option_or_none_is_silent(stem: str, right: str, wrong: list[str]) -> None:
    """Nothing is given away."""
    assert told(grammar_cue, stem, right, *wrong) == []
