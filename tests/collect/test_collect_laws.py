"""Collecting is the same however often, in whatever order and in how many parts."""

from pathlib import Path
from tempfile import TemporaryDirectory

from hypothesis import given, settings
from hypothesis import strategies as st

from tests.records.kept import collect, contents, hand_in, opened
from tests.records.made import answers, folder, person, sheet_bytes

PEOPLE = [person(number) for number in range(1, 4)]
SPRING = folder(*PEOPLE)

handed = st.builds(
    lambda who, sheet, rev, wrong: sheet_bytes(
        PEOPLE[who].code, answers(wrong=wrong), sheet=f"{sheet:032x}", rev=rev
    ),
    st.integers(0, 2),
    st.integers(1, 2),
    st.integers(1, 2),
    st.integers(0, 1),
)
inboxes = st.lists(handed | st.binary(max_size=6), max_size=6)


def state(parts: list[list[bytes]]) -> tuple[object, ...]:
    """What is in the record, and what is told to look at, after collecting these parts one by one."""
    with TemporaryDirectory() as name:
        place = Path(name)
        with opened(place) as store:
            told: tuple[str, ...] = ()
            for at, part in enumerate(parts):
                files = {f"p{at}n{number}": data for number, data in enumerate(part)}
                told = collect(store, SPRING, hand_in(place, **files)).notices
        return contents(place), told


@settings(max_examples=40, deadline=None)
@given(inboxes, st.data())
def test_order_and_repetition_change_nothing(files: list[bytes], data: st.DataObject) -> None:
    """One run over everything, and several over parts of it in another order, end alike."""
    shuffled = data.draw(st.permutations(files))
    cut = data.draw(st.integers(0, len(files)))
    assert state([files]) == state([shuffled[:cut], shuffled[cut:], [], files])
