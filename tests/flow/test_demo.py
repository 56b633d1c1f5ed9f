"""The whole job on the demonstration, as `make demo` runs it."""

from tests.demo.built import OUT, demo, demo_run


def test_every_step_is_told_in_order() -> None:
    """Check, build, collect, grade, certify, analyse, and what to open."""
    _, said = demo()
    steps = [line.split()[1].rstrip(":") for line in said if line[:1].isdigit()]
    assert steps == ["Check", "Build", "Collect", "Grade", "Certify", "Analyse"]
    assert f"  students      {OUT / 'publish' / 'index.html'}" in said


def test_a_folder_named_from_here_is_meant_from_here() -> None:
    """A relative folder lands below the current one, with both sites in it."""
    folder, _ = demo_run()
    assert (folder / "some where/out/publish/index.html").is_file()
    assert (folder / "some where/out/private/instructor/index.html").is_file()


def test_every_file_it_names_is_there() -> None:
    """Each path after `Open these` exists and holds something."""
    folder, _ = demo_run()
    _, said = demo()
    named = [line[16:] for line in said[said.index("Open these") + 2 :]]
    assert len(named) == 5
    assert all((folder / path).stat().st_size > 0 for path in named)
