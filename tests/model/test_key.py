"""Keys: found by version, and kept exactly."""

from fractions import Fraction

from builder.model.key import Key, KeyAnswer, KeyRing

ANSWER = KeyAnswer(
    question="q8f3a",
    kind="one",
    right=("o41c",),
    options=("o41c", "o9d2"),
    policy="exact",
    must_pass=True,
    objective="one",
    topic="option",
    case="bruise",
    visit="day",
    reasons={"o41c": "Right.", "o9d2": "Not yet."},
)
RING = KeyRing(
    test="final",
    edition="k7q2m9xa",
    key_edition="zz",
    pass_mark=Fraction(7, 10),
    tries=2,
    keys=tuple(Key(test="final", version=version, answers=(ANSWER,)) for version in "AB"),
)


def test_a_key_is_found_by_its_version() -> None:
    """Each version has its own key; a version that was never made has none."""
    assert RING.version("B") is RING.keys[1]
    assert RING.version("C") is None


def test_a_ring_reads_back_as_itself() -> None:
    """Written to disk and read again, the pass mark is still the same fraction."""
    assert KeyRing.model_validate_json(RING.model_dump_json()) == RING
