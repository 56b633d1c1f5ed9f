"""What marks a right answer beside the ids of its options, though no withheld text is said.

A mark is a telling word in a tag or in data that stands beside right options and not beside wrong ones, or an
id that is named more often because it is right. That nothing subtler depends on a key is held by the
non-interference tests, not here.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from builder.model.key import KeyAnswer

TELLING = (
    "right|correct|wrong|incorrect|answer|solution|key|score|points|mark|verdict|rationale|because|best"
    "|ok|change|not_yet|barred|refer|judged|judgement|true|false"
)
REACH = 400
_MARK = re.compile(rf"(?<![a-z0-9])({TELLING})(?![a-z0-9])(?:[\"']?\s*[:=]\s*[\"']?([\w.]+))?", re.IGNORECASE)
_SPOKEN = re.compile(
    r"\b(?:style|alt|title|aria-label|placeholder)\s*=\s*(?:\"[^\"]*\"|'[^']*')", re.IGNORECASE
)
_BETWEEN_TAGS = re.compile(r">[^<>]*<")
_AFTER_LAST_TAG = re.compile(r">[^<>]*$")

Marks = frozenset[tuple[str, str]]


@dataclass
class Named:
    """How often an option is named, with the marks before and after it."""

    times: int = 0
    before: Marks = frozenset()
    after: Marks = frozenset()


def marked(text: str, answers: Sequence[KeyAnswer]) -> Iterator[tuple[KeyAnswer, str]]:
    """The questions whose right options are marked in a text, each with how.

    Where no option is wrong, as in an order or in what is written, nothing could be marked out.
    """
    uneven = []
    for answer in (one for one in answers if set(one.right) < set(one.options)):
        named = _named(text, answer)
        if _differ(answer, {option: one.before for option, one in named.items()}) or _differ(
            answer, {option: one.after for option, one in named.items()}
        ):
            yield answer, "a telling word stands beside its right options and not beside the others"
        if len({one.times for one in named.values()}) > 1:
            uneven.append((answer, {option: one.times for option, one in named.items()}))
    if uneven and all(_named_more(answer, times) for answer, times in uneven):
        for answer, _ in uneven:
            yield answer, "its right options are named more or less often than the others"


def _named(text: str, answer: KeyAnswer) -> dict[str, Named]:
    found = {option: Named() for option in answer.options}
    ids = "|".join(map(re.escape, answer.options))
    matches = list(re.finditer(rf"(?<!\w)({ids})(?!\w)", text))
    for index, match in enumerate(matches):
        start = max(matches[index - 1].end() if index else 0, match.start() - REACH)
        following = matches[index + 1].start() if index + 1 < len(matches) else len(text)
        one = found[match[1]]
        one.times += 1
        one.before |= _marks(_last_tags(text[start : match.start()]))
        one.after |= _marks(text[match.end() : min(following, match.end() + REACH)])
    return found


def _last_tags(piece: str) -> str:
    """The end of a text that begins with the tag around the last tag, or with the object it stands in."""
    opened = piece.rfind("<", 0, max(piece.rfind("<"), 0))
    return piece[max(opened, piece.rfind("{"), 0) :]


def _marks(piece: str) -> Marks:
    code = _AFTER_LAST_TAG.sub(">", _BETWEEN_TAGS.sub("><", _SPOKEN.sub("", piece)))
    return frozenset((match[1].lower(), (match[2] or "").lower()) for match in _MARK.finditer(code))


def _differ(answer: KeyAnswer, marks: Mapping[str, Marks]) -> bool:
    right = {found for option, found in marks.items() if option in answer.right}
    wrong = {found for option, found in marks.items() if option not in answer.right}
    return bool(right) and bool(wrong) and right.isdisjoint(wrong)


def _named_more(answer: KeyAnswer, times: Mapping[str, int]) -> bool:
    right = [times[option] for option in answer.options if option in answer.right]
    wrong = [times[option] for option in answer.options if option not in answer.right]
    return bool(right and wrong) and (min(right) > max(wrong) or max(right) < min(wrong))
