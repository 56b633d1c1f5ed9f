"""Fingerprints over values: files may look different and mean the same, never the other way about."""

from dataclasses import replace
from pathlib import Path

from builder.flow.fingerprints import fingerprints, of_content
from builder.flow.opened import open_course
from builder.model.library import Course
from tests.demo.small import small, small_course


def read(folder: Path) -> Course:
    """The course in a folder."""
    course = open_course(folder).course
    assert course is not None
    return course


def edited(folder: Path, name: str, old: str, new: str) -> None:
    """Change one place in a file."""
    path = folder / name
    text = path.read_text(encoding="utf-8")
    assert old in text
    path.write_text(text.replace(old, new, 1), encoding="utf-8", newline="\n")


def test_a_comment_or_other_quotes_are_no_change(tmp_path: Path) -> None:
    """What is parsed and normalised is the same."""
    copy = small_course(tmp_path / "course")
    edited(copy, "cases/stilt_ankle.yml", "mechanism:", "# a remark\nmechanism:")
    assert fingerprints(read(copy)) == fingerprints(read(small()))


def test_a_change_of_one_case_is_its_own(tmp_path: Path) -> None:
    """Neither the others nor what surrounds them are touched."""
    copy = small_course(tmp_path / "course")
    edited(copy, "cases/stilt_ankle.yml", "mechanism: ", "mechanism: Well, ")
    before, after = fingerprints(read(small())), fingerprints(read(copy))
    assert (before.content, before.frame) == (after.content, after.frame)
    assert [name for name in before.cases if before.cases[name] != after.cases[name]] == ["stilt_ankle"]


def test_a_change_of_the_course_is_not_one_of_its_cases(tmp_path: Path) -> None:
    """Judgements stay, pages do not."""
    copy = small_course(tmp_path / "course")
    edited(copy, "course.yml", "level: ", "level: Well, ")
    before, after = fingerprints(read(small())), fingerprints(read(copy))
    assert before.content == after.content
    assert before.frame != after.frame
    assert before.cases == after.cases


def test_whatever_a_judgement_rests_on_changes_the_content() -> None:
    """A rule less, a card in another order, another fact, another word."""
    content = read(small()).content
    rules, cards = dict(content.rules), dict(content.cards)
    rules.popitem()
    others = [
        replace(content, rules=rules),
        replace(content, cards=dict(reversed(cards.items()))),
        replace(content, own_rules=frozenset({"x"})),
        replace(content, words=content.words | {"start": "Go"}),
        replace(content, facts=content.facts.model_copy(update={"facts": {}})),
    ]
    prints = [of_content(one) for one in (content, *others)]
    assert len(set(prints)) == len(prints)
    assert of_content(replace(content)) == prints[0]
