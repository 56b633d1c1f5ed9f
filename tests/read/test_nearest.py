"""What an unknown word may have been meant to be."""

from builder.read.nearest import nearest, quoted, suggest


def test_a_slip_finds_its_word() -> None:
    """Letters swapped, missing or in capitals lead to the word that was meant."""
    known = ("minutes", "barrier", "pressure")
    assert [nearest(word, known) for word in ("minuets", "barier", "PRESSURE", "x")] == [
        "minutes",
        "barrier",
        "pressure",
        None,
    ]


def test_a_suggestion_names_the_word_or_shows_what_is_known() -> None:
    """One word if one is near, else the first eight in order, else what is left to do."""
    assert suggest("minuets", ("minutes",)) == "Did you mean `minutes`?"
    assert suggest("zzz", ("b", "a", "a")) == "Known here: `a`, `b`."
    assert suggest("zzz", [f"w{n}" for n in range(10)]).endswith("`w7` and 2 more.")
    assert suggest("zzz", (), "Add it.") == "Add it."


def test_a_value_is_never_quoted_at_length() -> None:
    """Long text is cut; lists and blocks are named for what they are."""
    assert [quoted(one) for one in (None, True, 3, "a", [1], {"a": 1})] == [
        "nothing",
        "`true`",
        "`3`",
        "`a`",
        "a list",
        "a block",
    ]
    assert len(quoted("x" * 500)) == 62
