"""Ids and orders in which neither author nor key can be read."""

from dataclasses import replace

from builder.assess.laying import laid_out
from builder.assess.opaque import Opaque
from builder.assess.question import Choice, Shown
from tests.assess.sample import SECRET
from tests.assess.test_versions import shown

MANY = tuple(Choice(f"option {number}") for number in range(8))


def orders(one: Shown) -> set[tuple[str, ...]]:
    """The orders in which the versions A to F show the options of a question."""
    laid = [laid_out([one], Opaque(SECRET, f"final|{letter}"))[0] for letter in "ABCDEF"]
    return {tuple(option.title for option in each.question.options) for each in laid}


def test_each_version_has_its_own_order() -> None:
    """Six versions of eight options do not share one order."""
    assert len(orders(replace(shown("a", "v1", "option"), options=MANY))) == 6


def test_options_that_rise_keep_their_order() -> None:
    """Where options have an order of their own, every version shows it."""
    one = replace(shown("a", "v1", "phase"), options=MANY, in_order=True)
    assert orders(one) == {tuple(choice.title for choice in MANY)}


def test_ids_name_the_options_they_were_made_for() -> None:
    """`ids` follows the options as given, whatever the order shown."""
    (laid,) = laid_out([replace(shown("a", "v1", "option"), options=MANY)], Opaque(SECRET, "final|A"))
    titles = {option.id: option.title for option in laid.question.options}
    assert [titles[one] for one in laid.ids] == [choice.title for choice in MANY]


def test_ids_are_unique_in_a_version() -> None:
    """Questions and options of one version never share an id, even where options read the same."""
    laid = laid_out([shown(case, "v1", "option") for case in "abcdef"], Opaque(SECRET, "final|A"))
    ids = [one.question.id for one in laid] + [option.id for one in laid for option in one.question.options]
    assert len(set(ids)) == len(ids)


def test_chips_tell_options_apart() -> None:
    """Two options of one title differ by their chips, and so do their ids."""
    pair = (Choice("Cold", ("10 min",)), Choice("Cold", ("20 min",)))
    (laid,) = laid_out([replace(shown("a", "v1", "option"), options=pair)], Opaque(SECRET, "final|A"))
    assert len(set(laid.ids)) == 2
