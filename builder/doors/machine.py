"""The door to this machine's own network: the addresses under which others may reach it."""

from __future__ import annotations

import socket
from dataclasses import dataclass
from ipaddress import IPv4Address

import psutil


@dataclass(frozen=True)
class Reachable:
    """One address of this machine, and the connection it belongs to, as the system calls it."""

    address: str
    connection: str


def reachable() -> tuple[Reachable, ...]:
    """The addresses of connections that are up, those of private networks first; never loopback."""
    up = {name for name, one in psutil.net_if_stats().items() if one.isup}
    found = [
        Reachable(one.address, name)
        for name, addresses in psutil.net_if_addrs().items()
        for one in addresses
        if name in up and one.family == socket.AF_INET and _is_for_others(one.address)
    ]
    return tuple(sorted(found, key=lambda one: (not IPv4Address(one.address).is_private, one.connection)))


def _is_for_others(address: str) -> bool:
    known = IPv4Address(address)
    return not (known.is_loopback or known.is_link_local or known.is_unspecified)
