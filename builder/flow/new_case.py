"""Drafts a case that holds: its screening set, its phase and its options are what the rules make of it."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping

from builder.judge.judge import Judge
from builder.judge.truth import Truth
from builder.model.card import Card, site_of
from builder.model.case import Case, CaseOption
from builder.model.judgement import OptionJudgement, VisitJudgement
from builder.new.case import first_case, with_measures

OFFERED = 2
WRONG = ("barred", "not_yet")
WAITED_FOR = frozenset({"refer", "ask"})


def drafted(judge: Judge, answers: Mapping[str, str], objectives: tuple[str, ...]) -> Case:
    """A case with one visit, whose phase is worked out and whose options are right and wrong by the rules."""
    sets = judge.content.screening.sets
    tried = [first_case(answers, objectives, one) for one in sets]
    case = min(tried, key=lambda one: _unfit(judge, one))
    case = with_measures(case, _asked(_judged(judge, case)))
    judged = _judged(judge, case)
    visit = case.visits[0].model_copy(
        update={
            "phase": judged.phase.possible[0],
            "chosen": tuple(_options(judge, _right(judged), 1)),
            "wrong": tuple(_options(judge, _wrong(judged), OFFERED)),
        }
    )
    return case.model_copy(update={"visits": (visit,)})


def _unfit(judge: Judge, case: Case) -> tuple[int, int, int, int]:
    """How little a screening set suits a case: what it leaves to ask, what it asks of other regions."""
    judged, screen = _judged(judge, case), case.visits[0].screen
    covered = judge.content.screening.covered_by(screen.set if screen else "")
    state = judge.space.state({"region": case.tissue.region, "injury": case.injury})
    elsewhere = {name for name, where in judge.unasked if where(state) is Truth.FALSE}
    return (len(judged.session.ask), len(elsewhere & set(covered)), len(_asked(judged)), len(covered))


def _judged(judge: Judge, case: Case) -> VisitJudgement:
    """The first visit with every card offered at its usual dose, and a referral at any urgency."""
    urgencies = (
        judge.content.facts.written["urgency"].values if "urgency" in judge.content.facts.written else ()
    )
    offered = tuple(one for card in judge.content.cards.values() for one in _ways(card, urgencies))
    visit = case.visits[0].model_copy(update={"wrong": offered})
    return judge.answered(case.model_copy(update={"visits": (visit,)}))[0]


def _asked(judged: VisitJudgement) -> set[str]:
    return {asked.fact for option in judged.wrong for asked in option.ask}


def _right(judged: VisitJudgement) -> list[OptionJudgement]:
    return [one for one in judged.wrong if one.right]


def _wrong(judged: VisitJudgement) -> list[OptionJudgement]:
    return [one for one in judged.wrong if one.answer in WRONG and set(one.written) != {"urgency"}]


def _options(judge: Judge, found: Iterable[OptionJudgement], count: int) -> list[CaseOption]:
    """The first few: what the session waits for, then techniques; what is not contested comes first."""
    cards = judge.content.cards

    def rank(one: OptionJudgement) -> tuple[bool, bool, bool, str]:
        card = cards[one.card]
        return (not set(card.serves) <= WAITED_FOR, _contested(one), card.kind != "technique", one.card)

    return [
        CaseOption(card=one.card, site=site_of(one.site), written=one.written)
        for one in sorted(found, key=rank)[:count]
    ]


def _contested(option: OptionJudgement) -> bool:
    return any(rule.contested for rule in option.rules)


def _ways(card: Card, urgencies: Iterable[str]) -> Iterator[CaseOption]:
    """A card as it is usually written; one with an urgency, at each."""
    written = {name: value for name, value in card.usual.items() if name != "site"}
    urgent = [{**written, "urgency": one} for one in urgencies] if "urgency" in written else []
    for way in urgent or [written]:
        yield CaseOption(card=card.id, site=site_of(card.usual.get("site")), written=way)
