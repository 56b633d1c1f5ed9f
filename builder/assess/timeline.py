"""The healing timeline of a visit: bands by the calendar, earlier visits, today."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal

from builder.assess.wording import say, span
from builder.model.card import Phase
from builder.model.case import Case, Visit
from builder.model.judgement import VisitJudgement
from builder.model.library import Content
from builder.model.practice import Band, Timeline
from builder.model.tables import SEVERITIES, Clock

LAST_BAND = Decimal("1.5")


def timeline_of(content: Content, case: Case, number: int, judged: VisitJudgement) -> Timeline | None:
    """The timeline of one visit by the worst severity it may have; None where phase does not apply."""
    if "none" in judged.phase.possible:
        return None
    severity = max(judged.severity.possible, key=SEVERITIES.index)
    clocks = content.phases.clocks
    clock = next((one for one in clocks if (one.tissue, one.severity) == (case.tissue.kind, severity)), None)
    if clock is None:
        return None
    visit = case.visits[number]
    today = _latest(visit)
    bands = tuple(_bands(content, clock, today))
    earlier = tuple(_earlier(case.visits[:number], visit, today))
    held = _held(bands, today, judged.phase.possible)
    words = _words(content, bands, today, held)
    return Timeline(bands=bands, earlier=earlier, today=today, words=words, held=held)


def _latest(visit: Visit) -> Decimal:
    return visit.since_injury if visit.since_reinjury is None else visit.since_reinjury


def _earlier(before: tuple[Visit, ...], visit: Visit, today: Decimal) -> Iterator[Decimal]:
    for one in before:
        hours = today - (visit.since_injury - one.since_injury)
        if hours >= 0:
            yield hours


def _bands(content: Content, clock: Clock, today: Decimal) -> Iterator[Band]:
    ends: dict[Phase, Decimal] = {
        "acute": clock.acute_until,
        "early_repair": clock.early_repair_until,
        "late_repair": clock.late_repair_until,
        "remodelling": max(clock.late_repair_until * LAST_BAND, today),
    }
    start = Decimal(0)
    for phase, end in ends.items():
        yield Band(phase=phase, word=content.phases.phase_words[phase], start=start, end=end)
        start = end


def _held(bands: tuple[Band, ...], today: Decimal, possible: tuple[Phase, ...]) -> Phase | None:
    """The earliest phase it may be in, where that is earlier than the calendar's."""
    reached = [band.phase for band in bands if band.start == 0 or band.start < today]
    earliest = next(band.phase for band in bands if band.phase in possible)
    return earliest if earliest in reached[:-1] else None


def _words(content: Content, bands: tuple[Band, ...], today: Decimal, held: Phase | None) -> str:
    parts = [say(content, "timeline", phase=band.word, span=span(content, band.end)) for band in bands[:-1]]
    last = say(content, "timeline_last", phase=bands[-1].word)
    told = [f"{'; '.join([*parts, last])}.", say(content, "timeline_today", span=span(content, today))]
    if held is not None:
        told.append(say(content, "timeline_held", phase=content.phases.phase_words[held]))
    return " ".join(told)
