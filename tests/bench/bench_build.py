"""Building, building again, checking and previewing, as ratios of one run; run by `make bench`.

Everything is a whole process from start to end. The baseline of a build is `mkdocs build` with Material,
search and pruned navigation on the student site's own pages, as files in sections of at most 40. A build
works on all processors, MkDocs on one, so the work of all processes is told beside the time. Runs that are
compared stand side by side in turn, and of each the median counts.
"""

import gzip
from pathlib import Path
from shutil import rmtree

import pytest

from builder.disk import shipped
from builder.model.site import SitePlan
from tests.bench.courses import ONE, as_files, edited, planned, practised
from tests.bench.saves import saves
from tests.bench.took import PROGRAM, Took, load, middle, ratio, took

PARSE = """
import sys, pathlib, yaml
for root in sys.argv[1:]:
    for path in pathlib.Path(root).rglob("*.yml"):
        yaml.load(path.read_bytes(), yaml.CSafeLoader)
"""
STUDENT = """
import sys, pathlib
from builder.assess.papers import papers_and_keys
from builder.check.leaks import Search
from builder.doors.site import build_site
from builder.flow.build import refuse_keys
from builder.flow.fingerprints import fingerprints
from builder.flow.opened import open_course
from builder.flow.sides import Planner, Tests
folder, out = map(pathlib.Path, sys.argv[1:])
opened = open_course(folder)
drawn = papers_and_keys(opened.course, opened.judged, b"a secret of the bench alone")
tests = Tests(tuple(one for one, _ in drawn), tuple(ring for _, ring in drawn))
plan, _ = Planner(opened.course, opened.judged, fingerprints(opened.course), tests).student({})
build_site(plan, out)
refuse_keys(out, Search(tests.rings, opened.course))
"""
COLD: dict[int, dict[str, Took]] = {}


@pytest.mark.parametrize(("count", "rounds"), [(200, 3), (1000, 1)])
def test_cold_builds(count: int, rounds: int, tmp_path: Path) -> None:
    """Of both sites, and of the student site alone in one process, beside MkDocs."""
    folder, home = practised(tmp_path / "course", count), tmp_path / "home"
    plan = planned(folder)
    plain = as_files(plan, tmp_path / "plain") / "mkdocs.yml"
    runs: dict[str, list[Took]] = {"mkdocs": [], "both": [], "student": []}
    for _ in range(rounds):
        for name in ("both", "student"):
            rmtree(tmp_path / name, ignore_errors=True)
        runs["mkdocs"].append(took(home, "-m", "mkdocs", "build", "-q", "-f", plain))
        runs["both"].append(took(home, "-c", PROGRAM, "build", "--fresh", folder, "--out", tmp_path / "both"))
        runs["student"].append(took(home, "-c", STUDENT, folder, tmp_path / "student"))
    found = COLD[count] = {name: middle(some) for name, some in runs.items()}
    print(
        f"\n{count} cases, {len(plan.pages)} student pages; {load()}; mkdocs {found['mkdocs'].seconds:.1f} s"
    )
    ratio("cold build, student site, one process", found["student"], found["mkdocs"], "1.25")
    ratio("cold build, both sites", found["both"], found["mkdocs"], "1.25 for the student site")
    _grown()
    _kept(folder, tmp_path, found)
    rmtree(tmp_path)


def _grown() -> None:
    """How much longer a thousand cases take than two hundred."""
    if len(COLD) > 1:
        for name, words in (("both", "both sites"), ("student", "the student site"), ("mkdocs", "mkdocs")):
            more, fewer = COLD[1000][name], COLD[200][name]
            print(f"  1000 cases to 200, {words}: {more.seconds / fewer.seconds:.1f} times (at most 5.5)")


def _kept(folder: Path, tmp_path: Path, cold: dict[str, Took]) -> None:
    """Unchanged, after one edit, and checked: with what was kept from before."""
    home, out = tmp_path / "home", tmp_path / "both"
    count = len(list((folder / "cases").iterdir()))
    build, check = ("-c", PROGRAM, "build", folder, "--out", out), ("-c", PROGRAM, "check", folder)
    took(home, *build)
    same = middle(took(home, *build) for _ in range(3))
    rebuilt = []
    for number in range(3):
        edited(folder, f"Told in other words, number {number}")
        rebuilt.append(took(home, *build))
    took(home, *check)
    pairs = [
        (
            took(home, "-c", PARSE, folder, shipped("content")),
            took(home, *check),
            took(home, *check, "--fresh"),
        )
        for _ in range(3)
    ]
    parsed, checked, fresh = (middle(some) for some in zip(*pairs, strict=True))
    ratio("unchanged build, both sites, to mkdocs build", same, cold["mkdocs"], "1.10")
    ratio(
        "after one edit, to the cold build", middle(rebuilt), cold["both"], "0.30" if count < 1000 else "0.10"
    )
    ratio("cold check, the command, to the C loader", fresh, parsed, "3 for a thousand cases")
    ratio("check, nothing changed, to the C loader", checked, parsed, "1")


def test_preview(tmp_path: Path) -> None:
    """A hundred saves in a course of 200 cases, each until the page that shows it has come."""
    folder = practised(tmp_path / "course", 200)
    times = sorted(saves(folder, tmp_path / "home", 100, edited, ONE))
    soon = sum(one < 1 for one in times)
    spread = f"median {times[49]:.2f} s, 95th {times[94]:.2f} s, longest {times[-1]:.2f} s"
    print(f"\npreview, 200 cases: {soon} of 100 saves within a second (aim: 95); {spread}; {load()}")


def test_help_and_weight(tmp_path: Path) -> None:
    """How long `--help` takes, and how heavy a student page's own script and style are."""
    asked = [took(tmp_path, "-c", PROGRAM, "--help") for _ in range(9)]
    bare = [took(tmp_path, "-c", "pass") for _ in range(9)]
    least = min(one.seconds for one in asked) * 1000
    print(
        f"\n--help: {least:.0f} ms, {middle(asked).seconds * 1000:.0f} in the middle (aim 150); "
        f"Python alone {middle(bare).seconds * 1000:.0f}; {load()}"
    )
    plan = planned(practised(tmp_path / "course", 100))
    heaviest = max(_weight(plan, page.scripts) for page in plan.pages)
    print(f"own script and style of the heaviest student page: {heaviest / 1000:.1f} kB compressed (aim 40)")


def _weight(plan: SitePlan, scripts: tuple[str, ...]) -> int:
    """The bytes of the look and of these scripts, each compressed by itself as a server sends it."""
    names = {"assets/look.css", "assets/look.js", *scripts}
    return sum(len(gzip.compress(plan.assets[name])) for name in names)
