"""Faults that span files: what one file says is held against another, and mending either is enough."""

from pathlib import Path

import pytest

from builder.flow.kinds import KINDS
from builder.model.kind import Example
from tests.flow.laid import everything

# For each kind, a change to another file than the one its bad example is in.
ELSEWHERE: dict[str, Example] = {
    "objective_unknown": Example(
        "course.yml", "objectives:\n  - {id: choose, text: A}\n  - {id: chose, text: B}"
    ),
    "lesson_unknown": Example("lessons/wrap.md", "# Wraps\n"),
    "screening_set_unknown": Example(
        "content/screening.yml", 'shrt: {name: Short, date: "2026-11-01", covers: [fever, numb_skin]}', "sets"
    ),
    "fact_unknown": Example(
        "content/facts.yml",
        "sweling_trend: {kind: one_of, label: Swelling, group: sign, worse_when: both, values: [steady]}",
        "facts",
    ),
    "attribute_unknown": Example(
        "content/facts.yml",
        "minuts: {kind: number, label: Time, group: written, worse_when: higher, low: 0, high: 99}",
        "written",
    ),
    "source_unknown": Example("content/references.yml", "comon_practice: {cite: Common practice}", "sources"),
    "group_unknown": Example("content/cards/glide.yml", "groups: [hands_onn]"),
    "visit_unknown": Example("cases/fence.yml", "id: frist", "visits/0"),
    "contested_position": Example("content/cards/cold_pack.yml", "why: It helps.\ncontested: ", "baseline/0"),
    "pool_case_shown": Example(
        "course.yml",
        """
        tests:
          - id: final
            title: Final test
            cases: [fence]
            plan:
              - {objective: choose, topic: option, count: 1}
            seed: little
            pass_mark: 75 %
        practice:
          - {id: first, title: First cases, cases: [fair]}
        """,
    ),
    "lesson_not_listed": Example("lessons/cold.md"),
    "class_days": Example("classes/may/class.yml", "dates: [2026-05-02, 2026-05-03]"),
    "code_unknown": Example(
        "classes/may/roster.csv", "name,code_1\nBea Vantornel,QZVNRBLAD\nIlse,WSBVCVQMF\n"
    ),
    "criterion_unknown": Example(
        "stations/cooling.yml",
        "criteria:\n  - {id: cloth, title: A, levels: [a, b]}\n  - {id: clothh, title: B, levels: [a, b]}",
    ),
    "automatic_fail_unknown": Example(
        "stations/cooling.yml", "automatic_fails:\n  - {id: bare_skn, seen: The pack lay on bare skin.}"
    ),
}


@pytest.mark.parametrize("name", ELSEWHERE)
def test_another_file_mends_it_too(name: str, tmp_path: Path) -> None:
    """The bad example stays as it is, and with the other file changed the fault is gone."""
    bad, other = KINDS[name].bad, ELSEWHERE[name]
    assert bad.file != other.file
    both = Example(bad.file, bad.text, bad.at, (*bad.more, other), bad.link)
    assert name in {one.check for one in everything(bad, tmp_path / "bad")[0]}
    assert name not in {one.check for one in everything(both, tmp_path / "both")[0]}


def test_there_are_at_least_ten() -> None:
    """As many as were promised."""
    assert len(ELSEWHERE) >= 10
