"""More laws of judging: of contraindications, dose, place, signs, referral, names; each shown able to fail.

Where this model makes a law of the trade false it is restated: a dose is milder only where one side of it is
the dangerous one (a pad is not), elsewhere on the body counts for what bars and not for the dose, and white
fingers in the cold bear on a wrap as well as on cold.
"""

from dataclasses import replace
from decimal import Decimal
from typing import Any

import pytest

from builder.judge import session
from builder.judge.space import Value
from builder.judge.values import values_of
from builder.model.card import ANSWERS, PHASES
from builder.model.case import Case
from builder.model.rule import URGENCIES, Rule, Urgency
from tests.judge import small
from tests.judge.damage import Damage, with_rule
from tests.judge.laws import (
    BASICS,
    EXAMPLES,
    SMALL,
    Client,
    Law,
    World,
    harder,
    safe,
    shipped_world,
    tried,
    worst,
)

BARRED = ANSWERS.index("not_yet")
TOUCHES = {"cold_reaction": {"cold"}, "raynaud": {"cold", "compressing"}, "wrap_allergy": {"compressing"}}
BARS = [{"groups": ["hands_on"], "answer": "barred"}]


def adding_a_contraindication_never_loosens(world: World, client: Client, pick: int) -> bool:
    """No answer is milder with a contraindication than without it."""
    named = [name for name, one in world.facts.items() if one.fact.group == "contraindication"]
    name = named[pick % len(named)]
    pair = [client.but(**{name: end(world.facts[name])}) for end in (safe, worst)]
    cards = world.content.cards.values()
    return harder(*(world.ranks(one, cards) for one in pair))


def a_milder_dose_never_worsens(world: World, client: Client, pick: int) -> bool | None:
    """Less of what is dangerous in more, or more of what is dangerous in less, turns no answer stricter."""
    variables = {
        name: one
        for name in world.content.facts.written
        if (one := world.judge.space.variables[f"written.{name}"]).fact.worse_when not in ("both", "neither")
    }
    name = list(variables)[pick % len(variables)]
    cells = [cell.value for cell in variables[name].cells]
    low, high = sorted((pick // 7 % len(cells), pick // 91 % len(cells)))
    if low == high:
        return None
    ends = (low, high) if variables[name].fact.worse_when in ("higher", "yes") else (high, low)
    milder, stronger = (
        replace(client, written={**client.written, name: cells[end]}, unwritten=client.unwritten - {name})
        for end in ends
    )
    cards = world.content.cards.values()
    return harder(world.ranks(milder, cards), world.ranks(stronger, cards))


def moving_away_bars_nothing_more(world: World, client: Client, _: int) -> bool | None:
    """Work by hand that its card allows elsewhere is barred there only where it is on the injury."""
    possible = world.frame(client).phase.possible
    cards = [
        card
        for card in world.hands_on
        if all(card.cell(phase, "remote").answer == "ok" for phase in possible)
    ]
    if not cards:
        return None
    here, away = (world.ranks(replace(client, site=site), cards) for site in ("on", "remote"))
    return all(away[name][at] < BARRED or away[name][at] <= here[name][at] for name in away for at in (0, 1))


def worse_signs_are_never_later(world: World, client: Client, pick: int) -> bool | None:
    """A hotter, more swollen or more painful case may be in no later phase than the same case calmer."""
    signs = [
        name
        for name in ("swelling_trend", "heat", "rest_pain", "pain_with", "swelling")
        if name in world.facts
    ]
    name = signs[pick % len(signs)]
    calm, hot = (client.but(**{name: end(world.facts[name])}) for end in (safe, worst))
    phases = [[PHASES.index(one) for one in world.frame(each).phase.possible] for each in (calm, hot)]
    if PHASES.index("none") in phases[0]:
        return None
    return max(phases[1]) <= max(phases[0])


def a_contraindication_touches_only_its_own(world: World, client: Client, pick: int) -> bool:
    """What speaks against cold leaves all but cold as it was, what speaks against a wrap all but wraps."""
    touches = TOUCHES if "raynaud" in world.facts else {"numb_skin": {"cold"}}
    name = list(touches)[pick % len(touches)]
    others = [card for card in world.content.cards.values() if not set(card.groups) & touches[name]]
    without, given = (client.but(**{name: value}) for value in ("no", "yes"))
    return world.ranks(without, others) == world.ranks(given, others)


def a_referral_rules_by_its_most_urgent(world: World, client: Client, pick: int) -> bool | None:
    """With two flags the most urgent rule that fires counts, and no work by hand is right."""
    flags = (world.flags[pick % len(world.flags)], world.flags[pick // 64 % len(world.flags)])
    flagged = client.but(**{name: worst(world.facts[name]) for name in flags})
    frame = world.frame(flagged)
    fired: list[Urgency] = [one.effect for one in frame.session.rules if one.truth == "fires"]  # type: ignore[misc]
    if not fired:
        return None
    most = max(fired, key=URGENCIES.index)
    ends = most in ("same_day", "emergency")
    right = ends and any(one.right for one in world.judged(flagged, world.hands_on))
    return frame.session.answer == "refer" and frame.session.urgency == most and not right


def every_answer_has_its_source(world: World, client: Client, _: int) -> bool | None:
    """Whatever bears on an answer names at least one source that is listed, and says why."""
    options = world.judged(client, world.content.cards.values())
    fired = [one for option in options for one in option.rules] + list(world.frame(client).session.rules)
    known = world.content.references.sources
    if len(world.content.rules) < 10:
        return all(one.source and one.why for one in fired)
    return all(one.source and one.why and set(one.source) <= known.keys() for one in fired)


def hurt_again_is_as_strict_as_fresh(world: World, client: Client, pick: int) -> bool:
    """Some hours after it was hurt again, work by hand is as strict as those hours after a fresh injury."""
    hours = client.values.get("hours")
    first = world.facts["hours_since_first"].cells[-1].value if pick % 2 else hours
    fresh = client.but(reinjured="no", hours_since_first=hours)
    again = client.but(reinjured="yes", hours_since_first=first)
    pair = [world.ranks(one, world.hands_on) for one in (fresh, again)]
    return harder(pair[0], pair[1], sure=False)


def names_and_sides_change_nothing(world: World, client: Client, pick: int) -> bool:
    """Another client's work, case, mechanism and side, with the same findings, are judged alike."""
    cards = list(world.content.cards)
    findings = {name: one for name, one in client.values.items() if name not in BASICS}
    visit = {"findings": findings, "screen": None, "chosen": [{"card": cards[pick % len(cards)]}]}
    one = small.case(visit)
    tissue = one.tissue.model_copy(update={"side": "left", "name": "vastus"})
    person = one.client.model_copy(update={"role": "Rigger"})
    other = one.model_copy(
        update={"tissue": tissue, "client": person, "mechanism": "A fall.", "title": "Other"}
    )
    judged = [world.judge.frame(_recorded(world, each), None, None).state for each in (one, other)]
    return judged[0] == judged[1]


def _recorded(world: World, case: Case) -> dict[str, Value]:
    return values_of(case, case.visits[0], world.content.screening)


def days_ticking_forward_never_tighten(world: World, client: Client, pick: int) -> bool | None:
    """With every sign at its safest, more time makes no work by hand stricter, unless time itself refers."""
    calm = {name: safe(one) for name, one in world.facts.items() if one.fact.group in ("sign", "red_flag")}
    cells = [cell.value for cell in world.facts["hours"].cells]
    early, late = sorted((pick % len(cells), pick // len(cells) % len(cells)))
    one, other = (client.but(**calm, hours=cells[at], hours_since_first=cells[at]) for at in (early, late))
    sessions = [world.frame(each).session.answer for each in (one, other)]
    if early == late or sessions[0] != sessions[1]:
        return None
    return harder(world.ranks(other, world.hands_on), world.ranks(one, world.hands_on), sure=False)


def age_changes_nothing_within_its_bounds(world: World, client: Client, pick: int) -> bool:
    """From 18 to 54 years, and from 55 on, another age is judged alike: only minors and knees differ."""
    low, high = ((18, 54), (55, 110))[pick % 2]
    ages = [Decimal(low + pick // step % (high - low + 1)) for step in (2, 211)]
    pair = [client.but(age=age) for age in ages]
    sessions = [world.frame(one).session for one in pair]
    cards = world.content.cards.values()
    return sessions[0] == sessions[1] and world.ranks(pair[0], cards) == world.ranks(pair[1], cards)


HOLD: list[Law] = [
    days_ticking_forward_never_tighten,
    age_changes_nothing_within_its_bounds,
    hurt_again_is_as_strict_as_fresh,
    names_and_sides_change_nothing,
    adding_a_contraindication_never_loosens,
    a_milder_dose_never_worsens,
    moving_away_bars_nothing_more,
    worse_signs_are_never_later,
    a_contraindication_touches_only_its_own,
    a_referral_rules_by_its_most_urgent,
    every_answer_has_its_source,
]


@pytest.mark.parametrize("law", HOLD, ids=lambda law: law.__name__)
def test_the_law_holds(law: Law) -> None:
    """On every client of both rule sets, a third of whom at least meet its premise."""
    tally = tried(law, SMALL, shipped_world())
    assert tally.tried >= 2 * EXAMPLES
    assert 3 * tally.met >= tally.tried


def needs(attribute: str, value: object) -> Damage:
    """A rule on everybody that bounds the safe side of a dose."""
    effect = [{"groups": ["all"], "needs": {attribute: value}}]
    return with_rule({"age": {"at_least": 0}}, options=effect)


def sourceless(world: World) -> World:
    """A rule that fires on everybody and names no source."""
    written: dict[str, Any] = small.rule("bad", {"age": {"at_least": 0}}, options=BARS)
    bad = Rule.model_validate(written).model_copy(update={"source": ()})
    return World(replace(world.content, rules={**world.content.rules, "bad": bad}))


def later_when_hot(world: World) -> World:
    """Signs that hold the phase back where they are calm."""
    book = world.content.phases
    sign = "heat" if "heat" in world.facts else "swelling"
    calm = small.rule("calm", {sign: "none"})["when"]
    signs = [
        one.model_copy(update={"when": with_parsed(calm), "no_later_than": "acute"}) for one in book.signs[:1]
    ]
    return World(replace(world.content, phases=book.model_copy(update={"signs": tuple(signs)})))


def with_parsed(when: dict[str, Value]) -> object:
    """A condition as a rule reads it."""
    return Rule.model_validate(small.rule("one", when, options=BARS)).when


PLANTED: list[tuple[Law, Damage]] = [
    (days_ticking_forward_never_tighten, with_rule({"hours": {"at_least": 240}}, options=BARS)),
    (age_changes_nothing_within_its_bounds, with_rule({"age": {"at_least": 40}}, options=BARS)),
    (hurt_again_is_as_strict_as_fresh, with_rule({"reinjured": "no"}, options=BARS)),
    (adding_a_contraindication_never_loosens, with_rule({"numb_skin": "no"}, options=BARS)),
    (a_milder_dose_never_worsens, needs("minutes", {"at_least": 15})),
    (a_milder_dose_never_worsens, needs("barrier", "no")),
    (
        moving_away_bars_nothing_more,
        with_rule({"age": {"at_least": 0}}, options=[{**BARS[0], "sites": ["remote"]}]),
    ),
    (worse_signs_are_never_later, later_when_hot),
    (a_contraindication_touches_only_its_own, with_rule({"numb_skin": "yes"}, options=BARS)),
    (a_contraindication_touches_only_its_own, with_rule({"cold_reaction": "yes"}, options=BARS)),
    (every_answer_has_its_source, sourceless),
]


def broken(law: Law, world: World) -> bool:
    """Whether some client of the rule set breaks the law."""
    try:
        tried(law, world, shrink=False)
    except AssertionError:
        return True
    return False


@pytest.mark.parametrize(("law", "damage"), PLANTED)
def test_a_planted_fault_breaks_the_law(law: Law, damage: Damage) -> None:
    """On the rule set that has the fact it is about."""
    about_shipped = law is a_contraindication_touches_only_its_own and damage is PLANTED[9][1]
    assert broken(law, damage(shipped_world() if about_shipped else SMALL))


def test_a_session_ruled_by_its_mildest_breaks_the_law(monkeypatch: pytest.MonkeyPatch) -> None:
    """A judge who takes the least urgent of what fires."""

    def mildest(rules: list[Rule]) -> Urgency | None:
        return min((one.session.urgency for one in rules if one.session), key=URGENCIES.index, default=None)

    monkeypatch.setattr(session, "_highest", mildest)
    assert broken(a_referral_rules_by_its_most_urgent, shipped_world())


def test_a_judge_who_minds_the_side_breaks_the_law(monkeypatch: pytest.MonkeyPatch) -> None:
    """A left leg counted as numb."""

    def minding(world: World, case: Case) -> dict[str, Value]:
        numb: Value = "yes" if case.tissue.side == "left" else "no"
        return {**values_of(case, case.visits[0], world.content.screening), "numb_skin": numb}

    monkeypatch.setattr("tests.judge.test_further_laws._recorded", minding)
    assert broken(names_and_sides_change_nothing, SMALL)
