"""The whole job on the course that comes with the tool, step by step, on real files."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from pathlib import Path

from builder.disk import shipped
from builder.fault import Fault
from builder.flow.build import build
from builder.flow.opened import open_course
from builder.flow.records import analyse, certify, collect, grade, lay_out

CLASS = "spring"
COUNTS = " " * 5  # how the report sets the counts of each option, which here are left to the file
Say = Callable[[str], None]


def run_demo(out: Path, say: Say) -> None:
    """Check, build, collect, grade, certify and analyse; `say` hears every line as it comes."""
    course = shipped("demo_course")
    opened = open_course(course)
    _step(say, "1  Check: every case against the rules", [opened.text(width=80, colour=False)])
    if not opened.sound:
        raise Fault("The demonstration course has errors to fix.", "They are named above.")
    built = build(opened, course, out)
    _step(say, "2  Build: the student site and the instructor site", built.lines())
    private = out / "private"
    desk = lay_out(course, CLASS, private, private / "records.db")
    lines, whole = collect(desk)
    _step(say, "3  Collect: the answer sheets of the class, each exactly once", lines)
    _step(say, "4  Grade: exact marks, must-pass questions, station, attendance", grade(desk))
    _step(say, "5  Certify: who gets one, and who not and why", certify(desk))
    counted = [line for line in analyse(desk) if not line.startswith(COUNTS)]
    _step(say, "6  Analyse: what the answers say, and what they cannot say yet", counted)
    if not whole:
        raise Fault("Some answer sheets could not be taken.", "They are named above.")
    _step(say, "Open these", list(_to_open(built.publish, built.instructor, desk.lists)))


def _to_open(publish: Path, instructor: Path, lists: Path) -> Iterator[str]:
    yield f"  students      {publish / 'index.html'}"
    yield f"  instructor    {instructor / 'index.html'}"
    yield f"  certificates  {lists / 'certificates.csv'}"
    yield f"  refused       {lists / 'refused.csv'}"
    yield f"  analysis      {lists / 'analysis.txt'}"


def _step(say: Say, title: str, lines: list[str]) -> None:
    say("")
    say(title)
    say("-" * len(title))
    for line in lines:
        say(line)
