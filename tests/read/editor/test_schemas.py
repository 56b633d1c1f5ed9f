"""The schemas agree with the reader: what they refuse, it refuses; what it accepts, they accept."""

from functools import cache

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from jsonschema import Draft7Validator

from builder.disk import shipped
from builder.doors.schema import Schema
from builder.doors.shape import pour
from builder.read.course import shelf_of
from builder.read.editor.kinds import KINDS, WORDS
from builder.read.refer.refer import refer
from builder.read.shelf import Shelf
from builder.read.written import Entry, Written
from tests.read.editor.shapes import refusals, validators, written
from tests.read.folders import BASE
from tests.read.test_misfit_words import replaced

GIVEN_BY_FACTS = {"condition", "given", "limits", "recorded", "ladder", "written", "taught"}
ROOTS = {"content": shipped("content"), "demo_course": shipped("demo_course")}
FILES = [(name, root, path) for root, folder in ROOTS.items() for name, kind in KINDS.items()
         for path in sorted(folder.glob(kind.where))]  # fmt: skip


@pytest.mark.parametrize("name", KINDS)
def test_every_shipped_file_is_accepted(name: str) -> None:
    """The demonstration and the content hold to the schema of their sort."""
    schema = validators(ROOTS["content"], ROOTS["demo_course"])[name]
    files = [path for kind, _, path in FILES if kind == name]
    assert {str(path): refused for path in files if (refused := refusals(schema, written(path)))} == {}


def test_the_shipped_files_are_of_nearly_every_sort() -> None:
    """The test above does not walk an empty list."""
    assert {name for name, _, _ in FILES} >= set(KINDS) - {"question", "reviews", "site_config"}
    assert len(FILES) > 150
    words = validators(ROOTS["content"])[WORDS]
    assert refusals(words, written(ROOTS["content"] / "words" / "en.yml")) == []


def fields(schema: Schema) -> list[tuple[str, str, Schema]]:
    """Every field that a noun has, with the part of the schema that it belongs to."""
    parts = {"": schema, **schema.get("$defs", {})}
    return [
        (name, key, field)
        for name, part in parts.items()
        for key, field in part.get("properties", {}).items()
        if name not in GIVEN_BY_FACTS
    ]


@pytest.mark.parametrize("name", [*KINDS, WORDS])
def test_every_field_is_told_with_an_example_that_holds(name: str) -> None:
    """Title, description and example stand at every field, and the schema accepts the example."""
    schema = validators(ROOTS["content"], ROOTS["demo_course"])[name].schema
    silent = [
        (part, key)
        for part, key, field in fields(schema)
        if not (field.get("title") and field.get("description") and field.get("examples"))
    ]
    assert silent == []
    wrong = {}
    for part, key, field in fields(schema):
        one = Draft7Validator({**field, "$defs": schema.get("$defs", {})})
        if found := [said for example in field["examples"] for said in refusals(one, example)]:
            wrong[part, key] = found
    assert wrong == {}


@pytest.mark.parametrize(
    ("name", "where", "value", "accepted"),
    [
        ("case", "visits/0/since_injury", "14 h", True),
        ("case", "visits/0/since_injury", 14, True),
        ("case", "visits/0/since_injury", "3 weeks", True),
        ("case", "visits/0/since_injury", "14", False),
        ("case", "visits/0/since_injury", "14 minutes", False),
        ("case", "visits/0/chosen/0/card", "cold_pack", True),
        ("case", "visits/0/chosen/0/card", "cold_pck", False),
        ("case", "visits/0/findings", {"heat": "clear", "rest_pain": 4}, True),
        ("case", "visits/0/findings", {"heet": "clear"}, False),
        ("case", "visits/0/findings", {"heat": "cleer"}, False),
        ("case", "visits/0/findings", {"rest_pain": 11}, False),
        ("case", "visits/0/findings", {"fever": True}, False),
        ("case", "visits/0/findings", {"region": "thigh"}, False),
        ("case", "visits/0/screen", {"set": "lower_limb", "all_no_except": {"fever": "yes"}}, True),
        ("case", "visits/0/screen", {"set": "lower_lim"}, False),
        ("case", "tissue/region", "elbow", True),
        ("case", "tissue/region", "elbo", False),
        ("case", "objectives", ["one_to_come"], True),
        ("station", "pass_mark", "75 %", True),
        ("station", "pass_mark", "3/4", True),
        ("station", "pass_mark", "75 percent", False),
        ("station", "minutes", 0, False),
        ("rule", "when", {"fever": "yes", "rest_pain": {"at_least": 4}}, True),
        ("rule", "when", {"any": [{"heat": ["slight", "clear"]}, {"not": {"recorded": "fever"}}]}, True),
        ("rule", "when", {"written.minutes": {"over": 20}}, True),
        ("rule", "when", {"session_urgency": {"at_least": "days"}}, True),
        ("rule", "when", {}, False),
        ("rule", "when", {"any": []}, False),
        ("rule", "when", {"any": [{"feever": "yes"}]}, False),
        ("rule", "when", {"fever": "maybe"}, False),
        ("rule", "when", {"fever": {"over": "no"}}, False),
        ("rule", "when", {"rest_pain": {"above": 4}}, False),
        ("rule", "when", {"recorded": "feever"}, False),
        ("rule", "options", [{"groups": ["hands_on"], "needs": {"minutes": {"at_most": 5}}}], True),
        ("rule", "options", [{"groups": ["hands_onn"], "answer": "barred"}], False),
        ("rule", "options", [{"groups": ["hands_on"], "needs": {"minuts": {"at_most": 5}}}], False),
        ("rule", "source", ["ryan1991"], True),
        ("rule", "source", ["ryan1992"], False),
        ("card", "hands_on", "yes", True),
        ("card", "hands_on", True, True),
        ("card", "hands_on", 1, False),
        ("card", "ladder", {"minutes": [5, 10]}, True),
        ("card", "ladder", {"minutes": [-5]}, False),
        ("board", "dated", "2026-11-25", True),
        ("board", "dated", "25.11.2026", False),
        ("course", "agenda", [{"day": 1, "start": "9:00", "end": "10:00", "title": "A", "kind": "meal"}],
         False),
        ("course", "level", None, False),
        ("class", "dates", ["2026-04-18"], True),
        ("class", "dates", [], False),
        ("question", "kind", "one", False),
        ("facts", "facts", {"x": {"kind": "yesno", "label": "X", "group": "sign", "worse_when": "yes"}},
         False),
    ],
)  # fmt: skip
def test_a_value_is_taken_or_flagged_as_the_reader_would(
    name: str, where: str, value: object, *, accepted: bool
) -> None:
    """In a file that holds, one value is put in place of another."""
    steps = tuple(int(one) if one.isdigit() else one for one in where.split("/"))
    validator = validators(ROOTS["content"], ROOTS["demo_course"])[name]
    found = refusals(validator, set_at(sample(name), steps, value))
    assert bool(found) != accepted, found
    noun, _ = pour(KINDS[name].model, set_at(sample(name), steps, value))
    assert noun is not None or not accepted


def sample(name: str) -> object:
    """A sound file of a sort."""
    path = next((path for kind, _, path in FILES if kind == name), None)
    return written(path or BASE / "course" / "questions" / "cold_time.yml")


def set_at(data: object, steps: tuple[str | int, ...], value: object) -> object:
    """The data with a value put, or added, at a path."""
    if not steps:
        return value
    if isinstance(data, list) and isinstance(steps[0], int):
        return [set_at(one, steps[1:], value) if i == steps[0] else one for i, one in enumerate(data)]
    block = data if isinstance(data, dict) else {}
    return {**block, str(steps[0]): set_at(block.get(str(steps[0])), steps[1:], value)}


@cache
def base() -> Shelf:
    """The small sound course of the reading tests."""
    return shelf_of(BASE / "course", BASE / "content", BASE / "site_config.yml")


def of_kind(entry: Entry) -> str:
    """The sort of file that an entry is."""
    return next(name for name, kind in KINDS.items() if kind.model is entry.model)


def refused_by_reader(damaged: Entry, value: object) -> bool:
    """Whether the reader finds an error in the course with one file damaged."""
    one = damaged.written
    rewritten = Written(one.file, value, one.places, (), whole=True)
    noun, misfits = pour(damaged.model, value)
    if misfits:
        return True
    swapped = [Entry(e.model, rewritten, noun, ()) if e is damaged else e for e in base().entries]
    return any(found.level == "error" for found in refer(Shelf(tuple(swapped), base().lessons)))


DAMAGE = st.sampled_from(
    [
        None,
        True,
        False,
        -1,
        0,
        1,
        7,
        "",
        "x",
        "yes",
        "5",
        "5 h",
        "3/4",
        "Ä b",
        [],
        ["x"],
        [1],
        {},
        {"x": "yes"},
    ]
)


@settings(max_examples=1500, deadline=None)
@given(data=st.data())
def test_what_a_schema_refuses_the_reader_refuses(data: st.DataObject) -> None:
    """Whatever small damage is done to whatever file, an editor never flags what the reader would take."""
    entry = data.draw(st.sampled_from(base().entries))
    path = data.draw(st.sampled_from([one for one in entry.written.places.values if one]))
    value = entry.written.value
    if data.draw(st.booleans()):
        value = replaced(value, path, data.draw(DAMAGE))
    elif isinstance(path[-1], str):
        value = renamed(value, path, data.draw(st.sampled_from(["x", path[-1] + "s", path[-1][:-1] or "z"])))
    validator = validators(BASE / "content", BASE / "course")[of_kind(entry)]
    if found := refusals(validator, value):
        assert refused_by_reader(entry, value), (entry.written.file, path, found)


def renamed(value: object, path: tuple[str | int, ...], name: str) -> object:
    """The data with a key called otherwise."""
    if isinstance(value, dict):
        return {
            (name if key == path[0] and len(path) == 1 else key): renamed(one, path[1:], name)
            if key == path[0] and len(path) > 1 else one
            for key, one in value.items()
        }  # fmt: skip
    assert isinstance(value, list)
    return [renamed(one, path[1:], name) if i == path[0] else one for i, one in enumerate(value)]


def test_the_damage_is_often_refused() -> None:
    """A misspelt key in any file of the small course is refused by schema and reader alike."""
    for entry in base().entries:
        value = entry.written.value
        assert isinstance(value, dict)
        misspelt = {("formatt" if key == "format" else key): one for key, one in value.items()}
        validator = validators(BASE / "content", BASE / "course")[of_kind(entry)]
        assert refusals(validator, value) == []
        assert refusals(validator, misspelt) != []
        assert refused_by_reader(entry, misspelt)
