"""Judgements and proofs from the cache are those that would be worked out anew."""

import random
import re
from pathlib import Path

import pytest

from builder.doors.cache import FOLDER, FolderCache, open_cache
from builder.flow import worked
from builder.flow.opened import Opened, open_course
from builder.judge.judge import Judge
from builder.model.case import Case
from tests.demo.small import small_course

ROUNDS = 6
EDITS = (
    (r"heat: \w+", ("heat: none", "heat: clear")),
    (r"since_injury: .*", ("since_injury: 20 h", "since_injury: 9 days", "since_injury: 5 weeks")),
    (r"phase: \w+", ("phase: acute", "phase: late_repair")),
    (r"minutes: \d+", ("minutes: 5", "minutes: 30")),
    (r"consent: \w+", ("consent: yes", "consent: no")),
    (r"mechanism: .*", ("mechanism: Another story.", "mechanism: A third one.")),
)


def scramble(folder: Path, chance: random.Random) -> None:
    """One edit somewhere, sound or not; now and then a file goes or comes back under another name."""
    cases = sorted((folder / "cases").glob("*.yml"))
    path = chance.choice(cases)
    text = path.read_text(encoding="utf-8")
    pattern, news = chance.choice(EDITS)
    if chance.random() < 0.1:
        path.write_text(text[: len(text) // 2], encoding="utf-8", newline="\n")
    else:
        path.write_text(re.sub(pattern, chance.choice(news), text, count=1), encoding="utf-8", newline="\n")


def same(one: Opened, other: Opened) -> bool:
    """Whether two openings found the same in every part, cards looked at one by one."""
    return (
        one.to_fix == other.to_fix
        and one.course == other.course
        and dict(one.judged) == dict(other.judged)
        and repr({k: [dict(v.cards) for v in vs] for k, vs in one.judged.items()})
        == repr({k: [dict(v.cards) for v in vs] for k, vs in other.judged.items()})
    )


def test_after_random_edits_the_cache_changes_nothing(tmp_path: Path) -> None:
    """Edit after edit, with entries harmed and lost on the way: the same is found as without a cache."""
    chance = random.Random(7)  # noqa: S311 - a fixed walk through edits
    folder = small_course(tmp_path / "course")
    for _ in range(ROUNDS):
        scramble(folder, chance)
        cache = open_cache(folder, tmp_path / "home")
        slots = [path for path in (folder / FOLDER).rglob("*") if path.is_file()]
        for slot in chance.sample(slots, len(slots) // 10):
            slot.write_bytes(slot.read_bytes()[: chance.randrange(80)])
        assert same(open_course(folder, cache), open_course(folder))


def test_nothing_is_judged_twice(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Of an unchanged course nothing, of a changed one only the case that changed."""
    folder = small_course(tmp_path / "course")
    open_course(folder, open_cache(folder, tmp_path / "home"))
    judged: list[str] = []
    real = Judge.answered

    def answering(judge: Judge, case: Case) -> worked.Judged:
        judged.append(case.id)
        return real(judge, case)

    monkeypatch.setattr(Judge, "answered", answering)
    monkeypatch.setattr(worked, "holes", lambda *_: pytest.fail("The proof was run again."))
    open_course(folder, open_cache(folder, tmp_path / "home"))
    assert judged == []
    path = folder / "cases" / "stilt_ankle.yml"
    path.write_text(
        path.read_text(encoding="utf-8").replace("mechanism: ", "mechanism: So ", 1), encoding="utf-8"
    )
    open_course(folder, open_cache(folder, tmp_path / "home"))
    assert judged == ["stilt_ankle"]


def test_a_case_is_told_when_it_is_asked_for(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """And then once, now and for later: check asks for none."""
    folder = small_course(tmp_path / "course")
    told: list[str] = []
    real = Judge.told

    def telling(judge: Judge, case: Case, answered: worked.Judged) -> worked.Judged:
        told.append(case.id)
        return real(judge, case, answered)

    monkeypatch.setattr(Judge, "told", telling)
    first = open_course(folder, open_cache(folder, tmp_path / "home"))
    assert list(first.judged) == list(first.course.cases if first.course else ())
    assert len(first.judged) > 1
    assert told == []
    assert first.judged["stilt_ankle"] is first.judged["stilt_ankle"]
    again = open_course(folder, open_cache(folder, tmp_path / "home"))
    assert again.judged["stilt_ankle"] == first.judged["stilt_ankle"]
    assert again.judged["stilt_ankle"][0].cards
    assert told == ["stilt_ankle"]


def test_a_cache_of_another_hand_brings_nothing_in(tmp_path: Path) -> None:
    """A course sent along with judgements made up by the sender is judged here all the same."""
    folder = small_course(tmp_path / "course")
    honest = open_course(folder)
    open_course(folder, FolderCache(folder / FOLDER, b"x" * 32))
    for slot in (folder / FOLDER / "answered").iterdir():
        slot.write_bytes(slot.read_bytes().replace(b'"barred"', b'"ok"'))
    assert same(open_course(folder, open_cache(folder, tmp_path / "home")), honest)
