"""The plain words for every sort of misfit: the check's name, what is wrong, and what mends it."""

from __future__ import annotations

import re
from collections.abc import Callable
from decimal import Decimal
from typing import NamedTuple

from builder.doors.shape import TRUTH, Misfit
from builder.read.nearest import quoted, suggest


class Words(NamedTuple):
    """One fault in words."""

    check: str
    message: str
    remedy: str


def words_for(misfit: Misfit, name: str, *, choice: bool = False) -> Words:
    """The words for a misfit of the value called `name`; `choice` where several types could stand."""
    subject = f"`{name}`" if name else "This file"
    if misfit.sort == TRUTH or (choice and isinstance(misfit.value, bool)):
        return _truth(misfit, subject)
    if misfit.value is None:
        return Words("value_empty", f"{subject} is empty.", "Fill it in, or remove it.")
    if choice:
        message = f"{subject} must be a word or a number, not {quoted(misfit.value)}."
        return Words("word_or_number_expected", message, "Write one word or one number.")
    exact = _SORTS.get(misfit.sort)
    family = (tell for start, tell in _FAMILIES if misfit.sort.startswith(start))
    return (exact or next(family, _unfit))(misfit, subject)


def _truth(misfit: Misfit, subject: str) -> Words:
    remedy = "Write `yes` or `no`, a number in digits, or text in quotes, as it is meant."
    return Words("yes_or_no_expected", f"{subject} cannot be {quoted(misfit.value)}.", remedy)


def _literal(misfit: Misfit, subject: str) -> Words:
    if subject == "`format`":
        message = f"Format {quoted(misfit.value)} cannot be read by this version."
        return Words("format_unknown", message, "Write `format: 1`, or use a newer version of caseloom.")
    known = re.findall(r"'([^']*)'", str(misfit.detail.get("expected", "")))
    remedy = suggest(str(misfit.value), known)
    return Words("word_unknown", f"{quoted(misfit.value)} is no value of {subject}.", remedy)


def _text(misfit: Misfit, subject: str) -> Words:
    if isinstance(misfit.value, int | Decimal):
        return Words("text_expected", f"{subject} must be text.", f'Put it in quotes: "{misfit.value}".')
    return Words(
        "text_expected", f"{subject} must be text, not {quoted(misfit.value)}.", "Write one text here."
    )


def _id(misfit: Misfit, _: str) -> Words:
    slug = re.sub(r"[^a-z0-9]+", "_", str(misfit.value).lower()).strip("_0123456789")
    remedy = "Use small letters, digits and _, with a letter first"
    message = f"{quoted(misfit.value)} is no id."
    return Words("id_malformed", message, f"{remedy}: `{slug[:60]}`." if slug else f"{remedy}.")


def _length(misfit: Misfit, subject: str) -> Words:
    if misfit.sort == "string_too_short":
        return Words("value_empty", f"{subject} is empty.", "Fill it in, or remove it.")
    most = misfit.detail.get("max_length")
    return Words("text_too_long", f"{subject} is longer than {most} characters.", "Shorten it.")


def _list(misfit: Misfit, subject: str) -> Words:
    message = f"{subject} must be a list, not {quoted(misfit.value)}."
    return Words("list_expected", message, "Write `[a, b]`, or one entry a line after `- `.")


def _count(misfit: Misfit, subject: str) -> Words:
    least, most = misfit.detail.get("min_length"), misfit.detail.get("max_length")
    if misfit.sort == "too_short":
        entries = "entry" if least == 1 else "entries"
        return Words("list_too_short", f"{subject} needs at least {least} {entries}.", "Add what is missing.")
    return Words("list_too_long", f"{subject} may have at most {most} entries.", "Remove some.")


def _block(misfit: Misfit, subject: str) -> Words:
    message = f"{subject} must be a block of `key: value` lines, not {quoted(misfit.value)}."
    return Words("block_expected", message, "Write one `key: value` a line; inside a block, indent them.")


def _whole(misfit: Misfit, subject: str) -> Words:
    message = f"{subject} must be a whole number, not {quoted(misfit.value)}."
    return Words("number_expected", message, "Write digits alone, such as `3`.")


def _number(misfit: Misfit, subject: str) -> Words:
    message = f"{subject} must be a number, not {quoted(misfit.value)}."
    return Words("number_expected", message, "Write a number such as `20` or `7.5`.")


def _bounds(misfit: Misfit, subject: str) -> Words:
    said = {"ge": "at least", "gt": "more than", "le": "at most", "lt": "less than"}
    bound = next((f"{said[key]} {value}" for key, value in misfit.detail.items() if key in said), "otherwise")
    message = f"{subject} is {quoted(misfit.value)}; it must be {bound}."
    return Words("number_out_of_range", message, "Write a number within that bound.")


def _date(misfit: Misfit, subject: str) -> Words:
    message = f"{subject} must be a date, not {quoted(misfit.value)}."
    return Words("date_expected", message, "Write year, month and day: `2026-11-21`.")


def _time(misfit: Misfit, subject: str) -> Words:
    message = f"{subject} must be a time of day, not {quoted(misfit.value)}."
    return Words("time_expected", message, "Write hours and minutes with two digits each: `09:30`.")


def _yes_no(misfit: Misfit, subject: str) -> Words:
    return Words("yes_or_no_expected", f"{subject} cannot be {quoted(misfit.value)}.", "Write `yes` or `no`.")


def _refused(misfit: Misfit, subject: str) -> Words:
    said = str(misfit.detail.get("error", misfit.said))
    message = f"{subject} cannot be {quoted(misfit.value)}."
    if isinstance(misfit.value, dict):
        message = f"{subject} does not hold together."
    return Words("value_refused", message, f"{said[:1].upper()}{said[1:]}.")


def _unfit(misfit: Misfit, subject: str) -> Words:
    return Words(
        "value_refused", f"{subject} cannot be {quoted(misfit.value)}.", "Compare it with a file that works."
    )


_SORTS: dict[str, Callable[[Misfit, str], Words]] = {
    "literal_error": _literal,
    "string_type": _text,
    "string_pattern_mismatch": _id,
    "string_too_short": _length,
    "string_too_long": _length,
    "tuple_type": _list,
    "list_type": _list,
    "too_short": _count,
    "too_long": _count,
    "dict_type": _block,
    "model_type": _block,
    "finite_number": _number,
    "greater_than_equal": _bounds,
    "greater_than": _bounds,
    "less_than_equal": _bounds,
    "less_than": _bounds,
    "value_error": _refused,
}
_FAMILIES: tuple[tuple[str, Callable[[Misfit, str], Words]], ...] = (
    ("int_", _whole),
    ("decimal_", _number),
    ("date_", _date),
    ("time_", _time),
    ("bool_", _yes_no),
)
