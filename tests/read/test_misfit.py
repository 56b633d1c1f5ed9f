"""Misfits as things to fix, each at its place."""

from builder.doors.shape import pour
from builder.doors.yaml import read_yaml
from builder.model.case import Case, Client
from builder.read.misfit import in_plain_words


def told(text: str, model: type[Case | Client] = Client) -> list[tuple[str, int, int, str]]:
    """Check, line, column and message of everything found in a text."""
    parsed = read_yaml(text.encode(), "a.yml")
    return [
        (one.check, one.place.line, one.place.column, one.message)
        for one in in_plain_words(model, pour(model, parsed.value)[1], parsed.places)
    ]


def test_a_missing_key_stands_at_its_parent() -> None:
    """What is not there has the place of the block it is missing from."""
    assert ("key_missing", 2, 1, "`age` is missing in `client`.") in told("id: a\nclient:\n  role: x\n", Case)
    assert told("role: x\n") == [("key_missing", 1, 1, "`age` is missing.")]


def test_an_unknown_key_stands_at_itself() -> None:
    """The key is marked, not its value."""
    assert told("role: x\nage: 3\ngaols: y\n") == [("key_unknown", 3, 1, "`gaols` is not known here.")]


def test_the_remedy_names_the_nearest_key() -> None:
    """A slip in a key is answered with the key that was meant."""
    parsed = read_yaml(b"role: x\nage: 3\ngaols: y\n", "a.yml")
    (fault,) = in_plain_words(Client, pour(Client, parsed.value)[1], parsed.places)
    assert (fault.remedy, fault.path) == ("Did you mean `goals`?", ("gaols",))


def test_a_malformed_key_stands_at_itself() -> None:
    """A key that is no id is marked as a key."""
    faults = told("history: {Numb Foot: yes}\n", Case)
    assert ("id_malformed", 1, 11, "`Numb Foot` is no id.") in faults


def test_one_value_of_several_types_is_told_once() -> None:
    """A list where a word or a number belongs is one fault, at the value."""
    faults = [one for one in told("history: {numb: [a]}\n", Case) if one[0] != "key_missing"]
    assert faults == [("word_or_number_expected", 1, 17, "`numb` must be a word or a number, not a list.")]


def test_a_truth_value_is_told_once() -> None:
    """Where true fits neither as number nor as word, only that is said."""
    faults = [one for one in told("history: {numb: true}\ninvented: true\n", Case) if one[0] != "key_missing"]
    assert faults == [
        ("yes_or_no_expected", 1, 17, "`numb` cannot be `true`."),
        ("yes_or_no_expected", 2, 11, "`invented` cannot be `true`."),
    ]
