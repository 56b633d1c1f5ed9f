"""The lock files pin everything, by content and not by place."""

import json
import re

import pytest

from tests.house.plan import ROOT

PIN = re.compile(r"^(?P<name>[a-z0-9.-]+)==(?P<version>[^\s;\\]+)(?P<rest>.*)$", re.MULTILINE)


def locked(text: str) -> dict[str, list[str]]:
    """The entries of a lock: for each package and where it applies, the hashes that are accepted."""
    entries = re.split(r"\n(?=\S)", re.sub(r"(?m)^\s*#.*\n?", "", text).strip())
    return {entry.split(" \\")[0]: re.findall(r"--hash=sha256:[0-9a-f]{64}", entry) for entry in entries}


def faults(text: str) -> list[str]:
    """The entries that are not pinned by content."""
    return [name for name, hashes in locked(text).items() if not PIN.match(name) or not hashes or "@" in name]


def read(name: str) -> str:
    """The text of a lock file."""
    return (ROOT / name).read_text(encoding="utf-8")


@pytest.mark.parametrize("name", ["requirements.lock", "requirements-test.lock"])
def test_every_package_is_pinned_by_content(name: str) -> None:
    """Each entry is one version with its hashes; no line names a registry, a folder or an option."""
    assert len(locked(read(name))) > 1
    assert faults(read(name)) == []


def test_tests_run_on_what_users_get() -> None:
    """Every pin of the plain lock stands in the test lock unchanged."""
    assert locked(read("requirements.lock")).items() <= locked(read("requirements-test.lock")).items()


@pytest.mark.parametrize("folder", ["tests/browser", "tests/editor"])
def test_the_script_lock_names_no_place(folder: str) -> None:
    """The locks of what runs beside the tests hold content hashes and no addresses."""
    packages = json.loads(read(f"{folder}/package-lock.json"))["packages"]
    needed = {name: entry for name, entry in packages.items() if name}
    assert needed
    assert all("integrity" in entry and "resolved" not in entry for entry in needed.values())


@pytest.mark.parametrize(
    "line",
    [
        "click==8.1",
        "click>=8.1 \\\n    --hash=sha256:" + "a" * 64,
        "--find-links wheels",
        "click @ file:click.whl \\\n    --hash=sha256:" + "a" * 64,
        "-e .",
    ],
)
def test_a_loose_entry_is_seen(line: str) -> None:
    """An entry without hash or exact version, and an option, are reported."""
    good = "mkdocs==1.6.1 ; python_version >= '3.11' \\\n    --hash=sha256:" + "b" * 64
    assert faults(good) == []
    assert faults(f"{good}\n    # via caseloom\n{line}\n")
