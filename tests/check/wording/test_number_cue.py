"""Whether one thing is asked for or several."""

import pytest

from builder.check.wording.number_cue import reads_several, several_asked


@pytest.mark.parametrize(
    ("stem", "several"),
    [
        ("The muscles of the thigh are", True),
        ("He fell. Which structures hold up the arch?", True),
        ("Which of these is a sign of a clot?", False),
        ("Which helps the knee?", None),
        ("Which group straightens the knee?", None),
        ("What happens next?", None),
    ],
)
def test_what_a_stem_asks_for(stem: str, several: bool | None) -> None:  # noqa: FBT001 - a row of a table
    """Only where the grammar tells."""
    assert several_asked(stem) is several


@pytest.mark.parametrize(
    ("option", "several"),
    [
        ("calf muscles", True),
        ("radius and ulna", True),
        ("bones of the wrist", True),
        ("the hamstring", False),
        ("a head of the biceps", False),
        ("trapezius", False),
        ("", False),
    ],
)
def test_how_an_option_reads(option: str, several: bool) -> None:  # noqa: FBT001 - a row of a table
    """By its head word, or by what is joined in it."""
    assert reads_several(option) is several
