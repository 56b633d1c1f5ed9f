"""What must be asked: what the session still waits for, or what a chosen technique may not begin without."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from builder.assess.beside import beside
from builder.assess.material import Material, Row, Text
from builder.assess.question import Choice, Ground, Question, Said
from builder.assess.reasons import ground_of, whys
from builder.assess.wording import say
from builder.model.judgement import Doubt
from builder.model.rested import option_reviewed, session_reviewed


@dataclass(frozen=True)
class _About:
    """What is asked about: the session, or the technique `card`; `reviewed`: what it rests on is."""

    material: Material
    card: str
    reviewed: bool

    def say(self, key: str) -> str:
        """The words of a question about a session or a technique."""
        about = f"{key}_{'before' if self.card else 'still'}"
        return say(self.material.course.content, about, card=self.card)

    def said(self, doubt: Doubt) -> Said:
        """What is said of one question."""
        if not doubt.matters:
            return Said("wrong", self.say("word_idle"), self.say("ask_idle"), Ground(reviewed=self.reviewed))
        ground = ground_of(self.material.course, doubt.rules, doubt.rules, reviewed=self.reviewed)
        return Said("right", self.say("word_needed"), whys(doubt.rules), ground)


def questions(material: Material) -> Iterator[Question]:
    """One question at most: of the session where it waits, else of the first technique that has enough."""
    for about, doubts in _subjects(material):
        name = f"{material.case.id}/{material.visit.id}/ask_first"
        matter = [one for one in doubts if one.matters]
        offered = beside(name, matter, [one for one in doubts if not one.matters], lambda one: one.question)
        rows = [Row(Choice(one.question), one.matters, about.said(one)) for one in offered]
        if rows:
            hint = say(material.course.content, "hint_one")
            yield material.question("ask_first", Text(about.say("stem_ask"), hint), rows)
            return


def _subjects(material: Material) -> Iterator[tuple[_About, list[Doubt]]]:
    content, judged = material.course.content, material.judged
    places = dict.fromkeys(one.chosen for one in judged.doubts)
    for place in places:
        doubts = [one for one in judged.doubts if one.chosen == place]
        if place is None:
            yield _About(material, "", session_reviewed(content, judged)), doubts
        else:
            option = judged.chosen[place]
            name, reviewed = content.cards[option.card].name, option_reviewed(content, judged, option)
            yield _About(material, name, reviewed), doubts
