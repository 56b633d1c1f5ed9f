"""The shape of a noun for an editor."""

from decimal import Decimal

from pydantic import Field

from builder.doors.schema import places_at, put, schema_of, schema_of_output
from builder.model.noun import Id, Noun


class Inner(Noun):
    """One leaf."""

    name: Id = Field(description="Its name.", examples=["a"])


class Outer(Noun):
    """A small file."""

    many: tuple[Inner, ...] = ()
    by_name: dict[Id, Inner] = Field(default_factory=dict)
    one: Inner | None = None
    count: int = Field(default=1, ge=1)
    measure: Decimal = Decimal(0)


def test_every_field_has_a_title_and_the_file_its_own() -> None:
    """A field is titled as a person reads it."""
    schema = schema_of(Outer, "A small file")
    assert schema["title"] == "A small file"
    assert schema["properties"]["by_name"]["title"] == "By name"
    assert schema["additionalProperties"] is False


def test_a_place_is_found_through_lists_mappings_and_what_may_be_left_out() -> None:
    """Every way to the same noun leads to the same part."""
    schema = schema_of(Outer, "A small file")
    found = [places_at(schema, f"{way}/name") for way in ("many/*", "by_name/*", "one")]
    assert [len(one) for one in found] == [1, 1, 1]
    assert found[0][0] is found[1][0] is found[2][0]
    assert places_at(schema, "many/*/no_such_key") == []


def test_what_is_put_keeps_what_is_said() -> None:
    """The names that may stand take the place of the pattern; title and example stay."""
    schema = schema_of(Outer, "A small file")
    (place,) = places_at(schema, "many/*/name")
    put(place, {"enum": ["a", "b"]})
    assert place == {"title": "Name", "description": "Its name.", "examples": ["a"], "enum": ["a", "b"]}


def test_the_keys_of_a_mapping_are_a_place() -> None:
    """`@` means the keys."""
    schema = schema_of(Outer, "A small file")
    (place,) = places_at(schema, "by_name/@")
    put(place, {"enum": ["a"]})
    assert schema["properties"]["by_name"]["propertyNames"] == {"enum": ["a"]}


def test_digits_in_quotes_are_a_whole_number_too() -> None:
    """As for the reader."""
    assert schema_of(Outer, "x")["properties"]["count"]["type"] == ["integer", "string"]
    assert Outer.model_validate({"count": "7"}).count == 7


def test_the_schema_of_an_output_lets_a_later_tool_add_keys() -> None:
    """Its blocks are open; what they must have is kept."""
    schema = schema_of_output(Outer, "What is handed out")
    assert schema["title"] == "What is handed out"
    assert "additionalProperties" not in schema
    assert schema["$defs"]["Inner"]["required"] == ["name"]
