"""Reads the source of the house: its files, its modules and what they import."""

import ast
import fnmatch
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache
from pathlib import Path

from tests.house.plan import ROOT


@dataclass(frozen=True)
class Module:
    """One parsed module, under its dotted name."""

    name: str
    text: str
    package: bool = False

    @property
    def tree(self) -> ast.Module:
        """The syntax tree of the module."""
        return ast.parse(self.text)

    @property
    def part(self) -> str:
        """The part of the house it belongs to; empty for the root package itself."""
        return part_of(self.name)


def part_of(name: str) -> str:
    """The second step of a dotted name, empty if there is none."""
    return name.split(".")[1] if "." in name else ""


@cache
def ignored() -> tuple[str, ...]:
    """The name patterns of .gitignore, and the store of versions itself."""
    lines = (ROOT / ".gitignore").read_text(encoding="utf-8").split()
    return (".git", *(line.strip("/") for line in lines))


def is_ignored(name: str) -> bool:
    """Whether a file or folder of this name is no part of the source."""
    return any(fnmatch.fnmatch(name, pattern) for pattern in ignored())


def files(folder: Path = ROOT) -> Iterator[Path]:
    """Every source file below `folder`, in order of name."""
    for path in sorted(folder.iterdir()):
        if is_ignored(path.name):
            continue
        if path.is_dir():
            yield from files(path)
        else:
            yield path


def text_of(path: Path) -> str | None:
    """The text of a file, or None for a picture, a film and the like."""
    data = path.read_bytes()
    if b"\0" in data:
        return None
    return data.decode("utf-8")


@cache
def modules(package: str = "builder") -> tuple[Module, ...]:
    """Every module below `package`, in order of name."""
    return tuple(load(path) for path in files(ROOT / package) if path.suffix == ".py")


def load(path: Path) -> Module:
    """The module kept at `path`."""
    steps = path.relative_to(ROOT).with_suffix("").parts
    package = steps[-1] == "__init__"
    return Module(".".join(steps[:-1] if package else steps), path.read_text(encoding="utf-8"), package)


def imports(module: Module) -> set[str]:
    """The dotted names a module imports, wherever in it the import stands; `from a import b` gives a.b."""
    found: set[str] = set()
    for node in ast.walk(module.tree):
        if isinstance(node, ast.Import):
            found.update(alias.name for alias in node.names)
        elif isinstance(node, ast.ImportFrom):
            base = from_where(module, node)
            found.update(f"{base}.{alias.name}" for alias in node.names)
    return found


def from_where(module: Module, node: ast.ImportFrom) -> str:
    """The absolute name that a `from` import draws from."""
    if not node.level:
        return node.module or ""
    steps = module.name.split(".")
    keep = steps[: len(steps) - node.level + module.package]
    return ".".join([*keep, *([node.module] if node.module else [])])


def under(name: str, roots: tuple[str, ...]) -> bool:
    """Whether a dotted name is one of `roots` or lies below one."""
    return any(name == root or name.startswith(f"{root}.") for root in roots)


def reached(start: str, house: tuple[Module, ...]) -> set[str]:
    """Every module that is loaded when `start` is, parents of packages included."""
    by_name = {module.name: module for module in house}
    seen: set[str] = set()
    waiting = [start]
    while waiting:
        steps = waiting.pop().split(".")
        names = {".".join(steps[:length]) for length in range(1, len(steps) + 1)} & by_name.keys()
        for name in names - seen:
            seen.add(name)
            waiting.extend(imports(by_name[name]))
    return seen
