"""A value of another shape than its question expects reads as nothing."""

from builder.grade.scoring.value import chosen, listed, paired, written


def test_a_value_is_read_as_what_is_expected() -> None:
    """One name is a choice, names are choices or an order, pairs are pairs, text is text."""
    assert chosen("a") == {"a"}
    assert chosen(("a", "b", "a")) == {"a", "b"}
    assert listed(("b", "a")) == ("b", "a")
    assert paired((("l", "r"), ("l", "r"))) == {("l", "r")}
    assert written("7,5") == "7,5"


def test_another_shape_is_nothing() -> None:
    """Nothing is made of it that could earn a mark; a strange choice stays one, and is wrong."""
    assert chosen((("l", "r"),)) == {""}
    assert (listed("abc"), listed((("l", "r"),))) == ((), ())
    assert (paired("abc"), paired(("a", "b"))) == (frozenset(), frozenset())
    assert written(("7,5",)) == ""
