"""Courses that mean harm: files written to exhaust, to mislead, or to reach out of their folder."""

from builder.model.kind import Example

CASE = "cases/fence.yml"
VISIT = "visits/0"
_TWICE = "[{0}, {0}]"


def _of_visit(text: str) -> Example:
    return Example(CASE, text, VISIT)


HOSTILE: dict[str, Example] = {
    "hostile_bomb": _of_visit(
        "story: &a [x, x]\n" + "\n".join(f"more_{b}: &{b} {_TWICE.format('*' + a)}" for a, b in ("ab", "bc"))
    ),
    "hostile_nesting": _of_visit("story: " + "{a: " * 100_000),
    "hostile_stairs": _of_visit("story:\n" + "\n".join(" " * (step + 1) + "a:" for step in range(900))),
    "hostile_object": _of_visit("story: !!python/object/apply:os.system [ls]"),
    "hostile_path": Example(
        "course.yml",
        """
        lessons:
          - {file: cold.md, title: Cold}
          - {file: ../../../../etc/passwd, title: Out of the folder}
        practice:
          - {id: first, title: First cases, cases: [/etc/passwd, fence, fair]}
        boards: [../../generic]
        """,
    ),
    "hostile_id": Example(CASE, "id: ../../fence"),
    "hostile_link": Example("lessons/more.md", link="/"),
    "hostile_ring": Example("cases/ring", link=".."),
    "hostile_terminal": _of_visit("story: It \x1b[2J\x1b]0;owned\x07hurts."),
    "hostile_escape": _of_visit(r'story: "\e[2J"'),
    "hostile_nul": _of_visit("story: It\x00hurts."),
    "hostile_bidi": Example("course.yml", "title: A \u202eelttil\u202c course\u2066"),
    "hostile_hours": _of_visit("since_injury: 1e400000"),
    "hostile_digits": _of_visit("since_injury: " + "9" * 5000),
    "hostile_measure": _of_visit("findings: {swelling_trend: steady, knee_flexion: 1e999999999}"),
    "hostile_nan": _of_visit("findings: {swelling_trend: steady, knee_flexion: .nan}"),
    "hostile_share": Example(
        "course.yml", "requirements: {test: final, stations: [cooling], attendance: 1/0}"
    ),
    "hostile_line": _of_visit("story: " + "x" * 900_000),
    "hostile_key": _of_visit("x" * 900_000 + ": 1"),
    "hostile_file": _of_visit("# " + "x" * 1_000_000 + "\nstory: It hurts."),
    "hostile_bytes": Example("lessons/cold.md", "\x00\x01\x00\x02" * 64),
    "hostile_captions": Example(
        "media/pad.vtt", "WEBVTT\n\n00:00.000 --> 00:01.000\n" + "<v " * 300_000 + "\n\n" + "--> " * 9
    ),
    "hostile_page": Example("lessons/cold.md", "# Cold\n\n[card ../../cold_pack]\n[card <script>]\n"),
}
