"""What is said of each option: its answer, why, on what it rests, both sides, and what would change it."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from builder.assess.question import Ground, Said
from builder.assess.wording import citations, say
from builder.model.card import ANSWERS
from builder.model.judgement import Asked, Fired, OptionJudgement, VisitJudgement
from builder.model.library import Course
from builder.model.rested import deciding, option_reviewed

MOST_REASONS = 2


def said_of_option(course: Course, judged: OptionJudgement, visit: VisitJudgement) -> Said:
    """One option as written, on its visit."""
    content = course.content
    decided = deciding(judged)
    refers = judged.right and visit.aims == ("refer",) and "urgency" in judged.written
    safe_in_vain = judged.at_worst == "ok" and not judged.serves_aim
    return Said(
        mark="refer" if refers else "wrong" if safe_in_vain else judged.at_worst,
        word=say(content, "word_refer") if refers else _word(course, judged),
        reason=" ".join(_reasons(course, judged, visit, decided)),
        ground=ground_of(course, decided, judged.rules, reviewed=option_reviewed(content, visit, judged)),
        would_change=_would_change(course, judged),
    )


def ground_of(
    course: Course, decided: Sequence[Fired], bearing: Iterable[Fired], *, reviewed: bool
) -> Ground:
    """On what an answer rests that is decided by these rules, among all those that bear on it."""
    sources = citations(course.content, (source for one in decided for source in one.source))
    words = dict.fromkeys(say(course.content, f"strength_{one.strength}") for one in decided)
    strengths = [word for word in words if word not in sources.lower()]
    sides = dict.fromkeys(side for one in bearing if (side := _both_sides(course, one)))
    return Ground(
        rests_on=rests_on(course, [sources, *strengths], reviewed=reviewed),
        contested=" ".join(sides),
        rules=tuple(dict.fromkeys(one.id for one in decided)),
        reviewed=reviewed,
    )


def rests_on(course: Course, parts: Sequence[str], *, reviewed: bool) -> str:
    """Sources and strength in one line, which says so where no clinician has looked yet."""
    told = parts if reviewed else [*parts, say(course.content, "unreviewed")]
    return " · ".join(part for part in told if part)


def unknown(course: Course, ask: Sequence[Asked]) -> str:
    """What is not recorded, as the questions a therapist would ask."""
    questions = " ".join(one.question for one in ask)
    return say(course.content, "unknown", questions=questions) if questions else ""


def whys(fired: Iterable[Fired]) -> str:
    """Why, in the words of the first rules."""
    return " ".join(list(dict.fromkeys(one.why for one in fired))[:MOST_REASONS])


def _word(course: Course, judged: OptionJudgement) -> str:
    if judged.at_worst == "ok" and not judged.serves_aim:
        return say(course.content, "word_aim")
    word = say(course.content, f"word_{judged.at_worst}")
    return word if judged.answer == judged.at_worst else say(course.content, "word_open", word=word)


def _reasons(
    course: Course, judged: OptionJudgement, visit: VisitJudgement, decided: Sequence[Fired]
) -> Iterable[str]:
    content = course.content
    yield whys(decided) or say(content, "nothing_against")
    if judged.change and judged.at_worst == "change":
        yield say(content, "needed", change=judged.change)
    if judged.answer != judged.at_worst and (questions := unknown(course, judged.ask)):
        yield questions
    if not judged.serves_aim:
        yield say(content, "aim", aim=" / ".join(content.phases.aim_words[aim] for aim in visit.aims))


def _would_change(course: Course, judged: OptionJudgement) -> tuple[str, ...]:
    """One change: for an option that is not OK one that makes it better, else a sign that would bar it."""
    now = ANSWERS.index(judged.at_worst)
    helpful = [one for one in judged.would_change if not now or ANSWERS.index(one.answer) < now]
    of_signs = [one for one in helpful if not any(name.startswith("written.") for name in one.set)]
    one = next(iter(helpful if now else [*of_signs, *helpful]), None)
    if one is None:
        return ()
    name, answer = course.content.cards[judged.card].name, say(course.content, f"word_{one.answer}")
    return (say(course.content, "would_change", change=one.text, card=name, answer=answer),)


def _both_sides(course: Course, fired: Fired) -> str:
    if (point := fired.contested) is None:
        return ""
    position = course.file.positions.get(point.point)
    own = f" {say(course.content, 'position', position=position)}" if position else ""
    return say(course.content, "contested", taught=point.taught, other=point.other) + own
