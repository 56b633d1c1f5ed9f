"""Places that are made only when asked for."""

import pytest

from builder.place import Place, Places, Spans

SPANS = Spans("a.yml", lambda: {(): (0, 0, 2, 4), ("b",): (1, 2, 1, 5)})


def test_spans_count_from_one_when_asked_for() -> None:
    """A span kept from zero is a place counted from one."""
    assert SPANS["b",] == Place("a.yml", 2, 3, 2, 6)
    assert list(SPANS) == [(), ("b",)]
    assert len(SPANS) == 2


def test_a_path_is_known_or_not() -> None:
    """Asking for what is not there is a plain miss."""
    assert ("b",) in SPANS
    assert ("c",) not in SPANS
    assert SPANS.get(("c",)) is None
    with pytest.raises(KeyError):
        SPANS["c",]


def test_places_find_the_nearest_parent() -> None:
    """Spans serve wherever a mapping of places does."""
    places = Places(Place("a.yml"), SPANS)
    assert places.of(("b", 0, "c")) == Place("a.yml", 2, 3, 2, 6)
    assert places.within(("str", "b", "tag")) == ("b",)
