"""One right answer among wrong ones."""

from collections import Counter

from hypothesis import given
from hypothesis import strategies as st

from builder.assess.beside import WRONG, beside

WORDS = st.lists(st.text("abc", min_size=1, max_size=9), unique=True, max_size=12)


def drawn(name: str, right: list[str], wrong: list[str]) -> list[str]:
    """What stands side by side, by its text."""
    return beside(name, right, wrong, str)


@given(st.text(), WORDS, WORDS)
def test_one_right_stands_first_among_as_many_wrong_as_asked(
    name: str, right: list[str], wrong: list[str]
) -> None:
    """Each once; nothing at all where there are too few."""
    made = drawn(name, [f"r{one}" for one in right], [f"w{one}" for one in wrong])
    if not right or len(wrong) < WRONG:
        assert made == []
    else:
        assert [one[0] for one in made] == ["r", *"w" * WRONG]
        assert len(set(made)) == len(made)
        assert {one[1:] for one in made[1:]} <= set(wrong)


@given(st.text(), WORDS, WORDS, st.randoms())
def test_the_authors_order_leaves_no_trace(
    name: str, right: list[str], wrong: list[str], chance: object
) -> None:
    """However the answers are listed, the same are drawn."""
    chance.shuffle(shuffled := list(wrong))  # type: ignore[attr-defined]
    assert drawn(name, right, wrong) == drawn(name, right[::-1], shuffled)


def test_length_tells_nothing() -> None:
    """Over many questions the right answer stands at every place by length about as often."""
    right, wrong = ["r" * size for size in range(1, 20)], ["w" * size for size in range(1, 20)]
    places: Counter[int] = Counter()
    for number in range(400):
        made = drawn(f"case {number}", right, wrong)
        places[sum(len(one) > len(made[0]) for one in made[1:])] += 1
    assert set(places) == {0, 1, 2, 3}
    assert min(places.values()) > 70


def test_where_there_is_no_choice_the_length_has_to_do() -> None:
    """A right answer longer than all others still stands among them."""
    assert drawn("any", ["the longest of all"], ["a", "b", "c"])[0] == "the longest of all"
