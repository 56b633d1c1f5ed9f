"""A course held open: every save is seen, no fault blanks it, and nothing is written."""

import re
from pathlib import Path

import pytest

from builder.doors.cache import NoCache
from builder.flow import live as flow
from builder.flow.live import NO_EDITION, Live
from builder.model.site import SitePlan
from tests.demo.small import small_course


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """A course to edit, that has never been built."""
    made = small_course(tmp_path / "course")
    (made / "private" / "draw_secret").unlink()
    (made / "private").rmdir()
    return made


def body(plan: SitePlan, address: str) -> str:
    """The inside of a page."""
    return next(page.body for page in plan.pages if page.address == address)


def changed(path: Path, pattern: str, new: str) -> str:
    """Change one place of a file; the text before."""
    text = path.read_text(encoding="utf-8")
    path.write_text(re.sub(pattern, new, text, count=1), encoding="utf-8")
    return text


def test_saves_and_faults_are_followed(folder: Path) -> None:
    """A page follows a save; behind a fault it stays as it was, and comes back when that is mended."""
    course, path, page = Live(folder, NoCache()), folder / "cases" / "stilt_ankle.yml", "cases/stilt-ankle.md"
    first = course.refresh()
    assert (first.version, first.behind) == (1, False)
    changed(path, r"(?m)^mechanism: .*", "mechanism: A wholly new story.")
    second = course.refresh()
    assert second.plans is not None
    assert all("A wholly new story." in body(plan, page) for plan in second.plans)

    good = changed(path, r"mechanism:", "mechanizm:")
    third = course.refresh()
    assert third.plans is not None
    assert "A wholly new story." in body(third.plans[0], page)
    assert {(one.place.file, one.level) for one in third.to_fix if one.level == "error"} >= {
        ("cases/stilt_ankle.yml", "error")
    }
    path.write_text(good[: len(good) // 3] + "\n  - [", encoding="utf-8")
    assert course.refresh().plans is not None
    path.write_text(good.replace("wholly", "quite"), encoding="utf-8")
    fifth = course.refresh()
    assert fifth.plans is not None
    assert "A quite new story." in body(fifth.plans[0], page)
    assert not [one for one in fifth.to_fix if one.level == "error"]
    assert fifth.version == 5


def test_a_course_that_cannot_be_put_together_keeps_its_last_pages(folder: Path) -> None:
    """With what is wrong, and back again; a folder that is taken away is told of as well."""
    course = Live(folder, NoCache())
    first = course.refresh()
    good = changed(folder / "course.yml", r"(?m)^title:", "titel:")
    second = course.refresh()
    assert second.behind
    assert second.plans is first.plans
    assert any("titel" in one.message for one in second.to_fix)
    (folder / "course.yml").unlink()
    third = course.refresh()
    assert third.plans is first.plans
    assert [one.message for one in third.to_fix] == ["The folder holds no course.yml."]
    (folder / "course.yml").write_text(good, encoding="utf-8")
    assert not course.refresh().behind


def test_a_case_deleted_or_broken_from_the_start_leaves_the_rest(folder: Path) -> None:
    """Its page goes, its name is told of, the others stay."""
    (folder / "cases" / "stilt_ankle.yml").write_text("id: [", encoding="utf-8")
    (folder / "cases" / "ring_thigh.yml").unlink()
    shown = Live(folder, NoCache()).refresh()
    assert shown.plans is not None
    addresses = {page.address for page in shown.plans[0].pages}
    assert "cases/stilt-ankle.md" not in addresses
    assert "cases/unicycle-thigh.md" in addresses
    assert any(one.level == "error" for one in shown.to_fix)


def test_a_lesson_that_leads_nowhere_keeps_the_last_pages(folder: Path) -> None:
    """The site as a whole can not be planned then."""
    course = Live(folder, NoCache())
    first = course.refresh()
    with (folder / "lessons" / "dose.md").open("a", encoding="utf-8") as file:
        file.write("\n[case nobody]\n")
    second = course.refresh()
    assert second.behind
    assert second.plans is first.plans
    assert any("nobody" in one.message for one in second.to_fix)


def test_no_edition_is_minted_and_nothing_is_written(folder: Path) -> None:
    """The secret of the draw stays in memory: two previews lay the same test out differently."""
    before = sorted(path.relative_to(folder) for path in folder.rglob("*"))
    plans = [Live(folder, NoCache()).refresh().plans for _ in range(2)]
    assert sorted(path.relative_to(folder) for path in folder.rglob("*")) == before
    assert plans[0] is not None
    assert plans[1] is not None
    versions = [body(one[0], "tests/final-a.md") for one in plans if one]
    assert versions[0] != versions[1]
    assert all(NO_EDITION in one for one in versions)


def test_a_failure_of_our_own_is_told_and_not_thrown(folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """The last good state stays."""
    course = Live(folder, NoCache())
    first = course.refresh()

    def fails(*_: object) -> None:
        raise KeyError("inside")

    monkeypatch.setattr(flow, "judged_course", fails)
    second = course.refresh()
    assert second.behind
    assert second.plans is first.plans
    assert "KeyError" in second.to_fix[0].message


def test_only_files_that_a_page_shows_can_be_asked_for(folder: Path) -> None:
    """A picture that a lesson places is given as it is now; nothing else of the folder is."""
    for name in ("shown", "kept"):
        (folder / "media" / f"{name}.svg").write_text(f"<svg id='{name}'/>", encoding="utf-8")
    lesson = folder / "lessons" / "dose.md"
    text = lesson.read_text(encoding="utf-8")
    lesson.write_text(f"{text}\n![A pad](../media/shown.svg)\n", encoding="utf-8")
    course = Live(folder, NoCache())
    course.refresh()
    assert course.media("media/shown.svg") == folder / "media" / "shown.svg"
    assert [course.media(name) for name in ("media/kept.svg", "course.yml", "media/../course.yml")] == [
        None
    ] * 3


def test_a_caption_that_was_saved_is_shown(folder: Path) -> None:
    """A film's words are part of its lesson's page; what is wrong with them is to fix."""
    course = Live(folder, NoCache())
    before = course.refresh()
    captions = folder / "media" / "wrap_and_look.vtt"
    text = captions.read_text(encoding="utf-8")
    captions.write_text(
        text.replace("tumbler's", "rider's").replace("00:00:28.000", "00:00:29.000"), encoding="utf-8"
    )
    after = course.refresh()
    bodies = [body(shown.plans[0], "lessons/dose.md") for shown in (before, after) if shown.plans]
    assert ["rider&#39;s calf" in one for one in bodies] == [False, True]
    assert [one.check for one in after.to_fix if one not in before.to_fix] == ["cue_beyond_film"]
