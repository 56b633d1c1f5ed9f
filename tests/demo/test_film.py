"""The demonstration's film: small, whole, drawn from plain shapes, and placed with all that belongs to it."""

from builder.disk import shipped
from builder.doors.film import measured
from builder.model.film import clock
from tests.demo.write_film import CHAPTERS, FILM, HIGH, NAME, RATE, SECONDS, WIDE, frame
from tests.render.filmed import filmed


def test_it_is_what_its_maker_makes() -> None:
    """As long, as large and in the format that the script says, and small enough for any phone."""
    film = measured(FILM, "film")
    assert (film.length, film.picture, film.width, film.height) == (SECONDS * 1000, "VP9", WIDE, HIGH)
    assert FILM.stat().st_size < 150_000


def test_its_chapters_begin_at_whole_pictures() -> None:
    """Where its maker is told to put one, so that a jump shows the right picture at once."""
    chapters = filmed().films[NAME].chapters
    assert chapters is not None
    assert ",".join(str(cue.start // 1000) for cue in chapters.cues) == CHAPTERS
    assert [clock(cue.end) for cue in chapters.cues][-1] == clock(SECONDS * 1000)


def test_its_words_follow_the_lesson() -> None:
    """It shows what the lesson beside it teaches, emergency included."""
    captions = filmed().films[NAME].captions
    assert captions is not None
    said = " ".join(cue.text for cue in captions.cues)
    lesson = (shipped("demo_course") / "lessons" / "dose.md").read_text(encoding="utf-8")
    assert f"[film {NAME}]" in lesson
    for words in ("two to three times the injured area", "within 15 minutes", "within three seconds"):
        assert words in said
        assert words in " ".join(lesson.split())
    assert "call for emergency help" in said


def test_a_frame_is_the_same_whenever_it_is_drawn() -> None:
    """The picture hangs on the time alone, and something happens in every chapter."""
    frames = [frame(number / RATE) for number in range(RATE * SECONDS)]
    assert frames[50] == frame(50 / RATE)
    starts = [RATE * int(start) for start in CHAPTERS.split(",")]
    for start, end in zip(starts, [*starts[1:], len(frames)], strict=True):
        assert len(set(frames[start:end])) > RATE
