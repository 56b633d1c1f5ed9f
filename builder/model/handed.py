"""Reads an answer sheet from the bytes that were handed in, trusting nothing."""

from __future__ import annotations

import json
import zlib

from pydantic import ValidationError

from builder.model.answers import AnswerSheet, flat

SHOWN = 3


def sheet_of(data: bytes) -> AnswerSheet:
    """The answer sheet in a file; a ValueError says in plain words what is wrong with it."""
    try:
        sheet = AnswerSheet.model_validate_json(data)
    except ValidationError as error:
        raise ValueError(_in_words(error)) from None
    json.loads(data, object_pairs_hook=_each_key_once)
    if checksum(sheet) != sheet.crc32:
        raise ValueError("The checksum does not fit the answers: the file was damaged or altered.")
    return sheet


def checksum(sheet: AnswerSheet) -> str:
    """The checksum of what counts in a sheet, as eight hex digits."""
    text = flat(sheet.edition, sheet.test, sheet.version, sheet.code, sheet.answers)
    return f"{zlib.crc32(text.encode('utf-8')):08x}"


def _in_words(error: ValidationError) -> str:
    found = error.errors(include_url=False, include_input=False, include_context=False)
    if found[0]["type"] == "json_invalid":
        return f"This is no readable JSON: {found[0]['msg'].removeprefix('Invalid JSON: ')}."
    said = [f"`{'.'.join(map(str, one['loc']))[:80]}`: {one['msg'].lower()}" for one in found[:SHOWN]]
    more = f", and {len(found) - SHOWN} more" if len(found) > SHOWN else ""
    return f"This is no answer sheet: {'; '.join(said)}{more}."


def _each_key_once(pairs: list[tuple[str, object]]) -> dict[str, object]:
    found: dict[str, object] = {}
    for key, value in pairs:
        if key in found:
            raise ValueError(f"The key `{key[:80]}` stands twice.")
        found[key] = value
    return found
