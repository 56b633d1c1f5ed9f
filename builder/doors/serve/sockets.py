"""Sockets taken before anything is served on them."""

from __future__ import annotations

import socket

from builder.fault import Fault

LOOPBACK = "127.0.0.1"


def reserve(port: int, address: str = LOOPBACK) -> socket.socket:
    """A socket on one address of this machine; port 0 takes any that is free, one in use is a Fault."""
    taken = socket.socket(socket.AF_INET, socket.SOCK_STREAM)
    if hasattr(socket, "SO_EXCLUSIVEADDRUSE"):
        taken.setsockopt(socket.SOL_SOCKET, socket.SO_EXCLUSIVEADDRUSE, 1)
    else:
        taken.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
    try:
        taken.bind((address, port))
        taken.listen(512)  # at once: who comes early waits, and no second command can take the port
    except OSError:
        taken.close()
        raise _refused(port, address) from None
    return taken


def _refused(port: int, address: str) -> Fault:
    """Why an address could not be had: not this machine's, or its port in use."""
    with socket.socket(socket.AF_INET, socket.SOCK_STREAM) as trial:
        try:
            trial.bind((address, 0))
        except OSError:
            return Fault(f"This machine has no address {address}.", "Name one that it has.")
    return Fault(
        f"Port {port} is in use.", "Name another with --port, or end what uses it; --port 0 takes any."
    )
