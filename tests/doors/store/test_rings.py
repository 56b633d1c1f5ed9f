"""Keys are remembered by edition, for good."""

from pathlib import Path

from builder.doors.store.rings import remember_rings, rings_by_edition
from tests.records.kept import contents, opened
from tests.records.made import NOW, ring

OLD = ring(edition="older")
FIRST, SECOND = ring(), ring(key_edition="second", tries=3)


def test_a_ring_is_kept_once(tmp_path: Path) -> None:
    """Seeing the same keys again, in one run or another, adds nothing."""
    with opened(tmp_path) as store:
        remember_rings(store, [FIRST, FIRST], NOW)
        remember_rings(store, [FIRST], NOW)
    assert len(contents(tmp_path)["rings"]) == 1


def test_an_earlier_edition_stays_gradable(tmp_path: Path) -> None:
    """Keys that no build holds any more come from the record, just as they were."""
    with opened(tmp_path) as store:
        remember_rings(store, [OLD, FIRST], NOW)
        assert rings_by_edition(store, []) == {("final", "older"): OLD, ("final", "k7q2m9xa"): FIRST}


def test_the_keys_at_hand_come_first(tmp_path: Path) -> None:
    """A correction is used at once, and else the newest in the record; a correction may be taken back."""
    place = ("final", "k7q2m9xa")
    with opened(tmp_path) as store:
        remember_rings(store, [FIRST], NOW)
        assert rings_by_edition(store, [SECOND])[place] == SECOND
        remember_rings(store, [SECOND], NOW)
        assert rings_by_edition(store, [])[place] == SECOND
        assert rings_by_edition(store, [FIRST])[place] == FIRST
