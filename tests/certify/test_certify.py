"""Certificates go to those who met everything, once, and to nobody else."""

from datetime import UTC, datetime, timedelta
from pathlib import Path

from builder.certify.certify import certify_class
from builder.doors.store.opening import Store
from builder.grade.grade import grade_class
from builder.model.outcome import Issued
from builder.model.records import ClassFolder, Terms
from tests.records.kept import contents, keep, look, opened
from tests.records.made import COURSE, NOW, folder, person, presence, ring, terms

ANN, BEN, CAM = person(1, name="Ann"), person(2, "B", name="Ben"), person(3, name="Cam")
SPRING = folder(ANN, BEN, CAM)


def graded(store: Store, spring: ClassFolder = SPRING, given: Terms | None = None) -> None:
    """Grade the spring class."""
    grade_class(store, given or terms(), spring, [ring()], NOW)


def sat(store: Store, spring: ClassFolder = SPRING) -> None:
    """Ann passes, Ben fails, Cam passes; all are graded."""
    keep(store, spring, ANN.code)
    keep(store, spring, BEN.code, "B", wrong=5)
    keep(store, spring, CAM.code, wrong=2)
    graded(store, spring)


def certify(store: Store, spring: ClassFolder = SPRING, given: Terms | None = None, days: int = 0) -> Issued:
    """Certify the spring class, some days later."""
    return certify_class(store, given or terms(), spring, NOW + timedelta(days=days))


def serials(issued: Issued) -> dict[str, str]:
    """Who holds which certificate."""
    return {row["name"]: row["certificate"] for row in issued.certificates}


def test_who_met_everything_is_certified_and_who_did_not_is_told_why(tmp_path: Path) -> None:
    """Numbers follow the roster; each refusal has its reason."""
    with opened(tmp_path) as store:
        sat(store)
        made = certify(store)
    assert serials(made) == {"Ann": "00001", "Cam": "00002"}
    assert made.fresh == ("00001", "00002")
    assert [(row["name"], row["requirement"]) for row in made.refused] == [("Ben", "test final")]
    assert "50 %; 70 % passes" in made.refused[0]["reason"]


def test_running_again_keeps_serials_and_writes_nothing(tmp_path: Path) -> None:
    """A later run gives the same list, with the first day of issue."""
    with opened(tmp_path) as store:
        sat(store)
        first = certify(store)
        before = contents(tmp_path)
        again = certify(store, days=30)
    assert again.certificates == first.certificates
    assert again.fresh == ()
    assert contents(tmp_path) == before


def test_a_later_pass_gets_the_next_number(tmp_path: Path) -> None:
    """Someone who passes at the second try comes after those who hold one already."""
    ben = person(2, "B", "A", name="Ben")
    spring = folder(ANN, ben, CAM)
    with opened(tmp_path) as store:
        sat(store, spring)
        certify(store, spring)
        keep(store, spring, ben.codes[1], "A")
        graded(store, spring)
        made = certify(store, spring)
    assert serials(made) == {"Ann": "00001", "Cam": "00002", "Ben": "00003"}
    assert (made.fresh, made.refused) == (("00003",), ())


def test_another_class_of_the_provider_goes_on_counting(tmp_path: Path) -> None:
    """Numbers run through all courses of a provider; another provider has its own."""
    with opened(tmp_path) as store:
        sat(store)
        certify(store)
        flights = SPRING.model_copy(update={"course": "flights"})
        keep(store, flights, ANN.code, rev=2)
        graded(store, flights)
        assert list(serials(certify(store, flights)).values()) == ["00003"]
        other = terms(provider=COURSE.provider.model_copy(update={"number": "Q-1"}))
        loops = SPRING.model_copy(update={"course": "loops"})
        keep(store, loops, ANN.code, rev=3)
        graded(store, loops, other)
        assert list(serials(certify(store, loops, other)).values()) == ["00001"]


def test_a_changed_name_is_a_reissue(tmp_path: Path) -> None:
    """The number stays, the revision and the first day of issue are said, and the old rows are kept."""
    renamed = SPRING.model_copy(
        update={"participants": (ANN.model_copy(update={"name": "Ann Lee"}), BEN, CAM)}
    )
    with opened(tmp_path) as store:
        sat(store)
        certify(store)
        made = certify(store, renamed, days=5)
        again = certify(store, renamed, days=6)
    assert serials(made) == {"Ann Lee": "00001-R1", "Cam": "00002"}
    assert made.certificates[0]["status"] == "reissued, first issued 2026-06-09"
    assert (made.fresh, again.fresh) == (("00001-R1",), ())
    assert look(tmp_path, "SELECT name FROM people WHERE code = (SELECT code FROM certificates LIMIT 1)") == [
        ("Ann",),
        ("Ann Lee",),
    ]


def test_no_name_stands_outside_the_table_of_people(tmp_path: Path) -> None:
    """Destroying a person's rows leaves no name, licence or address of theirs in the record."""
    unusual = ANN.model_copy(update={"name": "Quillon", "licence": "L-778", "email": "q@tent.example"})
    spring = folder(unusual)
    with opened(tmp_path) as store:
        keep(store, spring, ANN.code)
        graded(store, spring)
        assert serials(certify(store, spring)) == {"Quillon": "00001"}
    others = [table for table in contents(tmp_path) if table != "people"]
    told = repr(contents(tmp_path, *others))
    assert not any(word in told for word in ("Quillon", "L-778", "q@tent.example"))


def test_nobody_is_certified_ungraded_or_on_a_stale_grading(tmp_path: Path) -> None:
    """What came in or changed after the grading must be graded first."""
    late = SPRING.model_copy(update={"presences": (presence(ANN, "11:00"), *SPRING.presences[1:])})
    with opened(tmp_path) as store:
        assert {row["reason"] for row in certify(store).refused} == {"Not graded yet; grade the class first."}
        sat(store)
        keep(store, SPRING, ANN.code, wrong=9, rev=2)
        assert "answer sheets" in certify(store).refused[0]["reason"]
        graded(store)
        reasons = [row["reason"] for row in certify(store, late).refused if row["name"] == "Ann"]
    assert any("attendance" in reason for reason in reasons)
    assert len(reasons) == 2


def test_a_certificate_is_never_taken_back_in_silence(tmp_path: Path) -> None:
    """A holder whom a new grading refuses stands on both lists, marked."""
    with opened(tmp_path) as store:
        sat(store)
        certify(store)
        keep(store, SPRING, ANN.code, wrong=9, rev=2)
        graded(store)
        made = certify(store)
    assert serials(made) == {"Ann": "00001", "Cam": "00002"}
    assert made.certificates[0]["status"].startswith("look at this")
    assert made.refused[0]["name"] == "Ann"


def test_someone_struck_from_the_roster_keeps_the_certificate(tmp_path: Path) -> None:
    """The list is of what was issued, not of who is enrolled today."""
    with opened(tmp_path) as store:
        sat(store)
        certify(store)
        assert serials(certify(store, folder(BEN, CAM))) == {"Ann": "00001", "Cam": "00002"}


def test_the_day_of_issue_is_that_of_the_place(tmp_path: Path) -> None:
    """Just after midnight in Greenwich it is still the day before in New York."""
    with opened(tmp_path) as store:
        sat(store)
        made = certify_class(store, terms(), SPRING, datetime(2026, 6, 10, 2, 0, tzinfo=UTC))
    assert made.certificates[0]["issued"] == "2026-06-09"


def test_a_class_that_is_not_over_certifies_nobody(tmp_path: Path) -> None:
    """The day before the last is too early even with everything met."""
    with opened(tmp_path) as store:
        sat(store)
        made = certify_class(store, terms(), SPRING, NOW - timedelta(days=4))
    assert made.certificates == ()
    assert {row["requirement"] for row in made.refused} == {"dates", "test final"}
