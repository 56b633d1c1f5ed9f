"""Examples are shown as an author would write them."""

from builder.model.kind import Example


def test_the_margin_of_the_source_is_not_shown() -> None:
    """Lines keep what they are indented against each other, tabs included."""
    one = Example(
        "cases/a.yml",
        """
        visits:
          - id: one
        \tphase: acute
        """,
    )
    assert one.written == "visits:\n  - id: one\n\tphase: acute\n"
