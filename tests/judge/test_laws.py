"""The laws of judging, on the small rule set and on the one that comes with the tool.

Each is tried on at least two thousand clients, at least a third of whom meet its premise. That each can fail
is shown in `test_laws_planted.py`.
"""

import pytest

from tests.judge.lawbook import LAWS
from tests.judge.laws import EXAMPLES, SMALL, Law, shipped_world, tried


@pytest.mark.parametrize("law", LAWS, ids=lambda law: law.__name__)
def test_the_law_holds(law: Law) -> None:
    """On every client of both rule sets."""
    tally = tried(law, SMALL, shipped_world())
    assert tally.tried >= 2 * EXAMPLES
    assert 3 * tally.met >= tally.tried
