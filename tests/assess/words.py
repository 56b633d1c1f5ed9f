"""The shipped words of questions, read as the tool reads them."""

from builder.disk import read_bytes, shipped
from builder.doors.yaml import read_yaml

LIMIT = 1_000_000


def _read() -> dict[str, str]:
    value = read_yaml(read_bytes(shipped("content") / "words.yml", LIMIT), "words.yml").value
    if not isinstance(value, dict):
        raise TypeError("words.yml holds no mapping")
    return {str(key): str(text) for key, text in value.items()}


WORDS = _read()
