"""Whether a clinician has reviewed all that a judgement rests on: rules, cards, phase and severity."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from collections.abc import Set as AbstractSet

from builder.model.card import PHASES, Card, site_of
from builder.model.condition import atoms
from builder.model.judgement import Fired, OptionJudgement, SeverityJudgement, VisitJudgement
from builder.model.library import Content
from builder.model.rule import Rule

DATED = frozenset({"phase", "signs_behind"})


def severity_reviewed(content: Content, severity: SeverityJudgement) -> bool:
    """The table that graded is reviewed; where several may have, all are; a declared grade needs none."""
    tables = content.severity.tables
    if severity.table is not None:
        return severity.table not in tables or tables[severity.table].reviewed is not None
    graded = any(one.source for one in severity.reasons)
    return not graded or all(table.reviewed for table in tables.values())


def phase_reviewed(content: Content, judged: VisitJudgement) -> bool:
    """Clocks and signs are reviewed, and the grade, unless phase surely does not apply."""
    graded = judged.phase.possible == ("none",) or severity_reviewed(content, judged.severity)
    return content.phases.reviewed is not None and graded


def session_reviewed(content: Content, judged: VisitJudgement) -> bool:
    """The rules that refer or ask are reviewed; to go on rests on every rule that might have stopped it."""
    session = judged.session
    if session.answer == "refer":
        decided = [one for one in session.rules if one.truth == "fires" and one.effect == session.urgency]
    else:
        decided = [one for one in session.rules if one.truth == "open"]
    names = {one.id for one in decided} | {name for one in session.ask for name in one.rules}
    if session.answer == "go_on":
        names |= {rule.id for rule in content.of_session}
    rules = [content.rules[name] for name in names if name in content.rules]
    signed = all(one.reviewed for one in decided) and all(rule.reviewed for rule in rules)
    return signed and _derived_reviewed(content, judged, _named(rules))


def option_reviewed(content: Content, judged: VisitJudgement, option: OptionJudgement) -> bool:
    """What decides the option is reviewed; OK rests on all that might have spoken against it as well."""
    card, decided = content.cards[option.card], deciding(option)
    rules = [content.rules[one.id] for one in decided if one.id in content.rules]
    names = _named(rules)
    if len(rules) < len(decided) and _differs(card, option):
        names.add("phase")
    if option.at_worst != "ok":
        from_session = "session_urgency" not in names or session_reviewed(content, judged)
        return (
            all(one.reviewed for one in decided)
            and from_session
            and _derived_reviewed(content, judged, names)
        )
    against = content.about[card.id]
    if not card.reviewed or not all(rule.reviewed for rule in against):
        return False
    names |= _named(against) | ({"phase"} if judged.session.answer == "go_on" else set())
    return session_reviewed(content, judged) and _derived_reviewed(content, judged, names)


def deciding(option: OptionJudgement) -> Sequence[Fired]:
    """The rules and cells that give an option its answer at worst."""
    return [one for one in option.rules if one.effect == option.at_worst]


def visit_reviewed(content: Content, judged: VisitJudgement) -> bool:
    """All that is said of a visit is reviewed: phase, severity, session, and every card and option."""
    options = (*judged.chosen, *judged.wrong, *judged.cards.values())
    return (
        phase_reviewed(content, judged)
        and severity_reviewed(content, judged.severity)
        and session_reviewed(content, judged)
        and all(option_reviewed(content, judged, one) for one in options)
        and all(fired.reviewed for fired in judged.session.rules)
        and all(fired.reviewed for one in options for fired in one.rules)
    )


def _named(rules: Iterable[Rule]) -> set[str]:
    return {atom.name for rule in rules for atom in atoms(rule.when)}


def _differs(card: Card, option: OptionJudgement) -> bool:
    """Whether the phase changes what the card says at the site of an option."""
    cells = [card.cell(phase, site_of(option.site)) for phase in PHASES]
    return any(cell != cells[0] for cell in cells)


def _derived_reviewed(content: Content, judged: VisitJudgement, names: AbstractSet[str]) -> bool:
    """What conditions take from severity and phase is reviewed too."""
    graded = "severity" not in names or severity_reviewed(content, judged.severity)
    return graded and (not names & DATED or phase_reviewed(content, judged))
