"""Values picked by pattern."""

from builder.read.select import select

DATA = {"visits": [{"id": "a", "findings": {"heat": "clear", "bend": 3}}, "broken", {"findings": None}]}


def test_steps_lists_and_keys() -> None:
    """A named step, any step, and the keys of a mapping."""
    assert list(select(DATA, "visits/*/id")) == [(("visits", 0, "id"), "a")]
    assert list(select(DATA, "visits/*/findings/*")) == [
        (("visits", 0, "findings", "heat"), "clear"),
        (("visits", 0, "findings", "bend"), 3),
    ]
    assert list(select(DATA, "visits/*/findings/@")) == [
        (("visits", 0, "findings", "heat"), "heat"),
        (("visits", 0, "findings", "bend"), "bend"),
    ]


def test_what_is_broken_is_passed_over() -> None:
    """Text where a block should be, nothing, and missing keys pick nothing and raise nothing."""
    assert list(select("text", "a/*/b")) == list(select(None, "@")) == list(select(DATA, "cases/*")) == []


def test_the_empty_pattern_is_the_whole() -> None:
    """No step leads to the data itself."""
    assert list(select(DATA, "")) == [((), DATA)]
