"""Values put before a JSON Schema, as the reader has them."""

from decimal import Decimal
from functools import cache
from pathlib import Path
from typing import Any

from jsonschema import Draft7Validator

from builder.doors.yaml import read_yaml
from builder.read.editor.known import known_in
from builder.read.editor.schemas import schemas


@cache
def validators(content: Path, course: Path | None = None) -> dict[str, Draft7Validator]:
    """A validator for every sort of file, with what the content and the course know."""
    return {name: Draft7Validator(one) for name, one in schemas(known_in(content, course)).items()}


def refusals(validator: Draft7Validator, value: object) -> list[str]:
    """What a schema does not accept of a value, with the place."""
    found = validator.iter_errors(plain(value))
    return ["/".join(map(str, one.absolute_path)) + ": " + str(one.message)[:200] for one in found]


def written(path: Path) -> object:
    """The plain data of a file."""
    return read_yaml(path.read_bytes(), path.name).value


def plain(value: object) -> Any:  # noqa: ANN401 - any JSON value
    """Data as JSON has it: numbers with a point are no decimals there."""
    if isinstance(value, Decimal):
        return float(value)
    if isinstance(value, dict):
        return {key: plain(one) for key, one in value.items()}
    return [plain(one) for one in value] if isinstance(value, list) else value
