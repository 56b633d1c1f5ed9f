"""Pours plain data into nouns, and says of what does not fit: where, of what sort, and what stood there."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from types import UnionType
from typing import Annotated, TypeVar, Union, get_args, get_origin

from pydantic import BaseModel, TypeAdapter, ValidationError

from builder.model.noun import Noun
from builder.model.words import ONE
from builder.place import Path, Step

N = TypeVar("N", bound=Noun)

TRUTH = "truth_out_of_place"
COUNTED = {"one", "other"}


@dataclass(frozen=True)
class Misfit:
    """One value that does not fit; `sort` is the validator's name for it, `said` its own or our words."""

    path: Path
    sort: str
    value: object
    said: str
    detail: Mapping[str, object] = field(default_factory=dict)


def pour(model: type[N], data: object) -> tuple[N | None, tuple[Misfit, ...]]:
    """The noun that `data` describes, or everything that keeps it from being one."""
    misfits = tuple(_truths(model, data, ()))
    try:
        noun = model.model_validate(data)
    except ValidationError as error:
        return None, (*misfits, *_misfits(error))
    return (None if misfits else noun), misfits


def pour_words(data: object) -> tuple[dict[str, str], tuple[Misfit, ...]]:
    """Texts by id, or everything that keeps them from being so.

    A pair `{one: ..., other: ...}` gives the text for one by its id and `.one`, the other by its id.
    """
    if isinstance(data, dict):
        counted = {
            key: text for key, text in data.items() if isinstance(text, dict) and text.keys() == COUNTED
        }
        data = data | {key: text["other"] for key, text in counted.items()}
        data |= {f"{key}{ONE}": text["one"] for key, text in counted.items()}
    try:
        return TypeAdapter(dict[str, str]).validate_python(data), ()
    except ValidationError as error:
        return {}, tuple(_misfits(error))


def keys_at(model: type[Noun], path: Path) -> tuple[str, ...]:
    """The keys that the noun at `path` below `model` may have."""
    nouns = [one for one in _at(model, path) if isinstance(one, type) and issubclass(one, BaseModel)]
    return tuple(key for noun in nouns for key in noun.model_fields)


def _misfits(error: ValidationError) -> Iterator[Misfit]:
    for one in error.errors(include_url=False):
        detail = one.get("ctx", {})
        misfit = Misfit(tuple(one["loc"]), one["type"], one["input"], one["msg"], detail)
        if not _only_thinned_out(misfit):
            yield misfit


def _only_thinned_out(misfit: Misfit) -> bool:
    """Whether a list is called too short only because what stands in it does not fit."""
    least = misfit.detail.get("min_length")
    return (
        misfit.sort == "too_short"
        and isinstance(misfit.value, list)
        and isinstance(least, int)
        and len(misfit.value) >= least
    )


def _truths(model: type[Noun], data: object, path: Path) -> Iterator[Misfit]:
    """Every true or false where the noun has no truth value: the validator would take it for 1 or 0."""
    if isinstance(data, bool):
        if not any(one is bool for one in _at(model, path)):
            yield Misfit(path, TRUTH, data, "")
        return
    steps: Iterator[tuple[Step, object]] = iter(())
    if isinstance(data, dict):
        steps = iter(data.items())
    elif isinstance(data, list):
        steps = iter(enumerate(data))
    for step, value in steps:
        if isinstance(value, bool | dict | list):
            yield from _truths(model, value, (*path, step))


def _at(annotation: object, path: Path) -> list[object]:
    """Every plain type that may stand at `path` below an annotation."""
    found = _plain(annotation)
    for step in path:
        found = [inner for outer in found for one in _inside(outer, step) for inner in _plain(one)]
    return found


def _plain(annotation: object) -> list[object]:
    origin = get_origin(annotation)
    if origin is Annotated:
        return _plain(get_args(annotation)[0])
    if origin in (Union, UnionType):
        return [inner for one in get_args(annotation) for inner in _plain(one)]
    return [annotation]


def _inside(annotation: object, step: Step) -> tuple[object, ...]:
    origin = get_origin(annotation)
    if origin is dict:
        return get_args(annotation)[1:]
    if origin in (tuple, list):
        return get_args(annotation)[:1] if isinstance(step, int) else ()
    if isinstance(annotation, type) and issubclass(annotation, BaseModel) and step in annotation.model_fields:
        return (annotation.model_fields[str(step)].annotation,)
    return ()
