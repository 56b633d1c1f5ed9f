"""The names of scoring policies; that each of them is there is held where they are."""

from builder.model.policy import POLICY_NAMES, USUAL
from builder.model.question import QUESTION_KINDS


def test_every_kind_has_its_names_and_one_that_is_usual() -> None:
    """No kind of question is left without a way to be marked."""
    assert set(POLICY_NAMES) == set(USUAL) == set(QUESTION_KINDS)
    assert all(USUAL[kind] in names for kind, names in POLICY_NAMES.items())
