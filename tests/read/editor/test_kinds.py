"""Every sort of file an author writes is known to the schemas."""

from builder.read.editor.kinds import KINDS
from builder.read.folder import BOOKS, COURSE, OWN, REVIEWS, SITE


def test_no_sort_of_file_is_left_out() -> None:
    """Whatever the reader reads has a schema, and lies where the reader looks for it."""
    at = {kind.where: kind.model for kind in KINDS.values()}
    assert at.items() >= {f"{folder}/*.yml": model for folder, model in OWN.items()}.items()
    assert at.items() >= BOOKS.items()
    assert {COURSE, SITE, REVIEWS, "classes/*/class.yml", "classes/*/stations/*.yml"} <= at.keys()
