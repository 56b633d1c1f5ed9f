"""Plain data poured into nouns, and what is said of what does not fit."""

from decimal import Decimal

from pydantic import Field

from builder.doors.shape import TRUTH, keys_at, pour, pour_words
from builder.model.noun import Format, Id, Noun


class Part(Noun):
    """A part of the noun below."""

    name: str
    sound: bool = True


class Whole(Noun):
    """A noun with every shape that data may have."""

    format: Format
    number: int | None = None
    parts: tuple[Part, ...] = Field(default=(), min_length=1)
    by_id: dict[Id, Part] = Field(default_factory=dict)
    written: dict[Id, str | Decimal] = Field(default_factory=dict)


def told(data: object) -> list[tuple[tuple[str | int, ...], str]]:
    """Path and sort of every misfit."""
    return [(one.path, one.sort) for one in pour(Whole, data)[1]]


def test_data_that_fits_becomes_a_noun() -> None:
    """Numbers stay exact, lists become tuples."""
    data = {"format": 1, "parts": [{"name": "a", "sound": False}], "written": {"minutes": Decimal("7.5")}}
    noun, misfits = pour(Whole, data)
    assert noun == Whole(format=1, parts=(Part(name="a", sound=False),), written={"minutes": Decimal("7.5")})
    assert misfits == ()


def test_every_misfit_is_told() -> None:
    """Missing, unknown, malformed and of the wrong type, all at once."""
    assert told({"nubmer": 1, "parts": [{"name": 2}], "by_id": {"B d": {"name": "a"}}}) == [
        (("format",), "missing"),
        (("parts", 0, "name"), "string_type"),
        (("by_id", "B d", "[key]"), "string_pattern_mismatch"),
        (("nubmer",), "extra_forbidden"),
    ]


def test_a_list_is_too_short_only_if_it_is() -> None:
    """A list whose entries do not fit is not called too short as well; an empty one is."""
    assert told({"format": 1, "parts": [{"name": 1}]}) == [(("parts", 0, "name"), "string_type")]
    assert told({"format": 1, "parts": []}) == [(("parts",), "too_short")]


def test_truth_values_are_no_numbers() -> None:
    """True and false are told wherever they are not asked for; a validator would take them for 1 and 0."""
    data = {"format": True, "number": False, "parts": [{"name": "a", "sound": True}], "written": {"a": True}}
    assert [one for one in told(data) if one[1] == TRUTH] == [
        (("format",), TRUTH),
        (("number",), TRUTH),
        (("written", "a"), TRUTH),
    ]
    assert pour(Whole, {"format": 1, "number": True, "parts": [{"name": "a"}]})[0] is None


def test_what_is_no_mapping_is_told() -> None:
    """A list, a word or nothing at the top does not fit."""
    assert told(None) == told([]) == told("a") == told(1) == [((), "model_type")]


def test_known_keys_are_found_by_path() -> None:
    """The keys of the noun at a path, through lists, mappings and choices."""
    assert keys_at(Whole, ()) == ("format", "number", "parts", "by_id", "written")
    assert keys_at(Whole, ("parts", 0)) == keys_at(Whole, ("by_id", "parts")) == ("name", "sound")
    assert keys_at(Whole, ("number",)) == keys_at(Whole, ("nowhere", 0)) == ()


def test_words_are_flat_texts() -> None:
    """The words of the interface are texts by id and nothing else."""
    assert pour_words({"next": "Next"}) == ({"next": "Next"}, ())
    texts, misfits = pour_words({"next": ["Next"], "back": 1})
    assert texts == {}
    assert [one.path for one in misfits] == [("next",), ("back",)]
