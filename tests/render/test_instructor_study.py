"""The study time of a course, as the instructor sees it."""

from dataclasses import replace

from builder.model.film import Film, FilmFile
from builder.render.instructor_coverage import coverage_page
from builder.render.instructor_study import study_values
from builder.render.maker import maker
from tests.render.sample_site import parsed, said
from tests.render.samples import course

FILM = Film("drill", (FilmFile("media/drill.webm", 90_000),))
SAMPLE = replace(course(), lessons={"phases": "word " * 476 + "\n\n[film drill]\n"}, films={"drill": FILM})


def test_each_lesson_and_all_together_are_told() -> None:
    """476 words at 238 a minute are two minutes; at 300 and at 175 they are quicker and slower."""
    tree = parsed(coverage_page(maker(SAMPLE), ()).body)
    rows = [
        [said(cell) for cell in row.select("th, td")] for row in tree.select("table.study")[0].select("tr")
    ]
    assert rows == [
        ["Lesson", "Words", "Film", "Minutes"],
        ["Tissue heals in phases", "476", "1:30", "3.5 (3.1 to 4.2)"],
        ["All lessons", "476", "1:30", "3.5 (3.1 to 4.2)"],
    ]


def test_published_formulas_stand_side_by_side() -> None:
    """The film counts in each by the minute, and the sources are named."""
    values = study_values(SAMPLE)
    assert values["questions"] == 1
    tree = parsed(coverage_page(maker(SAMPLE), ()).body)
    rows = [
        [said(cell) for cell in row.select("th, td")] for row in tree.select("table.study")[1].select("tr")
    ]
    assert rows[0] == ["Formula", "Its hours", "Credited"]
    by_words = next(row for row in rows if row[0].startswith("NCBTMB"))
    assert by_words[1] == f"{476 / 12000 + 1.5 / 60:.2f}"
    assert "(Brysbaert 2019" in said(tree)
