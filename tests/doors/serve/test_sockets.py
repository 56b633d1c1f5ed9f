"""Sockets: taken at once, on one address alone, and refused in plain words."""

import socket

import pytest

from builder.doors.serve.sockets import LOOPBACK, reserve
from builder.fault import Fault


def test_a_port_in_use_is_a_fault_that_says_what_to_do() -> None:
    """And is left to whoever has it."""
    with socket.socket() as other:
        other.bind((LOOPBACK, 0))
        other.listen()
        port = other.getsockname()[1]
        with pytest.raises(Fault, match=rf"Port {port} is in use.*--port"):
            reserve(port)


def test_it_listens_on_this_machine_alone() -> None:
    """Not on the address others reach it under."""
    taken = reserve(0)
    assert taken.getsockname()[0] == LOOPBACK
    taken.close()


def test_an_address_of_another_machine_is_a_fault() -> None:
    """The address is named; it is not taken for a port in use."""
    with pytest.raises(Fault, match=r"no address 203\.0\.113\.9"):
        reserve(0, "203.0.113.9")
