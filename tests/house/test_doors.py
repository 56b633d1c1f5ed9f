"""Each outside thing comes in by one door."""

import ast
import sys

import pytest

from tests.house.plan import EDGE_CALLS, EDGE_MODULES, EDGE_NAMES, OPENED_BY, SEALED
from tests.house.source import Module, imports, modules, under

DYNAMIC = ("importlib.import_module", "importlib.util", "importlib.machinery", "runpy", "pkgutil")


def at_wrong_door(module: Module) -> list[str]:
    """The libraries a module imports though they are another's to open, or nobody's."""
    return sorted(name for name in imports(module) if not is_free(name) and not opens(module.name, name))


def is_free(name: str) -> bool:
    """Whether anybody may import this: our own, or the standard library where no door guards it."""
    top = name.partition(".")[0]
    return top == "builder" or (top in sys.stdlib_module_names and top not in OPENED_BY)


def opens(module: str, name: str) -> bool:
    """Whether the module is the door of the library."""
    return under(module, OPENED_BY.get(name.partition(".")[0], ()))


def reaches_outside(module: Module) -> list[str]:
    """Where a module reaches for clock, chance or environment, instead of being given them."""
    names = [name for name in imports(module) if under(name, EDGE_MODULES)]
    for node in ast.walk(module.tree):
        if isinstance(node, ast.Call) and name_of(node.func) in EDGE_CALLS:
            names.append(name_of(node.func))
        elif isinstance(node, ast.Name | ast.Attribute) and name_of(node) in EDGE_NAMES:
            names.append(name_of(node))
    return sorted(names)


def name_of(node: ast.expr) -> str:
    """The last step of a name, empty for what is no name."""
    if isinstance(node, ast.Attribute):
        return node.attr
    return node.id if isinstance(node, ast.Name) else ""


def imports_by_text(module: Module) -> list[str]:
    """The ways to import by a name given as text, which the other tests could not follow."""
    called = [
        name_of(node.func)
        for node in ast.walk(module.tree)
        if isinstance(node, ast.Call) and name_of(node.func) in ("__import__", "import_module")
    ]
    return [*called, *(name for name in imports(module) if under(name, DYNAMIC))]


def test_every_library_comes_in_by_its_door() -> None:
    """No module imports a library whose door it is not."""
    assert {module.name: bad for module in modules() if (bad := at_wrong_door(module))} == {}


def test_clock_chance_and_environment_enter_at_the_edge() -> None:
    """Ground, nouns and verbs are given the time, the seed and the settings."""
    inner = [module for module in modules() if module.part in SEALED]
    assert {module.name: bad for module in inner if (bad := reaches_outside(module))} == {}


def test_only_the_command_line_imports_by_text() -> None:
    """Commands are loaded when they are asked for; nothing else imports in a way that cannot be read off."""
    inner = [module for module in modules() if module.part != "cli"]
    assert {module.name: bad for module in inner if (bad := imports_by_text(module))} == {}


@pytest.mark.parametrize(
    ("name", "text"),
    [
        ("builder.judge.session", "import yaml"),
        ("builder.doors.page", "from mkdocs.config import load_config"),
        ("builder.grade.mark", "def f():\n    import csv"),
        ("builder.flow", "from pydantic import BaseModel"),
        ("builder.doors.site", "import click"),
        ("builder.doors.yamlish", "import yaml"),
        ("builder.doors.web", "import requests"),
    ],
)
def test_a_wrong_door_is_seen(name: str, text: str) -> None:
    """A library at another's door, or at none, is reported."""
    assert at_wrong_door(Module(name, text))


def test_a_right_door_is_let_be() -> None:
    """A door that is a folder may open its library in each of its modules."""
    assert at_wrong_door(Module("builder.doors.store.schema", "import sqlalchemy as sa\nimport json")) == []


@pytest.mark.parametrize(
    "text",
    [
        "from datetime import datetime\nwhen = datetime.now(tz=None)",
        "from datetime import date\nwhen = date.today()",
        "import time\nwhen = time.time()",
        "from random import Random",
        "import secrets",
        "import os\nhome = os.environ['HOME']",
        "from os import environ\nprint(environ)",
        "from os import getenv\ngetenv('HOME')",
    ],
)
def test_a_reach_outside_is_seen(text: str) -> None:
    """Each way to ask for time, chance or environment is reported."""
    assert reaches_outside(Module("builder.judge.session", text))


@pytest.mark.parametrize(
    "text",
    [
        "from importlib import import_module",
        "__import__('yaml')",
        "import importlib\nimportlib.import_module('yaml')",
        "import runpy",
    ],
)
def test_an_import_by_text_is_seen(text: str) -> None:
    """Each way to import by text is reported."""
    assert imports_by_text(Module("builder.judge.session", text))
