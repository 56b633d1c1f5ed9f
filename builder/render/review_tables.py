"""Phases, severity tables and background lists as a clinician reads them for review."""

from __future__ import annotations

from collections.abc import Iterator

from builder.model.tables import Background, Clock, SeverityTable, Sign
from builder.render.maker import Maker
from builder.render.review_entry import Grid, Said, Told, condition, rests
from builder.render.source import contested_text
from builder.render.wording import span


def said_of_phases(made: Maker) -> Told:
    """The calendar by tissue and severity, the signs that hold it back, and the aim of each phase."""
    book, say = made.course.content.phases, made.say
    aims = "; ".join(f"{book.phase_words[one]}: {book.aim_words[aim]}" for one, aim in book.aims.items())
    ends = tuple(
        say("review_until", phase=book.phase_words[one]) for one in ("acute", "early_repair", "late_repair")
    )
    clocks = Grid(
        (say("review_injury"), *ends, say("review_rests")), tuple(_clock(made, one) for one in book.clocks)
    )
    heads = (say("review_sign"), say("review_no_later"), say("review_told"), say("review_rests"))
    signs = Grid(heads, tuple(_sign(made, one) for one in book.signs))
    doubt = Grid((heads[0], *heads[2:]), tuple(_doubt(made, one) for one in book.doubt))
    said = (
        Said(say("review_what"), say("review_phases_what")),
        condition(made, say("review_no_phase"), book.does_not_apply),
        Said(say("i_aim"), aims),
        Said(say("review_rests"), rests(made, book.source)),
    )
    return Told(said, (clocks, signs, *([doubt] if doubt.rows else [])))


def said_of_table(made: Maker, table: SeverityTable) -> Told:
    """Where it applies, what is measured and when, and what earns each grade."""
    return Told(tuple(_table(made, table)))


def said_of_background(made: Maker, one: Background) -> Told:
    """Every line of a list that is only taught."""
    return Told(tuple(_background(made, one)))


def _clock(made: Maker, clock: Clock) -> tuple[str, ...]:
    words = made.course.content.severity.words
    ends = (clock.acute_until, clock.early_repair_until, clock.late_repair_until)
    times = tuple(span(one, made.say) for one in ends)
    return (f"{clock.tissue}, {words[clock.severity]}", *times, rests(made, clock.source, short=True))


def _sign(made: Maker, sign: Sign) -> tuple[str, ...]:
    when, *rest = _doubt(made, sign)
    return (when, made.course.content.phases.phase_words[sign.no_later_than], *rest)


def _doubt(made: Maker, sign: Sign) -> tuple[str, ...]:
    return condition(made, "", sign.when).line, sign.text, rests(made, sign.source, sign.strength, short=True)


def _table(made: Maker, table: SeverityTable) -> Iterator[Said]:
    say, content = made.say, made.course.content
    facts = content.facts.facts
    window = say("review_window", start=span(table.not_before, say), end=span(table.not_after, say))
    yield condition(made, say("review_applies"), table.applies)
    yield Said(say("review_measure"), f"{facts[table.measure].label}, {window}")
    if table.recalled:
        yield Said(say("review_recalled"), facts[table.recalled].label)
    if table.least:
        yield Said(say("review_reads"), say("review_least"))
    for band in table.bands:
        yield condition(made, content.severity.words[band.grade].capitalize(), band.when)
    for band in table.raised:
        label = say("review_raised", grade=content.severity.words[band.grade])
        yield condition(made, label, band.when)
    yield Said(say("review_rests"), rests(made, table.source))
    if table.note:
        yield Said(say("review_note"), table.note)


def _background(made: Maker, one: Background) -> Iterator[Said]:
    say = made.say
    yield Said(say("review_reads"), say("review_taught"))
    if one.people:
        yield Said(say("review_people"), one.people)
    for row in one.rows:
        points = f" – {say('i_points_of', points=row.points)}" if row.points is not None else ""
        yield Said(row.name, f"{row.text}{points}")
    yield Said(say("review_rests"), rests(made, one.source, one.strength))
    if one.contested:
        yield Said(say("contested").rstrip(":"), contested_text(made, one.contested))
    if one.note:
        yield Said(say("review_note"), one.note)
