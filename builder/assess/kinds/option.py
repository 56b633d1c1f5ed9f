"""Which of several options to choose, each meant exactly as written.

In practice they are the author's own. In a test, where the session goes on, one that is right stands beside
three that are not, drawn from the author's and from all that the rules surely close today, so that neither
length nor name tells which. Where it does not go on, what to do is told by the question about the session.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from builder.assess.beside import beside
from builder.assess.material import Material, Row, Text
from builder.assess.question import Choice, Question
from builder.assess.reasons import said_of_option
from builder.assess.scene import choice_of
from builder.assess.wording import say
from builder.model.card import site_of
from builder.model.case import CaseOption
from builder.model.judgement import OptionJudgement
from builder.model.rested import deciding

OWN_WEIGHT = 4  # own default: how much likelier than others the author's wrong options are drawn
MOST_WEIGHT = 15  # own default: a card chosen more often than this is drawn no more often


@dataclass(frozen=True)
class _Offer:
    """One option that may be shown: its words, its judgement, and how likely it is drawn beside others."""

    choice: Choice
    judged: OptionJudgement
    weight: int = 1

    @property
    def text(self) -> str:
        """All that is shown of it."""
        return " ".join((self.choice.title, *self.choice.chips))


def questions(material: Material) -> Iterator[Question]:
    """One question: one answer where one is shown, else as many as the reader would do."""
    course, visit = material.course, material.visit
    if material.alone and material.judged.session.answer != "go_on":
        return
    own = list(_own(material))
    offered = (_drawn(material, own) if material.alone else []) or own
    rows = [
        Row(one.choice, one.judged.right, said_of_option(course, one.judged, material.judged))
        for one in offered
    ]
    single = len(visit.chosen) == 1 or offered is not own
    text = Text(
        say(course.content, "stem_option" if single else "stem_options"),
        say(course.content, "hint_option" if single else "hint_options"),
        "one" if single else "many",
    )
    question = material.question("option", text, rows)
    if len(question.shown.options) > 1:
        yield question


def _own(material: Material) -> Iterator[_Offer]:
    """What the author wrote."""
    visit, judged = material.visit, material.judged
    written = zip((*visit.chosen, *visit.wrong), (*judged.chosen, *judged.wrong), strict=True)
    for option, said in written:
        weight = OWN_WEIGHT * _often(material, option.card)
        yield _Offer(choice_of(material.course.content, option), said, weight)


def _drawn(material: Material, own: list[_Offer]) -> list[_Offer]:
    """One of the right options and three wrong ones; nothing where there are fewer."""
    name = f"{material.case.id}/{material.visit.id}/option"
    right = [one for one in own if one.judged.right]
    wrong = [one for one in own if not one.judged.right]
    used = {one.judged.card for one in own}
    others = (one for one in material.judged.cards.values() if one.card not in used)
    wrong += [_of_library(material, one) for one in others if _surely_wrong(material, one)]
    return beside(name, right, wrong, lambda one: one.text, lambda one: one.weight)


def _of_library(material: Material, judged: OptionJudgement) -> _Offer:
    content = material.course.content
    option = CaseOption(card=judged.card, site=site_of(judged.site), written=judged.written)
    return _Offer(choice_of(content, option), judged, _often(material, judged.card))


def _surely_wrong(material: Material, judged: OptionJudgement) -> bool:
    """A technique that is closed today, or an action that serves another day; nothing that is contested.

    What may always be done beside the rest, such as writing down, is wrong on no day.
    """
    card = material.course.content.cards[judged.card]
    if judged.right or judged.answer != judged.at_worst or any(one.contested for one in deciding(judged)):
        return False
    if card.kind == "technique" and judged.at_worst in ("not_yet", "barred"):
        return True
    return judged.at_worst == "ok" and not judged.serves_aim and card.kind == "action" and not card.alongside


def _often(material: Material, card: str) -> int:
    """How often a card is drawn: as often as it is right elsewhere, so that its name tells nothing."""
    return 1 + min(material.course.times_chosen[card], MOST_WEIGHT)
