"""Films as checks walk through them."""

from dataclasses import replace

from builder.check.films import at_cue, at_tag, cues, placed_films, tracks
from builder.model.film import Film
from tests.check.filmed import FILM, LESSON, track
from tests.check.wording.written import course_of

CAPTIONS = track("00:00.000 --> 00:01.000", "00:01.000 --> 00:02.000")


def test_every_film_is_walked_through_once() -> None:
    """Its tag in the lesson, its tracks, its cues, each with the place it is told at."""
    film = Film("pad", (FILM,), CAPTIONS)
    made = course_of(lesson=LESSON + "\n[film none]\n")
    evidence = replace(made, course=replace(made.course, films={"pad": film}))
    placed = list(placed_films(evidence.course))
    assert [(file, tag.line, one) for file, tag, one in placed] == [
        ("lessons/cold.md", 3, film),
        ("lessons/cold.md", 5, None),
    ]
    assert list(tracks(evidence)) == [(film, CAPTIONS)]
    assert [cue.line for _, _, cue in cues(evidence)] == [3, 6]
    assert at_tag("lessons/cold.md", placed[0][1], "a", "b").line == 3
    assert at_cue(CAPTIONS, CAPTIONS.cues[1], "a", "b").line == 6
