"""The sample board is a board."""

import yaml

from builder.model.board import BoardRules
from builder.model.sample_board import sample_board


def test_the_sample_is_a_board_with_its_line() -> None:
    """It is read as any board, and says what its line says."""
    made = sample_board("policies: [refund]", minutes=50)
    board = BoardRules.model_validate(yaml.safe_load(made.written))
    assert (made.file, board.minutes_in_hour, board.policies) == ("boards/guild.yml", 50, ("refund",))
