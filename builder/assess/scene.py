"""What a therapist could know at one visit, in words; and an option as a card with chips."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal

from builder.assess.question import Choice
from builder.assess.wording import say, span
from builder.model.case import Case, CaseOption, Visit, Written
from builder.model.fact import Fact
from builder.model.library import Content
from builder.model.paper import BoardCell, Scene


def scene_of(content: Content, case: Case, visit: Visit, *, alone: bool) -> Scene:
    """The scene of a visit; `alone` tells it without the author's titles and with what happened first."""
    told = (case.mechanism if alone else "", visit.story or "")
    who, when = client_words(content, case), time_words(content, visit)
    return Scene(
        title=when if alone else visit.title,
        client=who if alone else f"{who} · {when}",
        story=" ".join(_sentence(part) for part in told if part),
        board=tuple(_board(content, case, visit)),
        screen=_screen_words(content, visit),
    )


def client_words(content: Content, case: Case) -> str:
    """Who the client is and what is hurt, in one line."""
    return f"{case.client.role}, {case.client.age} · {_tissue_words(content, case)}"


def time_words(content: Content, visit: Visit) -> str:
    """How long ago the injury was, and the injury before it where there was one."""
    first = span(content, visit.since_injury)
    if visit.since_reinjury is None:
        return say(content, "after", span=first)
    return say(content, "after_again", span=span(content, visit.since_reinjury), first=first)


def choice_of(content: Content, option: CaseOption) -> Choice:
    """An option as shown: the card's name, then site and attributes in the order of the facts file."""
    card = content.cards[option.card]
    written: dict[str, Written] = dict(option.written)
    if card.kind == "technique":
        written["site"] = option.site
    declared = content.facts.written
    chips = [declared[name].chip(written[name]) for name in declared if name in written]
    return Choice(card.name, tuple(chips))


def _sentence(text: str) -> str:
    return text if text[-1] in ".!?" else f"{text}."


def _tissue_words(content: Content, case: Case) -> str:
    return say(content, f"side_{case.tissue.side}", tissue=case.tissue.name)


def _board(content: Content, case: Case, visit: Visit) -> Iterator[BoardCell]:
    facts = content.facts.facts
    yield _cell("injury", facts["injury"], case.injury)
    if case.tissue.haematoma is not None:
        yield _cell("haematoma", facts["haematoma"], case.tissue.haematoma)
    if (severity := visit.severity or case.severity) is not None:
        words = content.severity.words[severity]
        yield BoardCell(label=facts["severity"].label, value=words, fact="severity")
    for recorded in (
        visit.findings,
        {name: case.history[name] for name in case.history.keys() - visit.findings},
    ):
        yield from (_cell(name, fact, recorded[name]) for name, fact in facts.items() if name in recorded)


def _cell(name: str, fact: Fact, value: Written) -> BoardCell:
    number = f"{value.normalize():f}" if isinstance(value, Decimal) else None
    return BoardCell(label=fact.label, value=fact.in_words(value), fact=name, number=number)


def _screen_words(content: Content, visit: Visit) -> str:
    consent = say(content, f"consent_{visit.consent or 'unknown'}")
    if visit.screen is None or visit.screen.set not in content.screening.sets:
        return f"{say(content, 'screen_none')} {consent}"
    name = content.screening.sets[visit.screen.set].name
    exceptions = visit.screen.all_no_except
    if not exceptions:
        return f"{say(content, 'screen_all_no', screen=name)} {consent}"
    facts = content.facts.facts
    named = [
        f"{fact.label}: {fact.in_words(exceptions[key])}" for key, fact in facts.items() if key in exceptions
    ]
    return f"{say(content, 'screen_except', screen=name, exceptions='; '.join(named))} {consent}"
