"""Keys: what is right in each version, with the reasons; joined to papers that were made without them."""

from __future__ import annotations

from collections.abc import Sequence

from builder.assess.keyed import keyed_parts, said_by_name
from builder.assess.laying import Laid
from builder.assess.opaque import canonical, edition_of
from builder.assess.question import Judged, Question, Said
from builder.assess.versions import Slot, Version
from builder.model.key import Key, KeyAnswer, KeyRing
from builder.model.paper import PublishedTest
from builder.model.plan import CourseTest


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
    row, shown = test.plan[slot.row], laid.shown
    return KeyAnswer(
        **dict(keyed_parts(laid, judged)),
        question=laid.question.id,
        policy=test.policy(shown.kind),
        must_pass=row.must_pass,
        objective=row.objective,
        topic=row.topic,
        case=shown.case,
        visit=shown.visit,
        written=shown.part if shown.topic == "written" else "",
        reasons={name: reason_of(said) for name, said in said_by_name(laid, judged).items()},
        reviewed=all(said.ground.reviewed for said in judged.every),
    )


def reason_of(said: Said) -> str:
    """One option's answer, reason, ground and rules, in one line."""
    rules = f"[{', '.join(said.ground.rules)}]" if said.ground.rules else ""
    told = f"{said.word}: {said.reason}" if said.word else said.reason
    parts = (told, said.ground.rests_on, rules, said.ground.contested)
    return " ".join(part for part in parts if part)
