"""The answer sheet as the page makes it, against the golden examples and the tool's own reading."""

import json
from pathlib import Path
from typing import Any

import pytest

from tests.browser.conftest import Visit

pytestmark = pytest.mark.browser
GOLDEN: list[dict[str, Any]] = json.loads(
    (Path(__file__).parents[1] / "golden" / "flat.json").read_text(encoding="utf-8")
)["examples"]


def test_the_flat_string_is_the_golden_one(visit: Visit) -> None:
    """The script builds the very string, and the very checksum, that Python's tests hold too."""
    page = visit().go("tests/final.html")
    found = page.evaluate(
        "all => all.map(one => [caseloom.flat(one), caseloom.crc32(caseloom.flat(one))])", GOLDEN
    )
    assert found == [[one["flat"], one["crc32"]] for one in GOLDEN]


@pytest.mark.parametrize(
    ("zone", "stamp"),
    [
        ("America/New_York", "2026-11-21T04:05:06-05:00"),
        ("Asia/Kathmandu", "2026-11-21T14:50:06+05:45"),
        ("UTC", "2026-11-21T09:05:06+00:00"),
        ("America/St_Johns", "2026-11-21T05:35:06-03:30"),
    ],
)
def test_a_time_carries_its_offset(visit: Visit, zone: str, stamp: str) -> None:
    """The device's own clock, with its offset, also where that is no whole hour."""
    page = visit(timezone_id=zone).go("tests/final.html")
    assert page.evaluate("caseloom.stamp(new Date(Date.UTC(2026, 10, 21, 9, 5, 6)))") == stamp


def test_every_sheet_has_a_number_of_its_own(visit: Visit) -> None:
    """128 bits as hex, never the same twice."""
    page = visit().go("tests/final.html")
    numbers: list[str] = page.evaluate("Array.from({length: 50}, caseloom.fresh)")
    assert len(set(numbers)) == 50
    assert all(len(one) == 32 and set(one) <= set("0123456789abcdef") for one in numbers)
