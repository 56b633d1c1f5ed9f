"""How long a cold check takes, as ratios to PyYAML's C loader over the same files; run by `make bench`."""

from collections.abc import Callable
from pathlib import Path
from time import process_time

import pytest
import yaml

from builder.check.evidence import Evidence
from builder.check.registry import run_checks
from builder.disk import shipped
from builder.flow.opened import open_course
from builder.flow.uncollected import uncollected
from builder.judge.coverage import covered, nothing_shown
from builder.judge.judge import Judge
from builder.judge.prove import holes
from builder.model.library import Course
from builder.read.course import read_all
from tests.bench.courses import grown
from tests.bench.took import load

TARGET = 3
ROUNDS = 3


def seconds(work: Callable[[], object]) -> float:
    """The least CPU time of a few rounds, in seconds."""
    taken = []
    for _ in range(ROUNDS):
        before = process_time()
        work()
        taken.append(process_time() - before)
    return min(taken)


def read(folder: Path) -> Course:
    """The course as check reads it."""
    course = read_all(folder, shipped("content"), shipped("site_config.yml")).course
    assert course is not None
    return course


def parts(folder: Path) -> dict[str, float]:
    """The seconds that each part of check takes by itself."""
    course = read(folder)
    judge = Judge(course.content)
    judged = {name: judge.answered(case) for name, case in course.cases.items()}
    proven = tuple(holes(course.content, judge.space))
    shown = covered(judge, course.cases, judged, nothing_shown(course.content.rules))
    evidence = Evidence(course, judged, (), proven, shown)
    return {
        "reading": seconds(lambda: read(folder)),
        "judging": seconds(lambda: [judge.answered(case) for case in course.cases.values()]),
        "proof": seconds(lambda: holes(course.content, judge.space)),
        "coverage": seconds(
            lambda: covered(judge, course.cases, judged, nothing_shown(course.content.rules))
        ),
        "checks": seconds(lambda: run_checks(evidence)),
    }


@pytest.mark.parametrize("count", [0, 1000])
def test_check_of_a_cold_course(count: int, tmp_path: Path) -> None:
    """The demonstration, and a course of a thousand cases; the whole and its parts."""
    folder = tmp_path / "course"
    grown(folder, count)
    files = [path for root in (folder, shipped("content")) for path in sorted(root.rglob("*.yml"))]
    loading = seconds(lambda: [yaml.load(path.read_bytes(), yaml.CSafeLoader) for path in files])
    whole = seconds(lambda: open_course(folder))
    cases = len(list((folder / "cases").iterdir()))
    ratio = whole / loading
    told = f"{cases} cases, {len(files)} files: {ratio:.2f} times the C loader of {loading:.2f} s"
    print(f"\ncheck: {told}; {load()}")
    if count:
        print(f"  {ratio / TARGET:.2f} of what is aimed at for a thousand cases")
    with uncollected():
        taken_by = parts(folder)
    for name, taken in taken_by.items():
        print(f"  {name:<9} {taken / loading:5.2f} times, {taken / whole:4.0%} of check")
