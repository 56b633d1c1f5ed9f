"""One card as a clinician reads it for review: how it is done, and its answer for every phase and site."""

from __future__ import annotations

from collections.abc import Iterator

from builder.model.card import Card, CellRow
from builder.model.fact import plain
from builder.render.limit import limit_text
from builder.render.maker import Maker
from builder.render.review_entry import Grid, Said, Told, rests
from builder.render.source import contested_text
from builder.render.student_card import where
from builder.render.wording import chip


def said_of_card(made: Maker, card: Card) -> Told:
    """All that a card says."""
    say = made.say
    heads = (say("review_where", name=card.name), say("review_answer"), say("review_why"))
    return Told(
        tuple(one for one in _said(made, card) if one.text),
        (Grid(heads, tuple(_row(made, row) for row in card.baseline)),),
    )


def _said(made: Maker, card: Card) -> Iterator[Said]:
    say, facts = made.say, made.course.content.facts.written
    yield Said(say("review_what"), card.what)
    yield Said(say("review_how_done"), _done(made, card))
    aims = made.course.content.phases.aim_words
    yield Said(say("serves"), ", ".join(aims[one] for one in card.serves))
    yield Said(say("usual"), "; ".join(chip(name, facts.get(name), one) for name, one in card.usual.items()))
    yield Said(say("review_doses"), "; ".join(_ladder(made, card)))
    yield Said(say("i_groups"), ", ".join(one.replace("_", " ") for one in card.groups))
    yield Said(say("stop_if"), "; ".join(card.stop_if))
    yield Said(say("cautions"), "; ".join(card.cautions))
    yield Said(say("review_card_licence"), card.licence or "")
    if card.evidence is not None:
        yield Said(say("speaks_for").rstrip(":"), card.evidence.speaks_for)
        yield Said(say("speaks_against").rstrip(":"), card.evidence.speaks_against)


def _done(made: Maker, card: Card) -> str:
    """Who touches, who moves, which way, how the muscle is, and its place in the order."""
    say = made.say
    parts = [
        say(f"kind_{card.kind}").lower(),
        say("hands_on" if card.hands_on else "review_hands_off").lower(),
    ]
    parts += [say(f"stroke_{card.stroke}")] if card.stroke != "none" else []
    parts += [say(f"muscle_{card.muscle}")] if card.muscle != "any" else []
    parts += [say(f"moves_{card.who_moves}")] if card.who_moves != "nobody" else []
    parts += [say("review_order", n=card.order)] if card.order is not None else []
    return " · ".join(parts)


def _ladder(made: Maker, card: Card) -> Iterator[str]:
    facts = made.course.content.facts.written
    for name, doses in card.ladder.items():
        fact = facts.get(name)
        label, unit = (fact.label, fact.unit) if fact else (name, None)
        yield f"{label}: {', '.join(plain(one) for one in doses)}{f' {unit}' if unit else ''}"


def _row(made: Maker, row: CellRow) -> tuple[str, ...]:
    say, facts = made.say, made.course.content.facts.written
    limits = "; ".join(limit_text(node, facts, say) for node in row.limits.values())
    answer = f"{say(f'answer_{row.answer}')}{f': {limits}' if limits else ''}"
    both = f"{say('contested')} {contested_text(made, row.contested)}" if row.contested else ""
    why = " ".join(
        part for part in (row.why, f"[{rests(made, row.source, row.strength, short=True)}]", both) if part
    )
    return where(made, row), answer, why
