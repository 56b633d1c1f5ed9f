"""How fast the judge is, as ratios of figures measured in one run; run by `make bench`."""

from collections.abc import Callable
from time import process_time

from builder.disk import shipped
from builder.judge.judge import Judge
from builder.judge.option import OptionJudge
from builder.judge.values import values_of
from builder.model.card import SITES
from builder.model.library import Course
from builder.read.course import read_course

TARGET = 100_000
ROUNDS = 5
COURSE = shipped("demo_course")
Answerer = Callable[..., object]


def course() -> Course:
    """The demonstration with the whole shipped rule set."""
    read, found = read_course(COURSE, shipped("content"), shipped("site_config.yml"))
    assert read is not None, found
    return read


def seconds(work: Callable[[], object]) -> float:
    """The least CPU time of a few rounds, in seconds."""
    taken = []
    for _ in range(ROUNDS):
        before = process_time()
        work()
        taken.append(process_time() - before)
    return min(taken)


def answers(judge: Judge, read: Course, answer: Answerer) -> int:
    """Every card at every site as usually written, on every visit made ready anew; how many that are."""
    count = 0
    for case in read.cases.values():
        for visit in case.visits:
            values = values_of(case, visit, read.content.screening)
            frame = judge.frame(values, visit.severity or case.severity, None)
            for card in read.content.cards.values():
                written = {name: value for name, value in card.usual.items() if name != "site"}
                for site in SITES:
                    answer(judge.options, frame, card, site, written)
                    count += 1
    return count


def test_option_answers_a_second() -> None:
    """Answer, rules and questions; and the answers alone. Making the visits ready is counted in."""
    read = course()
    judge = Judge(read.content)
    print(f"\nrules {len(read.content.rules)}, cards {len(read.content.cards)}, cases {len(read.cases)}")
    for name, answer in (
        ("answer, rules and questions", OptionJudge.judge),
        ("answer alone", OptionJudge.answers),
    ):
        count = answers(judge, read, answer)
        rate = count / seconds(lambda answer=answer: answers(judge, read, answer))  # type: ignore[misc]
        print(f"judge: {name}: {rate:,.0f} a second, {rate / TARGET:.2f} of the target")
