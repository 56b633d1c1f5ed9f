"""A fact may not be recorded with two values for the same visit."""

from __future__ import annotations

from collections.abc import Iterator

from builder.check.evidence import Evidence, Finding, case_file
from builder.diagnostic import Level
from builder.model.case import Case, Visit
from builder.model.kind import Example

LEVEL: Level = "error"
WHY = "If one fact has two values on the same day, nobody can tell which of them the answer rests on."
BAD = Example(
    "cases/fence.yml",
    """
    screen: {set: short}
    findings:
      swelling_trend: steady
      knee_flexion: 100
      numb_skin: yes
    chosen:
      - {card: protect_and_position}
    wrong:
      - {card: glide, site: distal}
    """,
    at="visits/0",
)
GOOD = Example(
    "cases/fence.yml",
    """
    screen: {set: short, all_no_except: {numb_skin: yes}}
    findings:
      swelling_trend: steady
      knee_flexion: 100
    chosen:
      - {card: protect_and_position}
    wrong:
      - {card: glide, site: distal}
    """,
    at="visits/0",
)


def check(evidence: Evidence) -> Iterator[Finding]:
    """Facts that history, screen and findings record differently."""
    for case, index, visit, _ in evidence.visits():
        for name, first, second in _differing(evidence, case, visit):
            yield Finding(
                case_file(case),
                ("visits", index),
                f"`{name}` is {first} in one place and {second} in another of the same visit.",
                "Keep one; an exception to a screen stands under `all_no_except`.",
            )


def _differing(evidence: Evidence, case: Case, visit: Visit) -> Iterator[tuple[str, object, object]]:
    screened: dict[str, object] = {}
    if visit.screen is not None:
        covered = evidence.course.content.screening.covered_by(visit.screen.set)
        screened.update(dict.fromkeys(covered, "no"))
        screened.update(visit.screen.all_no_except)
    sources: tuple[dict[str, object], ...] = ({**case.history}, screened, {**visit.findings})
    for position, source in enumerate(sources):
        for later in sources[position + 1 :]:
            for name in source.keys() & later.keys():
                if source[name] != later[name]:
                    yield name, source[name], later[name]
