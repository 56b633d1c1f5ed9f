"""The shape of a judgement."""

from builder.judge.explain import as_json
from builder.model.outputs.judged import ExplainedCase
from tests.demo.built import opened


def test_every_judgement_of_the_demonstration_has_the_shape() -> None:
    """A practised case and one of the pool, with all their visits, options and cards."""
    course = opened().course
    assert course is not None
    for name in ("unicycle_thigh", "clown_shin", "drum_calf"):
        data = as_json(course.cases[name], opened().judged[name])
        assert ExplainedCase.model_validate(data).model_dump(mode="json") == data
