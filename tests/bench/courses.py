"""Courses of any number of cases for the bench, and their student pages as plain MkDocs builds them."""

from __future__ import annotations

import re
from collections.abc import Container
from pathlib import Path
from shutil import copytree, ignore_patterns

import yaml

from builder.assess.papers import papers_and_keys
from builder.disk import shipped
from builder.flow.fingerprints import fingerprints
from builder.flow.opened import open_course
from builder.flow.sides import Planner, Tests
from builder.model.site import SitePlan

COURSE = shipped("demo_course")
SECTION = 40
ONE = "anvil_elbow"
ID = re.compile(r"^id: .*$", re.MULTILINE)


def grown(folder: Path, count: int, alone: Container[str] = ()) -> list[str]:
    """The demonstration with copies of its cases, each under an id of its own, until there are `count`.

    The names of the copies are given back; of cases that stand `alone` none is made.
    """
    copytree(COURSE, folder, ignore=ignore_patterns("classes", "out", "private", ".*"))
    written = {path.stem: path.read_text(encoding="utf-8") for path in sorted((folder / "cases").iterdir())}
    copied = [name for name in written if name not in alone]
    made: list[str] = []
    for number in range(count - len(written)):
        name = copied[number % len(copied)]
        copy = f"{name}_{2 + number // len(copied)}"
        text = ID.sub(f"id: {copy}", written[name], count=1)
        (folder / "cases" / f"{copy}.yml").write_text(text, encoding="utf-8")
        made.append(copy)
    return made


def practised(folder: Path, count: int) -> Path:
    """A course of so many cases, every copy under a title of its own and in a practice set.

    Cases of the test are not copied: what is asked in it may be read nowhere else.
    """
    tests = yaml.safe_load((COURSE / "course.yml").read_bytes())["tests"]
    copies = grown(folder, count, {name for test in tests for name in test["cases"]})
    for copy in copies:
        path = folder / "cases" / f"{copy}.yml"
        number = copy.rpartition("_")[2]
        titled = re.sub(
            r'(?m)^title: "?(.*?)"?$', rf'title: "\1 {number}"', path.read_text(encoding="utf-8"), count=1
        )
        path.write_text(titled, encoding="utf-8")
    _shown(folder / "course.yml", copies)
    return folder


def _shown(file: Path, names: list[str]) -> None:
    sets = [names[start : start + SECTION] for start in range(0, len(names), SECTION)]
    more = "".join(
        f"  - {{id: more_{number}, title: More {number}, cases: [{', '.join(one)}]}}\n"
        for number, one in enumerate(sets)
    )
    text = file.read_text(encoding="utf-8").replace("\ntests:\n", f"\n{more}tests:\n", 1)
    file.write_text(text, encoding="utf-8")


def planned(folder: Path) -> SitePlan:
    """The student site of a course, its test drawn by a secret of the bench."""
    opened = open_course(folder)
    assert opened.course is not None
    assert opened.sound, opened.text(width=80, colour=False)
    drawn = papers_and_keys(opened.course, opened.judged, b"a secret of the bench alone")
    tests = Tests(tuple(one for one, _ in drawn), tuple(ring for _, ring in drawn))
    plan, _ = Planner(opened.course, opened.judged, fingerprints(opened.course), tests).student({})
    return plan


def as_files(plan: SitePlan, folder: Path) -> Path:
    """The same pages as a folder that plain MkDocs builds: Material, search, navigation pruned."""
    for page in plan.pages:
        path = folder / "docs" / page.address
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(page.body if page.markdown else f"<div>\n{page.body}\n</div>\n", encoding="utf-8")
    for name in plan.media:
        (folder / "docs" / name).parent.mkdir(parents=True, exist_ok=True)
        (folder / "docs" / name).write_bytes(b"")
    sections = [
        {f"{one.title} {start}": list(one.pages[start : start + SECTION])}
        for one in plan.sections
        for start in range(0, len(one.pages), SECTION)
    ]
    settings = {
        "site_name": plan.name,
        "use_directory_urls": False,
        "theme": {"name": "material", "font": False, "features": ["navigation.prune"]},
        "plugins": ["search"],
        "nav": sections,
    }
    (folder / "mkdocs.yml").write_text(yaml.safe_dump(settings), encoding="utf-8")
    return folder


def edited(folder: Path, words: str) -> None:
    """One case saved with another story."""
    path = folder / "cases" / f"{ONE}.yml"
    text = path.read_text(encoding="utf-8")
    path.write_text(re.sub(r"(?m)^mechanism: .*", f"mechanism: {words}.", text, count=1), encoding="utf-8")
