"""Evidence: what the checks look at, and where a finding is placed."""

from builder.check.evidence import Finding, case_file, content_file, diagnostic
from builder.place import Place
from tests.check.small_course import evidence, placed
from tests.judge.small import case

FOUND = Finding("cases/bruise.yml", ("visits", 0, "phase"), "Wrong.", "Mend it.", ("fever",))


def test_every_visit_comes_with_its_case_and_judgement() -> None:
    """All visits of all cases, numbered within their case."""
    bruise = case({"id": "a"}, {"id": "b", "since_injury": "5 days"})
    other = bruise.model_copy(update={"id": "other", "visits": bruise.visits[:1]})
    seen = [
        (one.id, index, visit.id, judged.visit)
        for one, index, visit, judged in evidence(bruise, other).visits()
    ]
    assert seen == [("bruise", 0, "a", "a"), ("bruise", 1, "b", "b"), ("other", 0, "a", "a")]


def test_a_finding_is_placed_where_the_author_wrote() -> None:
    """At its path, or at the nearest thing above that is there."""
    known = placed(evidence(), "cases/bruise.yml", {("visits", 0, "phase"): 30, ("visits", 0): 20})
    told = diagnostic(known, "declared_phase", "error", FOUND)
    assert (told.check, told.level, told.place) == ("declared_phase", "error", Place("cases/bruise.yml", 30))
    assert (told.message, told.remedy) == ("Wrong.", "Mend it.")
    assert (told.path, told.rules) == (("visits", 0, "phase"), ("fever",))
    above = Finding(FOUND.file, ("visits", 0, "severity"), "Wrong.", "Mend it.")
    assert diagnostic(known, "declared_severity", "error", above).place.line == 20


def test_a_finding_in_an_unread_file_names_the_file() -> None:
    """Without places, the file is still told."""
    assert diagnostic(evidence(), "x", "advice", FOUND).place == Place("cases/bruise.yml")


def test_a_finding_may_give_its_own_line() -> None:
    """A lesson has lines and no paths."""
    found = Finding("lessons/one.md", (), "Wrong.", "Mend it.", line=7)
    assert diagnostic(evidence(), "x", "error", found).place == Place("lessons/one.md", 7, 1, 7, 1)


def test_files_are_named_as_the_author_knows_them() -> None:
    """A case by its id; a rule in the course if it is the course's own, else with the shipped ones."""
    assert case_file(case({})) == "cases/bruise.yml"
    assert content_file(evidence(), "rules/fever.yml") == "content/rules/fever.yml"
    own = placed(evidence(), "rules/fever.yml", {})
    assert content_file(own, "rules/fever.yml") == "rules/fever.yml"
