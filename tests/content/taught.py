"""Reading the background lists: which rows a reported value falls in."""

from decimal import Decimal

from builder.model.condition import Within
from tests.content.library import content

TESTS = {
    "over": Decimal.__gt__,
    "at_least": Decimal.__ge__,
    "below": Decimal.__lt__,
    "at_most": Decimal.__le__,
}


def rows_of(listed: str, value: str) -> list[str]:
    """The names of the rows of a background list whose bounds hold for a value."""
    number = Decimal(value)
    return [
        row.name
        for row in content().severity.background[listed].rows
        if isinstance(row.when, Within)
        and all(TESTS[bound](number, Decimal(limit)) for bound, limit in row.when.bounds)
    ]
