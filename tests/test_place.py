"""Places: every value is found again, or else the nearest thing that holds it."""

from dataclasses import FrozenInstanceError

import pytest

from builder.place import Place, Places

WHOLE = Place("case.yml", 1, 1, 9, 1)
VISITS = Place("case.yml", 3, 1, 8, 1)
SINCE = Place("case.yml", 4, 12, 4, 16)
SINCE_KEY = Place("case.yml", 4, 5, 4, 10)
PLACES = Places(
    WHOLE,
    values={
        (): WHOLE,
        ("visits",): VISITS,
        ("visits", 0): VISITS,
        ("visits", 0, "since"): SINCE,
    },
    keys={("visits", 0, "since"): SINCE_KEY},
)


def test_a_known_value_has_its_own_place() -> None:
    """The path of a value gives the span of just that value."""
    assert PLACES.of(("visits", 0, "since")) == SINCE


@pytest.mark.parametrize(
    ("path", "place"),
    [
        (("visits", 0, "since", "unit"), SINCE),
        (("visits", 0, "phase"), VISITS),
        (("visits", 7, "phase"), VISITS),
        (("title",), WHOLE),
        ((), WHOLE),
    ],
)
def test_an_unknown_value_has_the_place_of_its_nearest_parent(
    path: tuple[str | int, ...], place: Place
) -> None:
    """A value that is missing is shown where it should stand."""
    assert PLACES.of(path) == place


def test_a_file_without_any_value_has_its_whole_place() -> None:
    """A file that could not be read is still named."""
    assert Places(WHOLE).of(("visits", 0)) == WHOLE


def test_a_key_is_told_from_its_value() -> None:
    """A key has a place of its own; without one, the value's place stands in."""
    assert PLACES.of_key(("visits", 0, "since")) == SINCE_KEY
    assert PLACES.of_key(("visits",)) == VISITS
    assert PLACES.of_key(("visits", 0, "gone")) == VISITS


def test_steps_the_file_does_not_know_are_left_out() -> None:
    """The tags that a choice between shapes adds to a path are taken away."""
    assert PLACES.within(("visits", "tuple", 0, "Visit", "since")) == ("visits", 0, "since")
    assert PLACES.within(("nothing", "here")) == ()


def test_places_follow_the_file_and_never_change() -> None:
    """Places sort by file, line and column, and are frozen."""
    first, second, other = Place("a.yml", 2, 9), Place("a.yml", 10, 1), Place("b.yml", 1, 1)
    assert sorted([other, second, first]) == [first, second, other]
    with pytest.raises(FrozenInstanceError):
        first.line = 3  # type: ignore[misc]
