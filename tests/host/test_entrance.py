"""The way in: one named address at a time, shut and opened by the instructor, lost and found again."""

import pytest

from builder.doors.machine import Reachable
from builder.doors.serve import LOOPBACK, Answer, reserve
from builder.fault import Fault
from builder.host.entrance import Entrance
from builder.host.notices import Notices
from tests.doors.serve.asking import Place


class Machine:
    """A machine whose addresses a test changes."""

    def __init__(self) -> None:
        """With one address."""
        self.addresses: tuple[Reachable, ...] = (Reachable(LOOPBACK, "wired"),)
        self.heard: list[str] = []
        notices = Notices(lambda word, **blanks: f"{word} {blanks}", self.heard.append)
        self.entrance = Entrance(lambda _: Answer(b"here"), 0, notices, lambda: self.addresses)
        self.notices = notices

    def answers(self) -> bool:
        """Whether a phone gets anything."""
        if not self.entrance.way:
            return False
        port = int(self.entrance.way.rstrip("/").rpartition(":")[2])
        return Place(port, []).get("/").body == b"here"


def test_it_is_shut_until_it_is_opened() -> None:
    """And serves under the very address that it says."""
    machine = Machine()
    assert machine.entrance.way == ""
    machine.entrance.open(LOOPBACK)
    assert machine.entrance.way.startswith(f"http://{LOOPBACK}:")
    assert machine.answers()
    machine.entrance.open(LOOPBACK)
    assert machine.answers()
    machine.entrance.shut()
    assert (machine.entrance.way, machine.answers()) == ("", False)
    machine.entrance.shut()


@pytest.mark.parametrize("address", ["0.0.0.0", "203.0.113.9", "", "::", "localhost", "192.168.43.1"])  # noqa: S104 - must be refused
def test_only_an_address_of_this_machine_can_be_opened(address: str) -> None:
    """Never all of them at once."""
    machine = Machine()
    with pytest.raises(Fault, match="no address"):
        machine.entrance.open(address)
    assert machine.entrance.way == ""


def test_a_lost_address_is_told_and_opened_again_when_it_is_back() -> None:
    """As when the hotspot is switched off and on; nobody has to do anything."""
    machine = Machine()
    machine.entrance.open(LOOPBACK)
    there, machine.addresses = machine.addresses, ()
    machine.entrance.look()
    machine.entrance.look()
    assert (machine.entrance.way, machine.heard) == ("", [f"host_moved {{'address': '{LOOPBACK}'}}"])
    machine.addresses = there
    machine.entrance.look()
    assert machine.answers()
    assert machine.notices.lines() == []
    machine.entrance.shut()


def test_what_the_instructor_shut_stays_shut() -> None:
    """Also when the address went before."""
    machine = Machine()
    machine.entrance.open(LOOPBACK)
    there, machine.addresses = machine.addresses, ()
    machine.entrance.look()
    machine.entrance.shut()
    machine.addresses = there
    machine.entrance.look()
    assert (machine.entrance.way, machine.notices.lines()) == ("", [])


def test_a_port_in_use_is_a_fault() -> None:
    """And the hall stays shut."""
    taken = reserve(0)
    entrance = Entrance(
        lambda _: Answer(b""),
        taken.getsockname()[1],
        Notices(str, print),
        lambda: (Reachable(LOOPBACK, "a"),),
    )
    with taken, pytest.raises(Fault, match="in use"):
        entrance.open(LOOPBACK)
    assert entrance.way == ""
