"""The laws themselves: each is told a rule set, a client and a number to choose by.

Each says True where it holds, False where it is broken, and None where its premise is not met.
"""

from dataclasses import replace
from functools import cache
from hashlib import sha512
from typing import Any

from builder.judge.space import Value
from builder.judge.truth import Truth, compiled
from builder.model.card import ANSWERS, SITES
from builder.model.judgement import OptionJudgement, SessionJudgement
from builder.model.rule import URGENCIES, Rule
from builder.model.tables import SEVERITIES
from tests.judge import small
from tests.judge.laws import Client, Draw, Law, World, harder, safe, strictness, worst

# From these the severity is read off. Where it is not known the worse is taken, which tightens work by hand.
READ_FOR_SEVERITY = frozenset({"injury", "region", "hours", "reinjured"})
COURSE_RULES = 8


def adding_a_red_flag_never_loosens(world: World, client: Client, pick: int) -> bool:
    """No option and no session is milder with a red flag than without it."""
    flag = world.flags[pick % len(world.flags)]
    without = client.but(**{flag: safe(world.facts[flag])})
    flagged = client.but(**{flag: worst(world.facts[flag])})
    sessions = [strictness(world.frame(one).session) for one in (without, flagged)]
    cards = world.content.cards.values()
    return sessions[0] <= sessions[1] and harder(world.ranks(without, cards), world.ranks(flagged, cards))


def not_knowing_is_never_better(world: World, client: Client, pick: int) -> bool | None:
    """At worst, the unrecorded is as strict as any value; as the safest one where it need not be asked."""
    name = list(world.facts)[pick % len(world.facts)]
    cells = world.facts[name].cells
    value = cells[pick // len(world.facts) % len(cells)].value
    if value == "yes" and world.contradicts(client, name):
        return None
    tables = world.content.severity.tables.values()
    measures = {one for table in tables for one in (table.measure, table.recalled)}
    cards = world.hands_on if name in READ_FOR_SEVERITY | measures else world.content.cards.values()
    known, unknown = client.but(**{name: value}), client.but(**{name: None})
    if world.unasked(unknown, name):
        known = client.but(**{name: safe(world.facts[name])})
        return world.ranks(known, cards) == world.ranks(unknown, cards)
    return harder(world.ranks(known, cards), world.ranks(unknown, cards), sure=False)


def no_work_by_hand_without_consent_and_screen(world: World, client: Client, pick: int) -> bool | None:
    """No hands-on option is right unless consent is given and every flag that would refer was asked for."""
    screened = [name for name in world.flags if world.facts[name].fact.screen]
    flag = screened[pick // 3 % len(screened)]
    gap = [client.but(consent=None), client.but(consent="no"), client.but(consent="yes", **{flag: None})][
        pick % 3
    ]
    if pick % 3 == 2 and not _would_refer(world, gap, flag):
        return None
    return not any(one.right for one in world.judged(gap, world.hands_on))


def _would_refer(world: World, client: Client, flag: str) -> bool:
    flagged = client.but(**{flag: worst(world.facts[flag])})
    if world.unasked(client.but(**{flag: None}), flag):
        return False
    return not world.contradicts(client, flag) and world.frame(flagged).session.answer == "refer"


def adding_a_course_rule_never_loosens(world: World, client: Client, pick: int) -> bool | None:
    """Whatever rule a course adds, no option and no session is milder for it."""
    number = pick // 4 % COURSE_RULES
    rule, stricter = course_rule(world, number), with_course_rule(world, number)
    return _tightens(world, stricter, rule, client.but(**rule.examples[0].given) if pick % 4 else client)


def _tightens(world: World, stricter: World, rule: Rule, client: Client) -> bool | None:
    before, after = world.frame(client), stricter.frame(client)
    if compiled(rule.when, stricter.judge.space)(list(after.state)) is Truth.FALSE:
        return None
    cards = list(world.content.cards.values())
    sessions = strictness(before.session) <= strictness(after.session)
    return sessions and harder(world.ranks(client, cards), stricter.ranks(client, cards))


@cache
def course_rule(world: World, number: int) -> Rule:
    """A rule that a course might add: one or two dangerous findings, and one effect."""
    draw = Draw(sha512(f"course rule {number}".encode()).digest())
    directed = [name for name, one in world.facts.items() if one.fact.worse_when not in ("both", "neither")]
    given: dict[str, Value] = {
        name: worst(world.facts[name]) for name in (draw.one(directed), draw.one(directed))
    }
    when: dict[str, Any] = {name: _toward(world, name, value) for name, value in given.items()}
    answer = {
        "groups": [draw.one(["hands_on", "techniques", "all"])],
        "answer": draw.one(["not_yet", "barred"]),
    }
    effects: list[dict[str, Any]] = [
        {"options": [{**answer, "sites": draw.some(SITES, 2)}]},
        {"session": {"urgency": draw.one(URGENCIES)}},
    ]
    examples = [{"fires": "yes", "given": given}, {"fires": "no", "given": {}}]
    return Rule.model_validate(small.rule(f"added_{number}", when, examples=examples, **effects[number % 2]))


def _toward(world: World, name: str, value: Value) -> object:
    if isinstance(value, str):
        return value
    return {"at_most" if world.facts[name].fact.worse_when == "lower" else "at_least": value}


@cache
def with_course_rule(world: World, number: int) -> World:
    """The rule set with one more rule."""
    rule = course_rule(world, number)
    return World(replace(world.content, rules={**world.content.rules, rule.id: rule}))


def rule_order_changes_nothing(world: World, client: Client, pick: int) -> bool | None:
    """Whatever the order of the rules, session and options are the same, with the same reasons."""
    other = reordered(world, pick % 3)
    sessions = [said_of_session(one.frame(client).session) for one in (world, other)]
    judged = [one.judged(client, world.hands_on) for one in (world, other)]
    options = [[said_of_option(card) for card in cards] for cards in judged]
    if all(len(rules) < 2 for *_, rules in options[0]):
        return None
    return sessions[0] == sessions[1] and options[0] == options[1]


@cache
def reordered(world: World, number: int) -> World:
    """The same rules, turned round or shuffled."""
    names = list(world.content.rules)[::-1]
    if number:
        names.sort(key=lambda name: sha512(f"{number} {name}".encode()).digest())
    return World(replace(world.content, rules={name: world.content.rules[name] for name in names}))


def said_of_session(session: SessionJudgement) -> tuple[object, ...]:
    """All that is said of a session, whatever the order."""
    asked = frozenset((one.fact, frozenset(one.rules)) for one in session.ask)
    return session.answer, session.urgency, asked, frozenset(session.rules), session.first_action


def said_of_option(option: OptionJudgement) -> tuple[Any, ...]:
    """All that is said of an option, whatever the order; its rules stand last."""
    asked = frozenset((one.fact, frozenset(one.rules)) for one in option.ask)
    change = frozenset((option.change or "").split("; "))
    return option.answer, option.at_worst, option.right, asked, change, frozenset(option.rules)


def the_answer_is_never_worse_than_at_worst(world: World, client: Client, _: int) -> bool | None:
    """What is sure is no stricter than what may be, which is the strictest of all that bears."""
    options = world.judged(client, world.content.cards.values())
    if all(one.answer == one.at_worst for one in options):
        return None
    return all(_adds_up(one) for one in options)


def _adds_up(option: OptionJudgement) -> bool:
    sure, at_worst = ANSWERS.index(option.answer), ANSWERS.index(option.at_worst)
    bears = [(one.truth, ANSWERS.index(one.effect)) for one in option.rules]
    fires = [rank for truth, rank in bears if truth == "fires"]
    right = at_worst == 0 and option.serves_aim
    return (
        max(fires, default=0) <= sure <= at_worst == max((rank for _, rank in bears), default=0)
        and option.right == right
    )


def rising_swelling_is_never_milder_than_on_the_first_day(
    world: World, client: Client, _: int
) -> bool | None:
    """On the injury, work by hand on swelling that rises is as strict at any hour as in the first."""
    sign = next(name for name in ("swelling_trend", "swelling") if name in world.facts)
    later = replace(client.but(**{sign: "rising"}), site="on")
    first = later.but(hours=world.facts["hours"].cells[1].value)
    if world.frame(first).phase.possible != ("acute",):
        return None
    return harder(world.ranks(first, world.hands_on), world.ranks(later, world.hands_on), sure=False)


def raising_severity_never_loosens_work_by_hand(world: World, client: Client, pick: int) -> bool | None:
    """A worse injury allows no hands-on card that a milder one does not.

    But for signs behind the calendar: what is late for a mild injury may be in time for a severe one.
    """
    mild, hard = ((0, 1), (0, 2), (1, 2))[pick % 3]
    one, other = (replace(client, declared=SEVERITIES[grade]) for grade in (mild, hard))
    frames = world.frame(one), world.frame(other)
    late = [frame.state[world.judge.space.index["signs_behind"]] for frame in frames]
    if frames[0].severity.possible == frames[1].severity.possible or late[0] > late[1]:
        return None
    return harder(world.ranks(one, world.hands_on), world.ranks(other, world.hands_on))


def a_red_flag_refers_wherever_it_is_found(world: World, client: Client, pick: int) -> bool | None:
    """Each red flag ends the session by itself, on every region, also where nobody has to ask for it."""
    flag = world.flags[pick % len(world.flags)]
    if world.contradicts(client, flag):
        return None
    found = client.but(**{flag: worst(world.facts[flag])})
    return world.frame(found).session.answer == "refer"


LAWS: tuple[Law, ...] = (
    adding_a_red_flag_never_loosens,
    a_red_flag_refers_wherever_it_is_found,
    not_knowing_is_never_better,
    no_work_by_hand_without_consent_and_screen,
    adding_a_course_rule_never_loosens,
    rule_order_changes_nothing,
    the_answer_is_never_worse_than_at_worst,
    rising_swelling_is_never_milder_than_on_the_first_day,
    raising_severity_never_loosens_work_by_hand,
)
