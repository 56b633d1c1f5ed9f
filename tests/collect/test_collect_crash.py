"""A crash at any instant loses nothing that was acknowledged and doubles nothing."""

import os
import signal
import subprocess
import sys
import time
from pathlib import Path
from random import Random

import pytest

from tests.records.kept import collect, contents, hand_in, look, opened
from tests.records.made import answers, folder, person, sheet_bytes

FILES = 60
PEOPLE = [person(number) for number in range(1, FILES + 1)]
SPRING = folder(*PEOPLE)

CHILD = """
import sys
from pathlib import Path
from builder.collect import collect
from tests.collect.test_collect_crash import SPRING
from tests.records.kept import opened
from tests.records.made import NOW, ring

collect.AT_ONCE = 3
place = Path(sys.argv[1])
with opened(place) as store:
    told = collect.collect_class(
        store, SPRING, place / "answers", [ring()], NOW, lambda done, _all: print(done, flush=True)
    )
print("taken", len(told.taken), flush=True)
"""


def begin(place: Path) -> subprocess.Popen[str]:
    """Start collecting in a process of its own."""
    return subprocess.Popen(
        [sys.executable, "-c", CHILD, str(place)],
        stdout=subprocess.PIPE,
        text=True,
        env={**os.environ, "PYTHONPATH": str(Path(__file__).parents[2])},
    )


def inbox(place: Path) -> None:
    """Hand in one sheet of everyone."""
    place.mkdir(exist_ok=True)
    hand_in(
        place, **{f"n{at:02d}": sheet_bytes(one.code, answers(wrong=at % 5)) for at, one in enumerate(PEOPLE)}
    )


def killed_after(place: Path, lines: int, seconds: float) -> int:
    """Kill a collecting process some moments after it said so many lines; the count it last acknowledged."""
    with begin(place) as child:
        assert child.stdout
        for _ in range(lines):
            child.stdout.readline()
        time.sleep(seconds)
        child.send_signal(signal.SIGKILL)
        rest = child.stdout.read().split()
    numbers = [int(word) for word in rest if word.isdigit()]
    return max([3 * lines, *numbers]) if lines or numbers else 0


@pytest.fixture(scope="module")
def undisturbed(tmp_path_factory: pytest.TempPathFactory) -> dict[str, list[tuple[object, ...]]]:
    """What the record holds when nothing goes wrong."""
    place = tmp_path_factory.mktemp("undisturbed")
    inbox(place)
    with opened(place) as store:
        assert len(collect(store, SPRING, place / "answers").taken) == FILES
    return contents(place)


@pytest.mark.parametrize("seed", range(4))
def test_a_killed_run_is_finished_by_the_next(
    tmp_path: Path, undisturbed: dict[str, list[tuple[object, ...]]], seed: int
) -> None:
    """After two kills at chance moments nothing told is missing, and a last run ends as if undisturbed."""
    chance = Random(seed)  # noqa: S311 - chance, not secrecy
    inbox(tmp_path)
    for _ in range(2):
        told = killed_after(tmp_path, chance.randrange(0, 12), chance.random() * 0.02)
        assert len(look(tmp_path, "SELECT id FROM sheets") if told else []) >= told
    with opened(tmp_path) as store:
        collect(store, SPRING, tmp_path / "answers")
    assert contents(tmp_path) == undisturbed


def test_two_at_once_share_the_work(tmp_path: Path, undisturbed: dict[str, list[tuple[object, ...]]]) -> None:
    """Two commands on one inbox take each sheet once between them, even the very first time."""
    inbox(tmp_path)
    both = [begin(tmp_path) for _ in range(2)]
    said = [child.communicate()[0].splitlines()[-1] for child in both]
    assert sum(int(line.removeprefix("taken ")) for line in said) == FILES
    assert contents(tmp_path) == undisturbed
