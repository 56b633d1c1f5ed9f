"""Rooms are small, say what they are for, bear a telling name and have a test."""

import ast
from pathlib import Path

import pytest

from tests.house.plan import MEASURED_SUFFIXES, MOST_FUNCTION_LINES, MOST_LINES, ROOT, TESTED_BY, VAGUE_NAMES
from tests.house.source import Module, files, load, modules, text_of, under

Function = ast.FunctionDef | ast.AsyncFunctionDef
Named = Function | ast.ClassDef
METHOD = "'''Says.'''\nclass A:\n    '''Says.'''\n    def f(self): pass"


def functions(module: Module) -> list[Function]:
    """Every function of a module, methods and inner ones included."""
    return [node for node in ast.walk(module.tree) if isinstance(node, Function)]


def too_long(module: Module) -> list[str]:
    """The functions with more lines than a function may have, from `def` to their last line."""
    lengths = {node.name: (node.end_lineno or node.lineno) - node.lineno + 1 for node in functions(module)}
    return [f"{name}: {length} lines" for name, length in lengths.items() if length > MOST_FUNCTION_LINES]


def too_tall(text: str) -> bool:
    """Whether a file has more lines than a file may have."""
    return len(text.splitlines()) > MOST_LINES


def undocumented(module: Module) -> list[str]:
    """The module, its public functions and its public classes, where they do not say what they are for."""
    classes = [node for node in module.tree.body if isinstance(node, ast.ClassDef)]
    nodes = [*module.tree.body, *(node for made in classes for node in made.body)]
    public = [node for node in nodes if isinstance(node, Named) and not node.name.startswith("_")]
    silent = [node.name for node in public if not ast.get_docstring(node)]
    return silent if ast.get_docstring(module.tree) else [module.name, *silent]


def does_nothing(module: Module) -> bool:
    """Whether a module only gathers names, as the front of a package may."""
    return not any(isinstance(node, Named) for node in ast.walk(module.tree))


def mirror(module: Module) -> str:
    """The path, without suffix, where the tests of a module are kept."""
    for root, kept in TESTED_BY.items():
        if under(module.name, (root,)):
            return kept
    folders = module.name.split(".")[1:]
    stem = "init" if module.package else folders.pop().strip("_")
    return "/".join(["tests", *folders, f"test_{stem}"])


def has_tests(module: Module, paths: set[str]) -> bool:
    """Whether the tests of a module are there, in one file or in several with a word added."""
    kept = mirror(module)
    return any(path == f"{kept}.py" or path.startswith(f"{kept}_") for path in paths)


def is_vague(path: Path) -> bool:
    """Whether a file is named for nothing in particular."""
    return not VAGUE_NAMES.isdisjoint(path.stem.lower().replace("-", "_").split("_"))


def test_no_function_is_too_long() -> None:
    """A function has at most thirty lines."""
    everything = (*modules(), *modules("tests"))
    assert {module.name: bad for module in everything if (bad := too_long(module))} == {}


def test_no_file_is_too_tall() -> None:
    """A file that someone wrote by hand has at most three hundred lines."""
    written = [path for part in ("builder", "tests") for path in files(ROOT / part)]
    measured = [path for path in written if path.suffix in MEASURED_SUFFIXES]
    assert [str(path.relative_to(ROOT)) for path in measured if too_tall(text_of(path) or "")] == []


def test_everything_says_what_it_is_for() -> None:
    """Modules, public functions and classes, and every test, have a docstring."""
    everything = (*modules(), *modules("tests"))
    assert {module.name: bad for module in everything if (bad := undocumented(module))} == {}


def test_every_module_has_its_tests() -> None:
    """The tests of builder/x/y.py are in tests/x/test_y.py, and hold at least one test."""
    tests = [path for path in files(ROOT / "tests") if path.suffix == ".py"]
    kept = {path.relative_to(ROOT).as_posix() for path in tests if "def test_" in load(path).text}
    assert [
        mirror(module) for module in modules() if not does_nothing(module) and not has_tests(module, kept)
    ] == []


def test_no_name_is_vague() -> None:
    """No file is called after nothing in particular."""
    assert [str(path.relative_to(ROOT)) for path in files() if is_vague(path)] == []


def test_a_long_function_is_seen() -> None:
    """Thirty lines pass, thirty-one do not, in a method as anywhere."""
    body = "        pass\n" * 29
    assert too_long(Module("builder.x", f"class A:\n    def f(self):\n{body}")) == []
    assert too_long(Module("builder.x", f"class A:\n    async def f(self):\n{body}        pass\n"))


def test_a_tall_file_is_seen() -> None:
    """Three hundred lines pass, one more does not."""
    assert not too_tall("x\n" * 300)
    assert too_tall("x\n" * 301)


@pytest.mark.parametrize(
    "text",
    [
        "",
        "'''Says.'''\ndef f(): pass",
        "'''Says.'''\nclass A: pass",
        "'''Says.'''\nasync def test_x(): pass",
        METHOD,
    ],
)
def test_silence_is_seen(text: str) -> None:
    """A module, function, class or test without a docstring is reported."""
    assert undocumented(Module("builder.x", text))


@pytest.mark.parametrize(
    ("module", "path"),
    [
        (Module("builder.judge.phase", ""), "tests/judge/test_phase.py"),
        (Module("builder.judge.phase", ""), "tests/judge/test_phase_laws.py"),
        (Module("builder.place", ""), "tests/test_place.py"),
        (Module("builder.cli", "", package=True), "tests/cli/test_init.py"),
        (Module("builder.__main__", ""), "tests/test_main.py"),
    ],
)
def test_tests_are_looked_for_in_one_place(module: Module, path: str) -> None:
    """A module's tests stand where its name says, and nowhere else."""
    assert has_tests(module, {path})
    assert not has_tests(module, {"tests/elsewhere/test_phase.py", "tests/test_placement.py"})


@pytest.mark.parametrize("name", ["utils.py", "key_helpers.py", "common.css", "session-manager.js"])
def test_a_vague_name_is_seen(name: str) -> None:
    """A vague word is found alone and in company."""
    assert is_vague(Path(name))
    assert not is_vague(Path("commons.py"))
