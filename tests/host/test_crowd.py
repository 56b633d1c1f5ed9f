"""Two hundred people hand in within a few seconds: everyone has a receipt, everything lies on the disk."""

import shutil
from hashlib import sha256
from pathlib import Path

import pytest

from tests.demo.small import small_course
from tests.host.crowd import codes_of, crowd, hand_in_all, kept, share
from tests.host.running import own_address, running
from tests.render.sample_site import built


def test_none_of_two_hundred_is_lost(tmp_path: Path) -> None:
    """Each has a receipt of its own and lies in the inbox byte for byte; how long it took is printed."""
    course = small_course(tmp_path / "course")
    shutil.rmtree(course / "classes" / "spring" / "answers")
    (course / "out").mkdir()
    (course / "out" / "publish").symlink_to(built(), target_is_directory=True)
    codes = crowd(course, 200)
    with running(course, course / "out", tmp_path, "--port", "0", "--hall", own_address()) as host:
        came = hand_in_all(host.hall, codes, 5.0)
        (ended,) = host.end()
    times = [one.seconds for one in came]
    print(
        f"\n200 sheets within 5 s: median {share(times, 50):.3f} s, 99th percentile {share(times, 99):.3f} s,"
        f" slowest {max(times):.3f} s"
    )
    assert "" not in {one.receipt for one in came}
    assert len({one.receipt for one in came}) == 200
    assert kept(course) == {sha256(one.data).hexdigest() for one in came}
    assert ended["counts"] == {"sheets": 200, "people": 200, "of": 208, "set_aside": 0}


def test_everyone_has_a_code_of_their_own() -> None:
    """Or the crowd would be smaller than it says."""
    assert len(set(codes_of(900))) == 900


@pytest.mark.parametrize(("percent", "time"), [(50, 2), (99, 4), (100, 4), (25, 1), (26, 2)])
def test_a_percentile_is_a_time_that_somebody_took(percent: int, time: float) -> None:
    """The nearest rank, from below."""
    assert share([3, 1, 4, 2], percent) == time
