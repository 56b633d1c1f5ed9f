"""Runs the host of one class until it is ended, and says what came in."""

from __future__ import annotations

import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from datetime import datetime, tzinfo
from threading import Event, Thread

from builder.doors.serve import LOOPBACK, Listener, Manners, reserve
from builder.flow.hall import OpenClass
from builder.host.board import Board
from builder.host.desk import Desk
from builder.host.entrance import Entrance
from builder.host.hall import Hall
from builder.host.notices import Notices
from builder.model.outputs.host import HostCounts, HostOutput, HostWays

LOOK_AGAIN = 2.0
ASLEEP = 20.0  # seconds that the clock went on without us: nothing but sleep takes so long
Tell = Callable[[HostOutput], None]


@dataclass(frozen=True)
class Asked:
    """What the instructor asked for: ports (0 takes any), and the hall's address, if it is named already."""

    port: int
    hall_port: int
    hall: str = ""


def host(desk: OpenClass, asked: Asked, tell: Tell) -> None:
    """Serve until Ctrl-C; a port in use, or an address not ours, is a Fault before anything is served."""
    with reserve(asked.port) as taken:
        port: int = taken.getsockname()[1]
        names = frozenset(f"{name}:{port}" for name in (LOOPBACK, "localhost"))
        board, notices = Board(), Notices(desk.say, lambda line: tell(_told(desk, "notice", line=line)))
        board.filled(desk.standing(), desk.taught.owners)
        hall = Hall(desk, board, notices)
        entrance = Entrance(hall.answer, asked.hall_port, notices)
        if asked.hall:
            entrance.open(asked.hall)
        own = Desk(desk, board, notices, entrance, hall)
        ways = _ways(entrance, f"http://{LOOPBACK}:{port}/?key={own.key}")
        tell(_told(desk, "opened", ways=ways, counts=_counts(desk)))
        with _watched(entrance, notices, desk.zone):
            Listener(own.answer, Manners(names), entrance.trouble).run(taken)
    tell(_told(desk, "ended", counts=_counts(desk)))


@contextmanager
def _watched(entrance: Entrance, notices: Notices, zone: tzinfo) -> Iterator[None]:
    """See to the hall until the end of the block, and shut it then."""
    stop = Event()
    watcher = Thread(target=watch, args=(entrance, notices, zone, stop), daemon=True)
    watcher.start()
    try:
        yield
    finally:
        stop.set()
        watcher.join()
        entrance.shut()


def watch(
    entrance: Entrance, notices: Notices, zone: tzinfo, stop: Event, clock: Callable[[], float] = time.time
) -> None:
    """Look after the address of the hall, and notice that this machine was asleep."""
    last = clock()
    while not stop.wait(LOOK_AGAIN):
        now = clock()
        if now - last > LOOK_AGAIN + ASLEEP:
            start, end = (f"{datetime.fromtimestamp(one, zone):%H:%M}" for one in (last, now))
            notices.add("asleep", "host_asleep", start=start, end=end)
        last = now
        entrance.look()


def _told(desk: OpenClass, event: str, **more: object) -> HostOutput:
    plain = {"format": "caseloom/host/1", "event": event, "class": desk.taught.taught.id}
    return HostOutput.model_validate({**plain, "line": "", "ways": None, "counts": None, **more})


def _ways(entrance: Entrance, own: str) -> HostWays:
    addresses = tuple(one.address for one in entrance.addresses())
    return HostWays(instructor=own, hall=entrance.way, addresses=addresses)


def _counts(desk: OpenClass) -> HostCounts:
    owners = desk.taught.owners
    sheets = list(desk.standing())
    return HostCounts(
        sheets=len(sheets),
        people=len({owners[one.code] for one in sheets if one.code in owners}),
        of=len(desk.taught.participants),
        set_aside=len(desk.aside()),
    )
