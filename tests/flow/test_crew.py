"""Work shared out: the same answers in the same order, wherever each was worked out."""

import os
import time

import pytest

from builder.fault import Fault
from builder.flow.crew import MOST, Crew, helpers


def squared(number: int) -> tuple[int, int]:
    """The square, and the process that worked it out."""
    time.sleep(0.01)
    return number * number, os.getpid()


def refused(number: int) -> int:
    """A fault at the third share."""
    if number == 3:
        raise Fault("Three cannot be done.", "Take another.")
    return number


def test_without_helpers_all_is_done_here() -> None:
    """No process is started."""
    with Crew(0) as crew:
        made = crew.done(squared, range(5))
    assert [one for one, _ in made] == [0, 1, 4, 9, 16]
    assert {process for _, process in made} == {os.getpid()}


def test_a_single_share_is_done_here() -> None:
    """Nobody is waited for where there is nothing to share."""
    with Crew(2) as crew:
        assert crew.done(squared, [4]) == [(16, os.getpid())]
        assert crew.done(squared, []) == []


def test_helpers_and_this_process_work_side_by_side() -> None:
    """Every share once, in order; some here, some elsewhere, again with the same helpers."""
    with Crew(1) as crew:
        first, second = crew.done(squared, range(30)), crew.done(squared, [1, 2])
    assert [one for one, _ in first] == [number * number for number in range(30)]
    assert [one for one, _ in second] == [1, 4]
    here, elsewhere = os.getpid(), {process for _, process in first} - {os.getpid()}
    assert len(elsewhere) == 1
    assert here in {process for _, process in first}
    assert {process for _, process in second} == {here, *elsewhere}


@pytest.mark.parametrize("number", [0, 1])
def test_a_fault_of_a_share_is_the_fault_of_all(number: int) -> None:
    """Wherever it happened, with its words."""
    with pytest.raises(Fault, match="Three cannot be done") as caught, Crew(number) as crew:
        crew.done(refused, range(6))
    assert caught.value.remedy == "Take another."


def test_the_machine_says_how_many_help() -> None:
    """Never more than a few processes, and none where there is one processor."""
    assert 0 <= helpers() < MOST
