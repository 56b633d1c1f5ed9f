"""Which answer sheet counts."""

from datetime import timedelta
from random import Random

from hypothesis import given
from hypothesis import strategies as st

from builder.model.handed import sheet_of
from builder.model.records import KeptSheet
from builder.model.standing import counted, counted_apart, doubtful
from tests.records.made import NOW, answers, code_for, folder, person, sheet_bytes

ONE, OTHER = "1" * 32, "2" * 32


def kept(
    digest: str, sheet: str = ONE, rev: int = 1, hours: int = 0, number: int = 1, **changed: object
) -> KeptSheet:
    """A kept sheet, come some hours after noon."""
    data = sheet_bytes(code_for(number), answers(), sheet=sheet, rev=rev, **changed)
    return KeptSheet(digest=digest, received=NOW + timedelta(hours=hours), sheet=sheet_of(data))


def standing(*sheets: KeptSheet) -> list[str]:
    """The digests that count."""
    return [one.digest for one in counted(sheets).values()]


def test_the_highest_revision_counts_whenever_it_came() -> None:
    """Of one sheet the highest revision counts, even if a lower one comes later."""
    assert standing(kept("a", rev=2), kept("b", rev=3, hours=1), kept("c", rev=1, hours=2)) == ["b"]


def test_of_two_sheets_the_first_to_come_counts() -> None:
    """Another sheet of the same code never displaces the first, and is reported."""
    sheets = (kept("a", sheet=OTHER, hours=0), kept("b", sheet=ONE, rev=9, hours=1))
    assert standing(*sheets) == ["a"]
    assert "2 different answer sheets" in doubtful(sheets)[0]


def test_of_two_sheets_at_once_the_one_begun_first_counts() -> None:
    """Where both came in one run, the claimed start decides, with or without an offset."""
    late = kept("a", sheet=ONE, started="2026-06-06T16:00:00-04:00")
    early = kept("b", sheet=OTHER, started="2026-06-06T19:30:00")
    assert standing(late, early) == ["b"]


def test_one_revision_with_two_contents_is_reported() -> None:
    """Two files that claim to be the same revision are named, and the first counts."""
    sheets = (kept("b", hours=0), kept("a", hours=1))
    assert standing(*sheets) == ["b"]
    assert "2 files that differ" in doubtful(sheets)[0]


def test_a_draft_that_counts_is_reported() -> None:
    """A sheet that was never finished counts until a later revision comes, and is named meanwhile."""
    draft, whole = kept("a", finished=None), kept("b", rev=2)
    assert "a draft that was never finished" in doubtful([draft])[0]
    assert doubtful([draft, whole]) == ()


def test_late_answers_are_reported() -> None:
    """With the limit and what the sheet says was agreed; on time there is nothing to say."""
    time = {"limit": 40, "more": "1.5", "began": "2026-06-06T14:00:00-04:00", "late": ["q1", "q2"]}
    said = doubtful([kept("a", time=time)])
    assert "2 answers in `final` came late. The limit is 40 minutes" in said[0]
    assert "1.5 times as many" in said[0]
    assert doubtful([kept("a", time={**time, "late": []})]) == ()


def test_a_sheet_under_two_codes_is_reported() -> None:
    """A sheet handed in again under another's code is named; both stand until a person looks."""
    sheets = (kept("a", number=1), kept("b", number=2))
    assert len(counted(sheets)) == 2
    assert "may have been copied" in doubtful(sheets)[0]


def test_each_has_their_own_sheets() -> None:
    """Sheets go to whoever holds the code, first or later; a code that nobody holds goes to nobody."""
    ann, ben = person(1, "A", "B"), person(2)
    mine = [
        KeptSheet(digest=code, received=NOW, sheet=sheet_of(sheet_bytes(code, answers())))
        for code in (*ann.codes, code_for(7))
    ]
    apart = counted_apart(mine, folder(ann, ben))
    assert {code: [one.digest for one in sheets] for code, sheets in apart.items()} == {
        ann.code: list(ann.codes),
        ben.code: [],
    }


def test_plain_revisions_are_not_doubtful() -> None:
    """One sheet in several revisions is the ordinary case."""
    assert doubtful([kept("a", rev=1), kept("b", rev=2)]) == ()


@given(
    st.lists(
        st.tuples(st.sampled_from([ONE, OTHER]), st.integers(1, 3), st.integers(0, 3), st.integers(1, 2)),
        min_size=1,
        max_size=8,
    ),
    st.randoms(use_true_random=False),
)
def test_order_does_not_matter(made: list[tuple[str, int, int, int]], chance: Random) -> None:
    """The same sheets in any order stand and are doubted alike."""
    sheets = [kept(f"{at}", *one) for at, one in enumerate(made)]
    other = list(sheets)
    chance.shuffle(other)
    assert counted(sheets) == counted(other)
    assert doubtful(sheets) == doubtful(other)
