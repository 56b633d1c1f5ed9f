"""Keys: what is right in each version, with the reasons; joined to papers that were made without them."""

from __future__ import annotations

from collections.abc import Sequence

from builder.assess.laying import Laid
from builder.assess.opaque import canonical, edition_of
from builder.assess.question import Judged, Question, Said
from builder.assess.versions import Slot, Version
from builder.model.course import CourseTest
from builder.model.key import Key, KeyAnswer, KeyRing
from builder.model.paper import PublishedTest


def key_ring(
    test: CourseTest,
    published: PublishedTest,
    versions: Sequence[Version],
    laid: Sequence[dict[Slot, Laid]],
    pool: Sequence[Question],
) -> KeyRing:
    """The keys of every version of a test, chained to its edition."""
    judged = {one.shown.identity: one.judged for one in pool}
    keys = tuple(
        Key(test=test.id, version=version.name, answers=_answers(test, each, judged))
        for version, each in zip(versions, laid, strict=True)
    )
    said = canonical([one.model_dump(mode="json") for one in keys])
    return KeyRing(
        test=test.id,
        edition=published.edition,
        key_edition=edition_of(published.edition + said),
        pass_mark=test.pass_mark,
        tries=test.tries,
        keys=keys,
    )


def _answers(test: CourseTest, laid: dict[Slot, Laid], judged: dict[str, Judged]) -> tuple[KeyAnswer, ...]:
    answers = [_answer(test, slot, one, judged[one.shown.identity]) for slot, one in laid.items()]
    return tuple(sorted(answers, key=lambda one: one.question))


def _answer(test: CourseTest, slot: Slot, laid: Laid, judged: Judged) -> KeyAnswer:
    row = test.plan[slot.row]
    right = {laid.ids[place] for place in judged.right}
    options = tuple(option.id for option in laid.question.options)
    return KeyAnswer(
        question=laid.question.id,
        kind=laid.question.kind,
        right=tuple(option for option in options if option in right),
        options=options,
        policy="exact" if laid.question.kind == "one" else test.many_policy,
        must_pass=row.must_pass,
        objective=row.objective,
        topic=row.topic,
        case=laid.shown.case,
        visit=laid.shown.visit,
        reasons={name: reason_of(said) for name, said in zip(laid.ids, judged.said, strict=True)},
        reviewed=all(said.ground.reviewed for said in judged.said),
    )


def reason_of(said: Said) -> str:
    """One option's answer, reason, ground and rules, in one line."""
    rules = f"[{', '.join(said.ground.rules)}]" if said.ground.rules else ""
    parts = (f"{said.word}: {said.reason}", said.ground.rests_on, rules, said.ground.contested)
    return " ".join(part for part in parts if part)
