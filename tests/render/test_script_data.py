"""What a script must know of a test."""

from builder.model.code import ALPHABET, VERSIONS
from builder.render.maker import maker
from builder.render.script_data import about_test
from tests.render.sample_cases import published_test
from tests.render.sample_judged import judged_course


def test_it_knows_codes_edition_and_the_words_asked_for() -> None:
    """As many versions as there are papers, the tool's own alphabet, and no word more than it says."""
    made = maker(judged_course())
    known = about_test(made, published_test(), ("code_wrong",))
    assert (known["edition"], known["versions"], known["letters"]) == ("k7q2m9xa", 2, VERSIONS)
    assert known["alphabet"] == ALPHABET
    assert known["say"] == {"code_wrong": made.say("code_wrong")}
