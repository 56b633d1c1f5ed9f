"""Reviews from the printed list to the pages: signed values are read back, and the line vanishes."""

from pathlib import Path

import pytest

from builder.fault import Fault
from builder.flow.build import build
from builder.flow.opened import Opened, open_course
from builder.flow.reviews import review_list, write_review_sheet
from builder.model.library import Course
from builder.model.reviewable import reviewable
from builder.render.maker import all_reviewed, maker
from tests.demo.built import opened
from tests.demo.small import small_course
from tests.flow.test_opened import damaged

WHO = 'who: A Clinician, licence: L-1, date: "2026-11-01"'


def signed(tmp_path: Path, *, changed: str = "", left_out: str = "") -> Opened:
    """The small course with all on the list signed, but for one left out or signed before a change."""
    copy = small_course(tmp_path / "course")
    entries = review_list(opened())[1]["entries"]
    lines = ["format: 1"]
    for part in dict.fromkeys(one["part"] for one in entries):
        kept = [one for one in entries if one["part"] == part and f"{part}/{one['id']}" != left_out]
        lines += [f"{part}:"] if kept else []
        for one in kept:
            mark = "0" * 12 if f"{part}/{one['id']}" == changed else one["fingerprint"]
            lines.append(f'  {one["id"]}: {{{WHO}, fingerprint: "{mark}"}}')
    (copy / "reviews.yml").write_text("\n".join(lines) + "\n", encoding="utf-8", newline="\n")
    return open_course(copy)


def course_of(made: Opened) -> Course:
    """The course of an opened folder."""
    assert made.course is not None
    return made.course


def test_the_list_has_everything_that_can_be_signed_with_its_ground() -> None:
    """What it does, why, on what it rests, and examples, each under its fingerprint."""
    lines, data = review_list(opened())
    content = course_of(opened()).content
    parts = reviewable(content)
    named = [(part, name) for part, nouns in parts.items() for name in nouns]
    assert sorted((one["part"], one["id"]) for one in data["entries"]) == sorted(named)
    assert data["remaining"] == len(named)
    text = "\n".join(lines)
    assert all(rule.why in text and rule.title in text for rule in content.rules.values())
    assert all(one["fingerprint"] in text for one in data["entries"])
    assert "Not for: " in text


def test_the_sheet_has_room_to_sign_for_each(tmp_path: Path) -> None:
    """One page of its own, with nothing fetched, and a caution."""
    said = write_review_sheet(opened(), tmp_path / "sheet.html")
    page = (tmp_path / "sheet.html").read_text(encoding="utf-8")
    count = len(review_list(opened())[1]["entries"])
    assert page.count('class="sign"') == page.count("<article>") == count
    assert all(one["fingerprint"] in page for one in review_list(opened())[1]["entries"])
    assert str(count) in said
    assert "http" not in page.replace("https://doi.org", "").split("<main>")[0]
    assert course_of(opened()).site.caution.split(".")[0] in page


def test_signatures_are_read_back_and_the_line_vanishes(tmp_path: Path) -> None:
    """With everything signed nothing is counted and no page says that it is not reviewed."""
    made = signed(tmp_path)
    assert {one.check for one in made.to_fix} & {"not_reviewed", "reviews_hold", "file_not_read"} == set()
    assert all_reviewed(course_of(made))
    assert maker(course_of(made)).unreviewed(reviewed=all_reviewed(course_of(made))) == ""
    judged = [one for visits in made.judged.values() for visit in visits for one in visit.chosen]
    assert all(fired.reviewed for one in judged for fired in one.rules)


@pytest.mark.parametrize(
    ("how", "name", "said"),
    [
        ("left_out", "rules/no_consent", "1 rule"),
        ("changed", "rules/no_consent", "1 rule"),
        ("left_out", "phases/all", "the phases with their calendar and signs"),
        ("changed", "severity/thigh_contusion", "1 severity table"),
    ],
)
def test_one_that_is_not_signed_keeps_the_line(tmp_path: Path, how: str, name: str, said: str) -> None:
    """Changed since, or never signed: whatever rests on all of them says so still."""
    made = signed(tmp_path, **{how: name})
    part, entry = name.split("/")
    assert not all_reviewed(course_of(made))
    assert reviewable(course_of(made).content)[part][entry].reviewed is None
    found = {one.check: one for one in made.to_fix}
    assert found["not_reviewed"].message.startswith(f"Not yet reviewed by a clinician: {said}.")
    assert ("reviews_hold" in found) == (how == "changed")


def saying_so(made: Opened, folder: Path) -> set[str]:
    """The files of a build, published and private, that say of something that it is not reviewed."""
    build(made, folder / "course", folder / "out")
    files = [one for one in (folder / "out").rglob("*") if one.suffix in (".html", ".json")]
    said = [one for one in files if "not yet reviewed" in one.read_text(encoding="utf-8").lower()]
    return {one.relative_to(folder / "out").as_posix() for one in said}


def test_with_everything_signed_no_page_key_or_sheet_says_otherwise(tmp_path: Path) -> None:
    """Neither on the student's side nor on the instructor's, nor in a key."""
    assert saying_so(signed(tmp_path), tmp_path) == set()


def test_without_the_phases_whatever_rests_on_them_says_so(tmp_path: Path) -> None:
    """Practice cases with a phase, keys, papers, lessons and the check-off sheet; a card alone does not."""
    said = saying_so(signed(tmp_path, left_out="phases/all"), tmp_path)
    pages = {one.split("/")[1] if one.count("/") > 1 else one for one in said}
    assert {"publish/index.html", "cases", "lessons", "tests", "keys", "instructor"} <= pages
    assert "publish/red-flags.html" in said
    assert any(one.startswith("private/instructor/stations/") for one in said)
    assert not any(one.startswith("publish/cards/") and not one.endswith("index.html") for one in said)


def test_a_date_that_is_none_is_to_fix(tmp_path: Path) -> None:
    """The place of the date is named."""
    copy = small_course(tmp_path / "course")
    text = "format: 1\nrules:\n  no_consent: {who: A, licence: B, date: soon, fingerprint: c}\n"
    (copy / "reviews.yml").write_text(text, encoding="utf-8", newline="\n")
    made = open_course(copy)
    assert any(one.place.file == "reviews.yml" and one.level == "error" for one in made.to_fix)


def test_a_course_that_can_not_be_read_has_no_list(tmp_path: Path) -> None:
    """The fault says to check first."""
    broken = open_course(damaged(tmp_path, "course.yml", "title:", "titel:"))
    with pytest.raises(Fault, match="put together"):
        review_list(broken)
    with pytest.raises(Fault, match="put together"):
        write_review_sheet(broken, tmp_path / "sheet.html")
