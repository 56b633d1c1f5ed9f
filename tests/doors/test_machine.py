"""The machine's own addresses, as others may use them."""

import socket
from ipaddress import ip_address
from typing import NamedTuple

import psutil
import pytest

from builder.doors.machine import Reachable, reachable


class Address(NamedTuple):
    """An address as the library tells it."""

    family: int
    address: str


class State(NamedTuple):
    """A connection as the library tells it."""

    isup: bool


def test_what_others_can_reach_comes_with_its_connection(monkeypatch: pytest.MonkeyPatch) -> None:
    """Private networks first; nothing that is down, of this machine alone, or given by nobody."""
    four, six = socket.AF_INET, socket.AF_INET6
    known = {
        "lo": [Address(four, "127.0.0.1")],
        "away": [Address(four, "8.8.4.4")],
        "wlan0": [Address(six, "fe80::1"), Address(four, "192.168.43.1"), Address(four, "169.254.3.4")],
        "dead": [Address(four, "10.0.0.9")],
    }
    monkeypatch.setattr(psutil, "net_if_addrs", lambda: known)
    monkeypatch.setattr(psutil, "net_if_stats", lambda: {name: State(name != "dead") for name in known})
    assert reachable() == (Reachable("192.168.43.1", "wlan0"), Reachable("8.8.4.4", "away"))


def test_this_machine_tells_its_own() -> None:
    """Whatever it has can be listened on, and is not loopback."""
    for one in reachable():
        assert not ip_address(one.address).is_loopback
        with socket.socket() as taken:
            taken.bind((one.address, 0))
