"""The newest decision counts; the older ones stay."""

from pathlib import Path

from builder.doors.store.decisions import add_decision, latest_decisions
from builder.model.records import Basis, Decision, Requirement
from tests.records.kept import contents, opened
from tests.records.made import NOW, folder


def decision(code: str, *, met: bool) -> Decision:
    """A decision on one station."""
    found = (Requirement(kind="station", name="wrap", met=met, reason="Seen."),)
    basis = Basis(sheets=(), keys=(), terms="t", evidence="e")
    return Decision(course="falls", klass="spring", code=code, attempts=(), requirements=found, basis=basis)


def test_the_newest_counts_and_all_are_kept(tmp_path: Path) -> None:
    """A decision back to what it was before is written as well as any."""
    there, back = decision("A", met=True), decision("A", met=False)
    with opened(tmp_path) as store:
        for one in (there, decision("B", met=True), back, there):
            add_decision(store, one, NOW)
        latest = latest_decisions(store, folder())
    assert latest == {"A": (4, there), "B": (2, decision("B", met=True))}
    assert [row[3] for row in contents(tmp_path)["decisions"]] == [0, 1, 1, 1]
