"""Counts what a class answered, and says of each figure how far it can be trusted."""

from __future__ import annotations

from collections.abc import Sequence

from builder.analyse.gate import consistency, discrimination
from builder.analyse.items import whole_marks
from builder.analyse.question import question_figures
from builder.analyse.sitters import Sitting, Version, first_sittings
from builder.doors.store.decisions import latest_decisions
from builder.doors.store.opening import Store
from builder.doors.store.rings import rings_by_edition
from builder.doors.store.sheets import sheets_of
from builder.model.analysis import Analysis, VersionFigures
from builder.model.key import Key, KeyRing
from builder.model.paper import Paper, PublishedTest
from builder.model.records import ClassFolder


def analyse_class(
    store: Store, folder: ClassFolder, rings: Sequence[KeyRing], published: Sequence[PublishedTest]
) -> Analysis:
    """The figures of every version that was sat, each participant's first graded try alone."""
    with store.transaction():
        known = rings_by_edition(store, rings)
        decisions = [decision for _, decision in latest_decisions(store, folder).values()]
        sat = first_sittings(decisions, sheets_of(store, folder))
    made = [
        _version(place, sittings, key, _paper(published, place))
        for place, sittings in sat.items()
        if (key := known[place[0], place[2]].version(place[1])) is not None
    ]
    return Analysis(klass=folder.taught.id, versions=tuple(made))


def _version(place: Version, sittings: Sequence[Sitting], key: Key, paper: Paper | None) -> VersionFigures:
    waiting, sittings = sum(one.waits for one in sittings), [one for one in sittings if not one.waits]
    rows = [sitting.row for sitting in sittings]
    whole = whole_marks(rows)
    asked = {question.id: question for question in paper.questions} if paper else {}
    right_or_wrong = all(mark in (0, 1) for row in rows for mark in row)
    return VersionFigures(
        test=place[0],
        version=place[1],
        edition=place[2],
        n=len(rows),
        questions=tuple(
            question_figures(answer, asked.get(answer.question), sittings, discrimination(whole, at))
            for at, answer in enumerate(key.answers)
        ),
        coefficient="KR-20" if right_or_wrong else "alpha",
        reliability=consistency(whole),
        waiting=waiting,
    )


def _paper(published: Sequence[PublishedTest], place: Version) -> Paper | None:
    papers = [
        paper
        for test in published
        if (test.test, test.edition) == (place[0], place[2])
        for paper in test.papers
        if paper.version == place[1]
    ]
    return papers[0] if papers else None
