"""The built distribution carries everything it needs and runs from an empty folder."""

import os
import subprocess
import sys
import tarfile
import zipfile
from importlib.metadata import PackageNotFoundError, files
from pathlib import Path

import pytest

from tests.house.plan import ROOT
from tests.house.test_locks import PIN

pytestmark = pytest.mark.wheel


@pytest.fixture(scope="module")
def built(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A folder with the source archive, and the wheel built from that archive."""
    folder = tmp_path_factory.mktemp("built")
    build = [sys.executable, "-m", "build", "--no-isolation", "--outdir", str(folder), str(ROOT)]
    run(build, ROOT, dict(os.environ, SOURCE_DATE_EPOCH="1700000000"))
    return folder


@pytest.fixture(scope="module")
def bin_folder(built: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The programs of a fresh environment that holds the wheel and what requirements.lock names, no more."""
    fresh = tmp_path_factory.mktemp("fresh")
    run([sys.executable, "-m", "venv", "--without-pip", str(fresh)], fresh)
    install = ["install", "--quiet", "--no-deps", "--no-index", str(next(built.glob("*.whl")))]
    run([sys.executable, "-m", "pip", "--python", str(fresh / "bin" / "python"), *install], fresh)
    link_locked(fresh)
    return fresh / "bin"


def link_locked(fresh: Path) -> None:
    """Show the fresh environment, without a network, what the lock would install: links to our own copies."""
    site = next(fresh.glob("lib/python*/site-packages"))
    lock = (ROOT / "requirements.lock").read_text(encoding="utf-8")
    for pin in PIN.finditer(lock):
        for top in tops(pin["name"]):
            link = site / top.name
            if not link.exists():
                link.symlink_to(top)


def tops(name: str) -> set[Path]:
    """The top files and folders of an installed package; none if it is for another kind of machine."""
    try:
        listed = files(name) or []
    except PackageNotFoundError:
        return set()
    inside = {file.parts[0]: file for file in listed if file.parts[0] not in {"..", "__pycache__"}}
    return {Path(str(file.locate())).parents[len(file.parts) - 1] / top for top, file in inside.items()}


def run(command: list[str], folder: Path, environment: dict[str, str] | None = None) -> str:
    """Run a command in a folder and give what it printed; fails with its whole output."""
    done = subprocess.run(
        command, cwd=folder, env=environment, capture_output=True, text=True, encoding="utf-8", check=False
    )
    assert done.returncode == 0, done.stdout + done.stderr
    return done.stdout


def bare(bin_folder: Path, home: Path) -> dict[str, str]:
    """An environment with nothing in it but the search path and an empty home."""
    return {"PATH": f"{bin_folder}{os.pathsep}{os.defpath}", "HOME": str(home)}


NOT_OURS = {"__pycache__", ".caseloom"}  # what runs leave behind


def source_names() -> set[str]:
    """What the wheel should hold, under the names it should have there."""
    kept = {
        "content": "builder/_data/content",
        "demo_course": "builder/_data/demo_course",
        "builder": "builder",
    }
    names = {"builder/_data/site_config.yml"}
    for top, inside in kept.items():
        paths = [path for path in (ROOT / top).rglob("*") if path.is_file() and not NOT_OURS & {*path.parts}]
        names |= {f"{inside}/{path.relative_to(ROOT / top).as_posix()}" for path in paths}
    return names


def test_the_wheel_holds_the_package_the_content_and_the_demo(built: Path) -> None:
    """Every source file is in the wheel, and nothing beside it."""
    with zipfile.ZipFile(next(built.glob("*.whl"))) as wheel:
        names = {name for name in wheel.namelist() if ".dist-info/" not in name}
    assert names == source_names()


def test_the_source_archive_can_be_built_again(built: Path) -> None:
    """The source archive has what a build needs."""
    with tarfile.open(next(built.glob("*.tar.gz"))) as archive:
        tops_held = {name.split("/")[1] for name in archive.getnames()}
    assert tops_held >= {
        "pyproject.toml",
        "README.md",
        "LICENSE",
        "builder",
        "content",
        "demo_course",
        "site_config.yml",
    }


def test_the_same_source_gives_the_same_wheel(built: Path, tmp_path: Path) -> None:
    """Two builds of one source are the same to the byte."""
    build = [sys.executable, "-m", "build", "--no-isolation", "--wheel", "--outdir", str(tmp_path), str(ROOT)]
    run(build, ROOT, dict(os.environ, SOURCE_DATE_EPOCH="1700000000"))
    assert next(tmp_path.glob("*.whl")).read_bytes() == next(built.glob("*.whl")).read_bytes()


def test_the_installed_package_is_what_runs(bin_folder: Path, tmp_path: Path) -> None:
    """The fresh environment imports the wheel's package and not the source beside it."""
    where = "import builder, pathlib; print(pathlib.Path(builder.__file__).resolve())"
    printed = run([str(bin_folder / "python"), "-c", where], tmp_path, bare(bin_folder, tmp_path))
    assert Path(printed.strip()).is_relative_to(bin_folder.parent.resolve())


def test_the_demo_runs_from_an_empty_folder(bin_folder: Path, tmp_path: Path) -> None:
    """`caseloom demo` does the whole job with nothing but what is installed."""
    empty = tmp_path / "a desk in Orléans"
    empty.mkdir()
    printed = run([str(bin_folder / "caseloom"), "demo", "--out", "made"], empty, bare(bin_folder, tmp_path))
    assert (empty / "made" / "publish" / "index.html").is_file()
    assert (empty / "made" / "private" / "instructor" / "index.html").is_file()
    assert "publish/index.html" in printed
