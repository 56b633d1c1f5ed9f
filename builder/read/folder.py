"""The folders of content and course: which files they hold, and which of them nobody knows."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from builder.diagnostic import Diagnostic
from builder.model.board import BoardRules
from builder.model.card import Card
from builder.model.case import Case
from builder.model.fact import FactBook, ScreeningBook
from builder.model.noun import Noun
from builder.model.question import AuthorQuestion
from builder.model.rule import Rule
from builder.model.station import Station
from builder.model.tables import PhaseBook, ReferenceBook, SeverityBook
from builder.place import Place
from builder.read.nearest import nearest

BOOKS: dict[str, type[Noun]] = {
    "facts.yml": FactBook,
    "screening.yml": ScreeningBook,
    "phases.yml": PhaseBook,
    "severity.yml": SeverityBook,
    "references.yml": ReferenceBook,
}
SHIPPED = "content/"
WORDS = "words"
WORDING = "wording.yml"
SHARED: dict[str, type[Noun]] = {"cards": Card, "rules": Rule, "boards": BoardRules}
OWN: dict[str, type[Noun]] = {**SHARED, "cases": Case, "questions": AuthorQuestion, "stations": Station}
COURSE = "course.yml"
SITE = "site_config.yml"
REVIEWS = "reviews.yml"
SINGLE = (COURSE, SITE, REVIEWS)
LESSONS = "lessons"
MEDIA = "media"
NOT_READ_YET = ("panel",)
BUILT = ("out", "private")
ELSEWHERE = (MEDIA, "classes", *BUILT)


@dataclass(frozen=True)
class Named:
    """A file on disk, and the name under which its faults are shown."""

    path: Path
    file: str


def files_in(root: Path, folder: str, ending: str, before: str = "") -> Iterator[Named]:
    """The files below `root/folder` with this ending, sorted by name; `before` is put before their names.

    A link that leads out of a course is not followed: a page could show what is no part of it.
    """
    inside: dict[Path, bool] = {}
    for path in sorted((root / folder).rglob(f"*{ending}")):
        if (
            path.is_file()
            and (before == SHIPPED or _stays_inside(path, root, inside))
            and not any(is_hidden(step) for step in path.relative_to(root).parts)
        ):
            yield Named(path, before + path.relative_to(root).as_posix())


def strays(root: Path) -> Iterator[Diagnostic]:
    """Advice on everything in a course folder that nothing reads, and every link that is not followed."""
    for path in _visible(root):
        if path.name not in ELSEWHERE:
            yield from (
                _link(one, root) for one in (path, *sorted(path.rglob("*"))) if _leads_away(one, root)
            )
        folder, name = path.is_dir(), path.name
        if folder and name in NOT_READ_YET and any(_visible(path)):
            message = f"The folder `{name}` is not read by this version."
            yield _advice("folder_not_read", f"{name}/", message, "Nothing is lost; it is only not used yet.")
        elif folder and (name in OWN or name in (LESSONS, WORDS)):
            ending = ".md" if name == LESSONS else ".yml"
            yield from (_stray(one, root, ending) for one in path.rglob("*") if _is_stray(one, root, ending))
        elif name not in (SINGLE if not folder else (*NOT_READ_YET, *ELSEWHERE)) and not _is_readme(name):
            yield _unknown(name, folder=folder)


def _stays_inside(path: Path, root: Path, inside: dict[Path, bool]) -> bool:
    """Whether a file lies inside; `inside`: the folders of which that is known."""
    if path.is_symlink():
        return _is_inside(path, root)
    if path.parent not in inside:
        inside[path.parent] = _is_inside(path.parent, root)
    return inside[path.parent]


def _is_inside(path: Path, root: Path) -> bool:
    return path.resolve().is_relative_to(root.resolve())


def _leads_away(path: Path, root: Path) -> bool:
    return path.is_symlink() and not (_is_inside(path, root) and path.exists())


def _link(path: Path, root: Path) -> Diagnostic:
    message = "This link leads out of the course folder." if path.exists() else "This link leads to nothing."
    place = Place(path.relative_to(root).as_posix())
    remedy = "Put a copy of the file in its place, or remove it."
    return Diagnostic("link_not_followed", "error", place, message, remedy)


def _visible(folder: Path) -> list[Path]:
    return [path for path in sorted(folder.iterdir()) if not is_hidden(path.name)]


def is_hidden(name: str) -> bool:
    """Whether a name is one that systems and editors leave behind, or hide."""
    return name.startswith(".") or name.endswith("~") or name.lower() in ("thumbs.db", "desktop.ini")


def _is_readme(name: str) -> bool:
    return name.lower().startswith("readme")


def _is_stray(path: Path, root: Path, ending: str) -> bool:
    steps = path.relative_to(root).parts
    return path.is_file() and path.suffix != ending and not any(is_hidden(step) for step in steps)


def _stray(path: Path, root: Path, ending: str) -> Diagnostic:
    file = path.relative_to(root).as_posix()
    remedy = f"Call it `{path.stem}{ending}` if it should be, or move it away."
    return _advice(
        "file_not_read", file, f"This file is not read: its name does not end in `{ending}`.", remedy
    )


def _unknown(name: str, *, folder: bool) -> Diagnostic:
    known = (*OWN, LESSONS, WORDS, *NOT_READ_YET, *ELSEWHERE) if folder else SINGLE
    near = nearest(name, known)
    what = "folder" if folder else "file"
    remedy = f"Did you mean `{near}`?" if near else "Move it away if it is not needed."
    return _advice(f"{what}_not_read", f"{name}/" if folder else name, f"This {what} is not read.", remedy)


def _advice(check: str, file: str, message: str, remedy: str) -> Diagnostic:
    return Diagnostic(check, "advice", Place(file), message, remedy)
