"""`caseloom preview`, as far as it goes before it serves."""

import socket

import pytest

from builder.fault import Fault
from tests.cli.run import run, status
from tests.demo.small import small


def test_a_port_in_use_is_named_before_anything_is_worked_out() -> None:
    """With the way out of it."""
    with socket.socket() as other:
        other.bind(("127.0.0.1", 0))
        other.listen()
        done = run("preview", small(), "--port", other.getsockname()[1])
    with pytest.raises(Fault, match=r"in use.*--port"):
        status(done)
    assert done.output == ""


def test_help_says_what_it_leaves_alone() -> None:
    """No edition, no secret, no key."""
    assert "no edition" in " ".join(run("preview", "--help").output.split())
