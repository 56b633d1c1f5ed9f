"""What every output has."""

from builder.model.outputs.output import Output


def test_a_key_that_is_not_known_is_passed_over() -> None:
    """Within a format changes only add, so an older reader takes what a newer tool hands out."""
    assert Output.model_validate({"added_later": 1}) == Output()
