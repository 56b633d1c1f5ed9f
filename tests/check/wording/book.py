"""The shipped book of wording."""

from __future__ import annotations

from functools import cache

from builder.disk import read_bytes, shipped
from builder.doors.shape import pour
from builder.doors.text import LIMIT
from builder.doors.yaml import read_yaml
from builder.model.wording import WordingBook


@cache
def wording() -> WordingBook:
    """`content/wording.yml`, which must hold."""
    name = "wording.yml"
    data = read_yaml(read_bytes(shipped("content") / name, LIMIT), name).value
    book, misfits = pour(WordingBook, data)
    if book is None:
        raise ValueError(misfits)
    return book
