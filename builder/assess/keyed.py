"""What is held right in a question, under the names that its parts have as laid out."""

from __future__ import annotations

from builder.assess.laying import Laid
from builder.assess.question import Judged, Said
from builder.model.keyed import KeyedParts


def keyed_parts(laid: Laid, judged: Judged) -> KeyedParts:
    """The key of a question; where an order is asked for, in that order, else in the order shown."""
    names, partners = laid.ids, laid.partners
    shown = [option.id for option in laid.question.options]
    right = [names[place] for place in judged.right]
    return KeyedParts(
        kind=laid.shown.kind,
        options=tuple(shown),
        right=tuple(right if laid.shown.kind == "order" else [one for one in shown if one in set(right)]),
        partners=tuple(one.id for one in laid.question.partners),
        must=tuple((names[first], names[then]) for first, then in judged.must),
        pairs=tuple((names[left], partners[right]) for left, right in judged.pairs),
        votes=tuple(zip(names, judged.votes, strict=True)) if judged.votes else (),
        within=judged.within,
        rubric=judged.rubric,
    )


def said_by_name(laid: Laid, judged: Judged) -> dict[str, Said]:
    """What is said of each option, each partner of none and each number, by its id or as it reads."""
    spare = zip(laid.partners, judged.spare, strict=True)
    return {
        **dict(zip(laid.ids, judged.said, strict=True)),
        **{name: said for name, said in spare if said},
        **dict(judged.numbers),
    }
