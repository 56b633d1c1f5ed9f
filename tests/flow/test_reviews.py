"""Reviews from the printed list to the pages: signed values are read back, and the line vanishes."""

import shutil
from pathlib import Path

import pytest

from builder.fault import Fault
from builder.flow.opened import Opened, open_course
from builder.flow.reviews import review_list, write_review_sheet
from builder.model.library import Course
from builder.render.maker import all_reviewed, maker
from tests.demo.built import COURSE, opened
from tests.flow.test_opened import damaged

WHO = 'who: A Clinician, licence: L-1, date: "2026-11-01"'


def signed(tmp_path: Path, *, changed: str = "", left_out: str = "") -> Opened:
    """The demonstration with all on the list signed, but for one left out or signed before a change."""
    copy = shutil.copytree(COURSE, tmp_path / "course")
    entries = review_list(opened())[1]["entries"]
    lines = ["format: 1"]
    for part in ("rules", "cards"):
        lines.append(f"{part}:")
        for one in entries:
            if one["part"] == part and one["id"] != left_out:
                mark = "0" * 12 if one["id"] == changed else one["fingerprint"]
                lines.append(f'  {one["id"]}: {{{WHO}, fingerprint: "{mark}"}}')
    (copy / "reviews.yml").write_text("\n".join(lines) + "\n", encoding="utf-8", newline="\n")
    return open_course(copy)


def course_of(made: Opened) -> Course:
    """The course of an opened folder."""
    assert made.course is not None
    return made.course


def test_the_list_has_every_rule_and_card_with_its_ground() -> None:
    """What it does, why, on what it rests, and examples, each under its fingerprint."""
    lines, data = review_list(opened())
    content = course_of(opened()).content
    assert len(data["entries"]) == data["remaining"] == len(content.rules) + len(content.cards)
    text = "\n".join(lines)
    assert all(rule.why in text and rule.title in text for rule in content.rules.values())
    assert all(one["fingerprint"] in text for one in data["entries"])
    assert "It does not fire" in text


def test_the_sheet_has_room_to_sign_for_each(tmp_path: Path) -> None:
    """One page of its own, with nothing fetched, and a caution."""
    said = write_review_sheet(opened(), tmp_path / "sheet.html")
    page = (tmp_path / "sheet.html").read_text(encoding="utf-8")
    count = len(review_list(opened())[1]["entries"])
    assert page.count('class="sign"') == page.count("<article>") == count
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


@pytest.mark.parametrize("how", ["changed", "left_out"])
def test_one_that_is_not_signed_keeps_the_line(tmp_path: Path, how: str) -> None:
    """A rule changed since, or never signed: whatever rests on all of them says so still."""
    made = signed(tmp_path, **{how: "no_consent"})
    assert not all_reviewed(course_of(made))
    assert course_of(made).content.rules["no_consent"].reviewed is None
    found = {one.check: one for one in made.to_fix}
    assert found["not_reviewed"].message.startswith("1 rules and 0 cards")
    assert ("reviews_hold" in found) == (how == "changed")


def test_a_date_that_is_none_is_to_fix(tmp_path: Path) -> None:
    """The place of the date is named."""
    copy = shutil.copytree(COURSE, tmp_path / "course")
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
