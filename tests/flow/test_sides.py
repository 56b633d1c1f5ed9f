"""A build that takes over what stands is byte for byte the build from nothing."""

import random
import re
from collections.abc import Mapping
from pathlib import Path

import pytest

from builder.check.leaks import Search, leaks_in
from builder.diagnostic import Diagnostic
from builder.doors.cache import Cache, NoCache, open_cache
from builder.flow import build as flow
from builder.flow.build import build
from builder.flow.crew import Crew
from builder.flow.opened import open_course
from builder.flow.sides import Record, Site, read_record, write_record
from builder.model.site import Finished
from tests.demo.small import small_course

ROUNDS = 4


def files(folder: Path) -> dict[str, bytes]:
    """Every file below a folder by its name."""
    return {
        path.relative_to(folder).as_posix(): path.read_bytes() for path in folder.rglob("*") if path.is_file()
    }


def written(folder: Path, out: Path, cache: Cache) -> dict[str, bytes]:
    """What a build leaves in `out`, papers and keys of earlier editions aside."""
    build(open_course(folder, cache), folder, out, cache)
    return {name: data for name, data in files(out).items() if not name.endswith(".json")}


def edit(folder: Path, chance: random.Random) -> None:
    """One sound edit: words or the title of a case, of a tested one too, or of the course, or a lesson."""
    kind = chance.choice(["mechanism", "title", "course", "lesson"])
    path = chance.choice(sorted((folder / "cases").glob("*.yml")))
    pattern = rf"(?m)^{kind}: .*"
    if kind == "course":
        path, pattern = folder / "course.yml", r"(?m)^level: .*"
    if kind == "lesson":
        path, pattern = folder / "lessons" / "dose.md", r"\Z"
    words = f"Wholly new words {chance.randrange(1000)}."
    new = {"lesson": f"\n{words}\n", "course": f"level: {words}"}.get(kind, f"{kind}: {words}")
    path.write_text(re.sub(pattern, new, path.read_text(encoding="utf-8"), count=1), encoding="utf-8")


def harm(out: Path, chance: random.Random) -> None:
    """Somebody changes, empties or deletes a page that was built."""
    for path in chance.sample(sorted(out.rglob("*.html")), 3):
        path.write_text(chance.choice(["", "<p>changed by hand</p>"]), encoding="utf-8")
    chance.choice(sorted(out.rglob("*.html"))).unlink()


def test_after_random_edits_the_sites_are_those_of_a_build_from_nothing(tmp_path: Path) -> None:
    """Edit after edit, in an out folder that somebody meddles with."""
    chance = random.Random(5)  # noqa: S311 - a fixed walk through edits
    folder, cache = small_course(tmp_path / "course"), open_cache(tmp_path / "course", tmp_path / "home")
    for number in range(ROUNDS):
        kept = written(folder, tmp_path / "kept", cache)
        fresh = written(folder, tmp_path / f"fresh{number}", NoCache())
        assert kept.keys() == fresh.keys()
        assert [name for name in fresh if kept[name] != fresh[name]] == []
        edit(folder, chance)
        harm(tmp_path / "kept", chance)


def test_an_unchanged_course_makes_no_page_and_a_changed_one_few(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """What stands is taken over; another out folder starts from nothing."""
    folder, cache = small_course(tmp_path / "course"), open_cache(tmp_path / "course", tmp_path / "home")
    left: list[int] = []
    real = flow._pressed  # noqa: SLF001 - what is left to press is nowhere else to be seen

    def noted(crew: Crew, *sites: tuple[Site, Path]) -> list[tuple[Finished, ...]]:
        left.append(sum(one.left for one, _ in sites))
        return real(crew, *sites)

    monkeypatch.setattr(flow, "_pressed", noted)
    written(folder, tmp_path / "out", cache)
    written(folder, tmp_path / "out", cache)
    path = folder / "cases" / "stilt_ankle.yml"
    path.write_text(
        path.read_text(encoding="utf-8").replace("mechanism: ", "mechanism: So ", 1), encoding="utf-8"
    )
    written(folder, tmp_path / "out", cache)
    written(folder, tmp_path / "other", cache)
    assert left[0] == left[3] > 60
    assert left[1] == 0
    assert 0 < left[2] <= 5


def test_a_leak_is_found_on_a_page_that_was_clean_before(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """When what must not be said changes, every page is looked at again."""
    folder, cache = small_course(tmp_path / "course"), open_cache(tmp_path / "course", tmp_path / "home")
    looked: list[int] = []

    def noted(found: Mapping[str, bytes], search: Search) -> list[Diagnostic]:
        looked.append(len(found))
        return leaks_in(found, search)

    monkeypatch.setattr(flow, "leaks_in", noted)
    for _ in range(2):
        written(folder, tmp_path / "out", cache)
    path = folder / "cases" / "ring_thigh.yml"
    path.write_text(
        re.sub(r"(?m)^title: .*", "title: Quite another name", path.read_text(encoding="utf-8")),
        encoding="utf-8",
    )
    written(folder, tmp_path / "out", cache)
    whole, unchanged, renamed = looked[::2]  # between them the handouts of the tests are looked at
    assert whole == renamed > 40
    assert unchanged < 15


def test_a_record_is_kept_whole_or_is_empty(tmp_path: Path) -> None:
    """Nothing lies between."""
    cache = open_cache(tmp_path, tmp_path / "home")
    assert read_record(cache, "student") == Record()
    write_record(cache, "student", Record(searched="x"))
    assert read_record(cache, "student") == Record(searched="x")
    assert read_record(cache, "instructor") == Record()
