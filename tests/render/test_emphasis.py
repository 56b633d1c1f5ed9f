"""Bold words inside a sentence."""

from builder.render.emphasis import emphasised


def test_only_bold_words_become_markup() -> None:
    """Two stars make bold, and no other sign means anything."""
    assert emphasised("Which is **not** a sign?") == "Which is <b>not</b> a sign?"
    assert emphasised("a < b & <b>c</b>") == "a &lt; b &amp; &lt;b&gt;c&lt;/b&gt;"
    assert emphasised("2 ** 3") == "2 ** 3"
