"""Building, building again, checking again and previewing, as ratios of one run; run by `make bench`.

Everything is a whole process from start to end, as a person waits for it. The baseline is `mkdocs build` with
Material, search and pruned navigation, on the student site's own pages as files in sections of at most 40.
"""

import os
import re
import subprocess
import sys
from collections.abc import Iterable
from dataclasses import dataclass
from pathlib import Path
from shutil import rmtree

import pytest
import yaml

from builder.assess.papers import papers_and_keys
from builder.assess.practice import practice_cases
from builder.disk import shipped
from builder.flow.opened import open_course
from builder.model.site import SitePlan
from builder.render.student import student_site
from tests.bench.bench_check import grown
from tests.bench.saves import saves

SECTION = 40
ONE = "anvil_elbow"
BUILD = "from builder.cli import main; main()"
WATCH = """
import resource, subprocess, sys, time
before = time.perf_counter()
status = subprocess.call(sys.argv[1:], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
print(time.perf_counter() - before, resource.getrusage(resource.RUSAGE_CHILDREN).ru_maxrss)
sys.exit(status)
"""
PARSE = """
import sys, pathlib, yaml
for root in sys.argv[1:]:
    for path in pathlib.Path(root).rglob("*.yml"):
        yaml.load(path.read_bytes(), yaml.CSafeLoader)
"""


@dataclass(frozen=True)
class Took:
    """Seconds from start to end, and the largest memory of the process in MiB."""

    seconds: float
    memory: float


def took(home: Path, *command: object) -> Took:
    """One process, run to its end by a small one that watches it: a process inherits its parent's peak."""
    environment = {**os.environ, "XDG_CONFIG_HOME": str(home), "NO_MKDOCS_2_WARNING": "1"}
    environment.pop("PYTHONDONTWRITEBYTECODE", None)
    words = [sys.executable, "-c", WATCH, sys.executable, *(str(one) for one in command)]
    said = subprocess.run(words, env=environment, capture_output=True, text=True, check=True)
    seconds, memory = said.stdout.split()
    return Took(float(seconds), float(memory) / 1024)


def best(runs: Iterable[Took]) -> Took:
    """The quickest."""
    return min(runs, key=lambda one: one.seconds)


def practised(folder: Path, count: int) -> Path:
    """A course of so many cases, every copy under a title of its own and in a practice set.

    Cases of the test are not copied: what is asked in it may be read nowhere else.
    """
    grown(folder, count + count // 4)
    every = sorted((folder / "cases").glob("*.yml"))
    tested = (folder / "course.yml").read_text(encoding="utf-8").partition("\ntests:\n")[2]
    copies = [path for path in every if re.search(r"_\d+$", path.stem)]
    spare = [path for path in copies if re.search(rf"\b{path.stem.rpartition('_')[0]}\b", tested)]
    spare += [path for path in reversed(copies) if path not in spare][: len(every) - len(spare) - count]
    for path in spare:
        path.unlink()
    copies = [path for path in copies if path not in spare]
    for path in copies:
        text = path.read_text(encoding="utf-8")
        number = path.stem.rpartition("_")[2]
        titled = re.sub(r'(?m)^title: "?(.*?)"?$', rf'title: "\1 {number}"', text, count=1)
        path.write_text(titled, encoding="utf-8")
    names = [path.stem for path in copies]
    sets = [names[start : start + SECTION] for start in range(0, len(names), SECTION)]
    more = "".join(
        f"  - {{id: more_{number}, title: More {number}, cases: [{', '.join(one)}]}}\n"
        for number, one in enumerate(sets)
    )
    file = folder / "course.yml"
    file.write_text(
        file.read_text(encoding="utf-8").replace("\ntests:\n", f"\n{more}tests:\n", 1), encoding="utf-8"
    )
    return folder


def planned(folder: Path) -> SitePlan:
    """The student site of a course, its test drawn by a secret of the bench."""
    opened = open_course(folder)
    assert opened.course is not None
    assert opened.sound, opened.text(width=80, colour=False)
    drawn = papers_and_keys(opened.course, opened.judged, b"a secret of the bench alone")
    practice = practice_cases(opened.course, opened.judged)
    return student_site(opened.course, practice, tuple(one for one, _ in drawn))


def as_files(plan: SitePlan, folder: Path) -> Path:
    """The same pages as a folder that plain MkDocs builds."""
    for page in plan.pages:
        path = folder / "docs" / page.address
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(page.body if page.markdown else f"<div>\n{page.body}\n</div>\n", encoding="utf-8")
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


def told(name: str, one: Took, other: Took, aim: str) -> None:
    """One line of the table."""
    memory = f"{one.memory:.0f} MiB beside {other.memory:.0f}"
    print(f"  {name:<46} {one.seconds / other.seconds:6.2f} times  (stay near {aim}; {memory})")


FULL: dict[int, Took] = {}


@pytest.mark.parametrize(("count", "again"), [(200, "0.30"), (1000, "0.10")])
def test_build_and_check(count: int, again: str, tmp_path: Path) -> None:
    """Cold, unchanged, after one edit; and a check with nothing changed."""
    folder, home, out = practised(tmp_path / "course", count), tmp_path / "home", tmp_path / "out"
    plan = planned(folder)
    plain = as_files(plan, tmp_path / "plain")
    bare = best(took(home, "-m", "mkdocs", "build", "-q", "-f", plain / "mkdocs.yml") for _ in range(2))
    build = ("-c", BUILD, "build", folder, "--out", out)
    cold = took(home, *build)
    same = best(took(home, *build) for _ in range(3))
    rebuilt = []
    for number in range(3):
        edited(folder, f"Told in other words, number {number}")
        rebuilt.append(took(home, *build))
    took(home, "-c", BUILD, "check", folder)
    checked = best(took(home, "-c", BUILD, "check", folder) for _ in range(3))
    parsed = best(took(home, "-c", PARSE, folder, shipped("content")) for _ in range(3))
    print(f"\n{count} cases, {len(plan.pages)} student pages; mkdocs build {bare.seconds:.1f} s")
    told("build, both sites, cold, to mkdocs build", cold, bare, "1.25 for the student site")
    told("build, both sites, unchanged, to mkdocs build", same, bare, "1.10")
    told("build after one edit, to the cold build", best(rebuilt), cold, again)
    told("check, nothing changed, to the C loader", checked, parsed, "1")
    FULL[count] = cold
    if len(FULL) > 1:
        print(f"  1000 cases to 200: {FULL[1000].seconds / FULL[200].seconds:.1f} times (at most 5.5)")
    rmtree(tmp_path)


def test_preview(tmp_path: Path) -> None:
    """A hundred saves in a course of 200 cases, each until the page that shows it has come."""
    folder = practised(tmp_path / "course", 200)
    times = sorted(saves(folder, tmp_path / "home", 100, edited, ONE))
    soon = sum(one < 1 for one in times)
    print(f"\npreview, 200 cases: {soon} of 100 saves within a second (aim: 95); {_spread(times)}")


def _spread(times: list[float]) -> str:
    return f"median {times[49]:.2f} s, 95th {times[94]:.2f} s, longest {times[-1]:.2f} s"
