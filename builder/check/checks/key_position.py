"""Right answers should not favour one position."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator, Sequence
from fractions import Fraction

from builder.check.evidence import Evidence, Finding
from builder.check.wording.asked import spoken
from builder.check.wording.chance import chance_of
from builder.diagnostic import Level
from builder.model.kind import Example
from builder.model.wording import Thresholds

LEVEL: Level = "advice"
WHY = (
    "Authors put the right answer where it feels well hidden, and readers learn where that is. The order is "
    "drawn anew for each paper, but not where `in_order` keeps it, and not in your own notes."
)

_MOST_EXACT = 5


def _question(number: int, right: int) -> Example:
    options = "".join(
        f"    - {{text: {minutes} minutes, {'right: yes, ' if place == right else ''}because: So it is.}}\n"
        for place, minutes in enumerate((number + 10, number + 30, number + 50, number + 70))
    )
    return Example(
        f"questions/number_{number}.yml",
        f"format: 1\nid: number_{number}\nobjective: choose\nlevel: remember\nuse: practice\n"
        f"stem: How long is the pause that pack {number} needs?\nsource: [common_practice]\n"
        f"one:\n  options:\n{options}",
    )


def _questions(*right: int) -> Example:
    first, *rest = (_question(number, place) for number, place in enumerate(right, start=1))
    return Example(first.file, first.text, more=tuple(rest))


BAD = _questions(2, 2, 2, 2, 2, 2, 1, 3)
GOOD = _questions(0, 3, 2, 1, 2, 0, 1, 3)


def check(evidence: Evidence) -> Iterator[Finding]:
    """Questions with one right answer, by how many options they have, whose positions are out of balance."""
    if (book := spoken(evidence)) is None:
        return
    places: dict[int, list[int]] = defaultdict(list)
    for question in evidence.course.questions.values():
        if question.one is not None:
            places[len(question.one.options)].append(question.one.right[0])
    for options, taken in sorted(places.items()):
        counts = [taken.count(place) for place in range(options)]
        if _uneven(book.thresholds, counts):
            yield Finding(
                "course.yml",
                (),
                f"In {len(taken)} questions of {options} options the right one stands "
                f"{', '.join(map(str, counts))} times from first to last place: more uneven than chance.",
                "Move some right answers to where they are seldom.",
            )


def _uneven(limits: Thresholds, counts: Sequence[int]) -> bool:
    expected = Fraction(limits.key_expected.value)
    if len(counts) > _MOST_EXACT and Fraction(sum(counts), len(counts)) < expected:
        return False
    return chance_of(counts, expected) < limits.key_chance.value
