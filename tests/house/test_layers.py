"""Data runs one way: each part of the house leans only on the parts below it."""

import pytest

from tests.house.plan import DISK_MODULES, KEY, MAY_IMPORT, OPENED_BY, STUDENT
from tests.house.source import Module, imports, modules, part_of, reached, under

DOORS = {door for doors in OPENED_BY.values() for door in doors if door.startswith("builder.doors.")}


def leans_wrongly(module: Module) -> list[str]:
    """The imports of a module that its place in the house does not allow."""
    if not module.part:
        return sorted(name for name in imports(module) if part_of(name) in MAY_IMPORT)
    allowed = {module.part, "__version__", *MAY_IMPORT.get(module.part, ())}
    ours = {name for name in imports(module) if under(name, ("builder",))}
    return sorted(name for name in ours if part_of(name) not in allowed)


def crosses_doors(module: Module) -> list[str]:
    """The imports by which one door leads through another that opens a library."""
    others = tuple(door for door in DOORS if not under(module.name, (door,)))
    return sorted(name for name in imports(module) if under(name, others))


def student_modules(house: tuple[Module, ...]) -> list[str]:
    """The modules that make what a student may see."""
    return [module.name for module in house if module.name.startswith(STUDENT)]


def test_every_part_is_planned() -> None:
    """No module stands outside the plan."""
    assert {module.part for module in modules()} - {""} <= MAY_IMPORT.keys()


def test_parts_lean_only_on_what_is_below() -> None:
    """No part imports one above it, and no verb imports another."""
    assert {module.name: bad for module in modules() if (bad := leans_wrongly(module))} == {}


def test_no_door_leads_through_another() -> None:
    """A door opens one outside thing and knows of no other door."""
    doors = [module for module in modules() if module.part == "doors" and module.name != "builder.doors"]
    assert {door.name: bad for door in doors if (bad := crosses_doors(door))} == {}


def test_nouns_know_no_disk() -> None:
    """The model imports nothing that reads or writes files."""
    nouns = [module for module in modules() if module.part == "model"]
    touching = {noun.name: name for noun in nouns for name in imports(noun) if under(name, DISK_MODULES)}
    assert touching == {}


def test_keys_never_travel() -> None:
    """Loading the student renderer never loads the key, by whatever way round."""
    students = student_modules(modules())
    assert students
    assert [name for name in students if KEY in reached(name, modules())] == []


@pytest.mark.parametrize(
    ("name", "text"),
    [
        ("builder.judge.session", "from builder.check.case import gaps"),
        ("builder.judge.session", "from builder import flow"),
        ("builder.judge.session", "def late():\n    import builder.cli.main"),
        ("builder.judge.session", "from ..grade import marks"),
        ("builder.model.case", "from builder.doors.yaml import read"),
        ("builder.doors.yaml", "import builder.read"),
        ("builder.flow", "from builder.cli import main"),
        ("builder.host.server", "from builder.judge.session import judge"),
        ("builder.place", "import builder.model.case"),
        ("builder", "from builder.flow import demo"),
    ],
)
def test_a_wrong_lean_is_seen(name: str, text: str) -> None:
    """An import against the grain is reported, wherever and however it is written."""
    assert leans_wrongly(Module(name, text, package=name == "builder"))


@pytest.mark.parametrize(
    ("name", "text"),
    [
        ("builder.judge.session", "from builder.judge.phase import phase\nfrom builder.doors import yaml\n"),
        ("builder.judge.session", "from .phase import phase\nfrom ..model import case\nimport json"),
        ("builder.cli.main", "from builder import __version__, flow"),
    ],
)
def test_a_right_lean_is_let_be(name: str, text: str) -> None:
    """An import with the grain is not reported."""
    assert leans_wrongly(Module(name, text)) == []


def test_a_door_through_a_door_is_seen() -> None:
    """One door that imports another is reported; its own folder, and a module that opens nothing, is not."""
    text = "import builder.doors.store.schema, builder.doors.text\nimport builder.doors.yaml"
    door = Module("builder.doors.store.opening", text)
    assert crosses_doors(door) == ["builder.doors.yaml"]


@pytest.mark.parametrize(
    "house",
    [
        {STUDENT: f"import {KEY}"},
        {STUDENT: "from builder.model import key"},
        {STUDENT: "", f"{STUDENT}_page": f"from {KEY} import Key"},
        {STUDENT: "from builder.render.parts import row", "builder.render.parts": f"from {KEY} import Key"},
        {
            STUDENT: "",
            "builder.render": "import builder.render.key",
            "builder.render.key": f"import {KEY}",
        },
    ],
)
def test_a_travelling_key_is_seen(house: dict[str, str]) -> None:
    """A key that reaches the student renderer directly, in a row of steps or through the package is found."""
    made = tuple(Module(name, text, package=name == "builder.render") for name, text in house.items())
    made = (*made, Module(KEY, ""), Module("builder.model", "", package=True))
    assert any(KEY in reached(name, made) for name in student_modules(made))
