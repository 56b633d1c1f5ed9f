"""The way in for the hall: opened by the instructor on one named address, and shut again."""

from __future__ import annotations

from collections.abc import Callable
from contextlib import suppress
from dataclasses import dataclass
from threading import Lock, Thread

from builder.doors.machine import Reachable, reachable
from builder.doors.serve import Answer, Asked, Listener, Manners, reserve
from builder.fault import Fault
from builder.host.hall import LARGEST
from builder.host.notices import Notices

BURST, A_SECOND = (
    3000,
    300.0,
)  # one address may stand for a whole hall behind one box, each phone with its pages
WEB = 80


@dataclass(frozen=True)
class _Open:
    """One listener that runs, and where."""

    address: str
    port: int
    listener: Listener
    thread: Thread


class Entrance:
    """Open on one address at most; `addresses` are asked of the machine anew each time."""

    def __init__(
        self,
        answer: Callable[[Asked], Answer],
        port: int,
        notices: Notices,
        addresses: Callable[[], tuple[Reachable, ...]] = reachable,
    ) -> None:
        self._answer, self._port, self._notices, self.addresses = answer, port, notices, addresses
        self._open: _Open | None = None
        self._lost = ""
        self._lock = Lock()

    @property
    def way(self) -> str:
        """The address to type into a phone, or nothing while the hall is shut."""
        now = self._open
        return f"http://{_named(now.address, now.port)}/" if now else ""

    def open(self, address: str) -> None:
        """Serve the hall on one address of this machine; a Fault where that cannot be."""
        if address not in {one.address for one in self.addresses()}:
            raise Fault(f"This machine has no address {address}.", "Take one that it has now.")
        with self._lock:
            self._shut()
            taken = reserve(self._port, address)
            port: int = taken.getsockname()[1]
            manners = Manners(frozenset({_named(address, port)}), LARGEST, BURST, A_SECOND)
            listener = Listener(self._answer, manners, self.trouble)
            thread = Thread(target=listener.run, args=(taken,), daemon=True)
            thread.start()
            self._open, self._lost = _Open(address, port, listener, thread), ""
        self._notices.drop("moved")

    def shut(self) -> None:
        """End the hall; what was begun is finished."""
        with self._lock:
            self._shut()
            self._lost = ""
        self._notices.drop("moved")

    def look(self) -> None:
        """Notice that this machine has lost the hall's address, and open again when it is back."""
        now, there = self._open, {one.address for one in self.addresses()}
        if now and now.address not in there:
            with self._lock:
                self._shut()
                self._lost = now.address
            self._notices.add("moved", "host_moved", address=now.address)
        elif self._lost and self._lost in there:
            with suppress(Fault):  # whatever hinders it is looked at again
                self.open(self._lost)

    def _shut(self) -> None:
        if self._open:
            self._open.listener.stop()
            self._open.thread.join(10)
            self._open = None

    def trouble(self, error: Exception) -> None:
        """Say that something went wrong that should not have."""
        self._notices.add("trouble", "host_trouble", kind=type(error).__name__)


def _named(address: str, port: int) -> str:
    """How a browser names a server: without the port where it is the usual one."""
    return address if port == WEB else f"{address}:{port}"
