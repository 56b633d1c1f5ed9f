"""Places: every value is found again, or else the nearest thing that holds it."""

from dataclasses import FrozenInstanceError

import pytest

from builder.place import Place, Places, Rows, Spans

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


def test_rows_become_paths_only_when_asked() -> None:
    """Each row is a step below the row that holds it; what has no span holds others and is no value."""
    rows = Rows()
    spans = Spans("case.yml", rows.by_path)
    keys = Spans("case.yml", rows.keys_by_path)
    rows.values += [(-1, "", (0, 0, 3, 0)), (0, "visits", (1, 2, 3, 0)), (1, 0, (1, 4, 1, 9))]
    rows.values += [(0, "", None), (3, 0, (2, 1, 2, 2))]
    rows.keys += [(0, "visits", (1, 0, 1, 1))]
    assert list(spans) == [(), ("visits",), ("visits", 0), ("", 0)]
    assert spans["visits", 0] == Place("case.yml", 2, 5, 2, 10)
    assert ("",) not in spans
    assert dict(keys) == {("visits",): Place("case.yml", 2, 1, 2, 2)}


def test_of_two_values_in_one_place_the_later_one_counts() -> None:
    """As of two that are written under one key."""
    rows = Rows([(-1, "", (0, 0, 2, 0)), (0, "a", (0, 3, 0, 4)), (0, "a", (1, 3, 1, 4))])
    assert Spans("case.yml", rows.by_path)["a",].line == 2
