"""Begins a course, or a file of one: asks, writes, lists it in the course; writes over nothing."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from datetime import date
from pathlib import Path

from builder.disk import read_bytes, shipped, swapped_in, write_bytes, write_text
from builder.doors.text import LIMIT
from builder.fault import Fault
from builder.flow.new_case import drafted
from builder.flow.schema import BESIDE, write_schemas
from builder.judge.judge import Judge
from builder.model.asking import Asking
from builder.model.file_name import unkept
from builder.model.library import Course
from builder.model.noun import hours_of
from builder.new.asked import about, about_course, since
from builder.new.case import case_text, usual_since
from builder.new.files import course_text, new_files
from builder.new.fill import as_flow
from builder.new.kinds import KINDS
from builder.new.listing import listed
from builder.new.names import id_from, own_id, unused
from builder.place import Path as Steps
from builder.read.course import read_all

TISSUES = {"tendon_tear": "tendon"}
FIRST_CASES = (
    {"id": "first_bruise", "title": "The first bruise", "region": "thigh", "injury": "contusion"},
    {"id": "first_strain", "title": "The first strain", "region": "calf", "injury": "strain"},
    {"id": "first_tear", "title": "The first torn tendon", "region": "elbow", "injury": "tendon_tear"},
)


def asked(kind: str, folder: Path, today: date) -> tuple[Asking, ...]:
    """What has to be known before a file of this sort is begun."""
    return about_course(folder.resolve().name) if kind == "course" else about(kind, _course(folder), today)


def begin_course(folder: Path, answers: Mapping[str, str]) -> list[str]:
    """A course that holds together, with a case to practise on and two in the test."""
    name = folder.resolve().name
    if why := unkept(name):
        raise Fault(f"Windows can keep no folder called {name}: {why}.", "Choose another name.")
    if folder.exists() and (not folder.is_dir() or any(folder.iterdir())):
        raise Fault(f"{folder} is there and not empty; nothing was written.", "Name a new folder.")
    given = answers.get("id")
    named = {**answers, "id": own_id(given) if given else id_from(answers["title"], "course")}
    with swapped_in(folder) as draft:
        write_text(draft / "course.yml", course_text(named, *(one["id"] for one in FIRST_CASES)))
        judge = Judge(_course(draft).content)
        for one in FIRST_CASES:
            usual = {
                **one,
                "tissue": TISSUES.get(one["injury"], "muscle"),
                "since": usual_since(one["injury"]),
            }
            case = drafted(judge, usual, ("phase", "choose", "refer"))
            write_text(draft / "cases" / f"{case.id}.yml", case_text(case, judge.content, usual["since"]))
        write_schemas(draft, draft / BESIDE)
    first = FIRST_CASES[0]["id"]
    return [f"Written: {folder / 'course.yml'}, with cases/{first}.yml to begin from.", *_next(folder)]


def begin(kind: str, folder: Path, answers: Mapping[str, str], today: date) -> list[str]:
    """A file of a course, listed where the course lists its like; says what it wrote and what comes next."""
    course, new = _course(folder), KINDS[kind]
    given = answers.get("id")
    name = own_id(given) if given else id_from(answers["title"], new.what)
    unused(name, _taken(folder / new.folder), new.what)
    named = {**answers, "id": name}
    files = _files(kind, named, course, today)
    for file, text in files.items():
        write_text(folder / new.folder / file, text)
    said = [f"Written: {(folder / new.folder / file)}" for file in files]
    if kind == "class":
        for inbox in ("answers", "stations"):
            (folder / new.folder / name / inbox).mkdir()
    elif at := _list_of(kind, named, course):
        said += _listed(folder, at, _entry(kind, named))
    write_schemas(folder, folder / BESIDE)
    return [*said, *_next(folder)]


def _course(folder: Path) -> Course:
    if not (folder / "course.yml").is_file():
        raise Fault(
            f"{folder} holds no course.yml.", "Name the folder of a course, or begin one: new course."
        )
    course = read_all(folder, shipped("content"), shipped("site_config.yml")).course
    if course is None:
        raise Fault("course.yml has errors to fix.", "Run check, mend them, and begin this again.")
    return course


def _taken(folder: Path) -> set[str]:
    return {path.name.partition(".")[0] for path in folder.iterdir()} if folder.is_dir() else set()


def _files(kind: str, answers: dict[str, str], course: Course, today: date) -> dict[str, str]:
    if kind == "case":
        return {f"{answers['id']}.yml": _case(course, answers)}
    return new_files(kind, answers, course, today)


def _case(course: Course, answers: dict[str, str]) -> str:
    ago = since(answers)
    try:
        hours_of(ago)
    except ValueError as error:
        raise Fault(f"{ago!r} is no span of time.", f"{str(error).capitalize()}.") from None
    objectives = tuple(one.id for one in course.file.objectives if one.id != "perform")
    case = drafted(Judge(course.content), {**answers, "since": ago}, objectives or ("choose",))
    return case_text(case, course.content, ago)


def _list_of(kind: str, answers: Mapping[str, str], course: Course) -> Steps:
    """Where the course lists it; nothing where it is not to be listed, or where there is no such list."""
    if kind != "case":
        return KINDS[kind].listed
    if answers["use"] == "test" and course.file.tests:
        return ("tests", 0, "cases")
    return KINDS[kind].listed if answers["use"] == "practice" and course.file.practice else ()


def _entry(kind: str, answers: Mapping[str, str]) -> str:
    if kind == "lesson":
        return as_flow({"file": f"{answers['id']}.md", "title": answers["title"]})
    return answers["id"]


def _listed(folder: Path, at: Steps, entry: str) -> Iterable[str]:
    path = folder / "course.yml"
    where = ", ".join(str(step + 1) if isinstance(step, int) else step for step in at)
    new = listed(read_bytes(path, LIMIT), at, entry)
    if new is None:
        return [f"Not listed yet: add `{entry}` in course.yml under {where}."]
    write_bytes(path, new)
    return [f"Listed in course.yml under {where}."]


def _next(folder: Path) -> list[str]:
    return [f'Next: change what it says, then run caseloom check "{folder}".']
