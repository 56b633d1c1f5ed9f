"""One version, or one case, as a single file: opened from a folder, from nowhere, and without any network."""

import json
from collections.abc import Iterator
from functools import partial
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path
from threading import Thread

import pytest
from playwright.sync_api import Page

from builder.export.single import single_file
from builder.flow.handouts import handouts_of_tests
from builder.model.handed import sheet_of
from tests.browser.codes import code_for
from tests.browser.conftest import Visit
from tests.browser.test_code import typed
from tests.browser.test_keeping import LOST, draft_of, kept_line, opened, sure
from tests.browser.test_sharing import HELD
from tests.browser.test_taking import chosen, option
from tests.render.sample_cases import published_test
from tests.render.sample_site import plan
from tests.render.samples import course

pytestmark = pytest.mark.browser
CODE = code_for("A")
APART = "sandbox allow-scripts allow-downloads allow-forms"


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """A folder with the single files of the sample."""
    for name, text in handouts_of_tests(course(), [published_test()]).items():
        (tmp_path / name).write_text(text, encoding="utf-8", newline="\n")
    case = single_file(plan(), "cases/landing.md", with_flags=True)
    (tmp_path / "landing.html").write_text(case, encoding="utf-8", newline="\n")
    return tmp_path


class _Apart(BaseHTTPRequestHandler):
    """Serves one file into an origin of its own, as a phone shows a file out of a message."""

    def __init__(self, file: Path, *given: object) -> None:
        self.file = file
        super().__init__(*given)  # type: ignore[arg-type]

    def do_GET(self) -> None:
        """The file, whatever is asked for."""
        self.send_response(200)
        self.send_header("Content-Security-Policy", APART)
        self.send_header("Content-Type", "text/html; charset=utf-8")
        self.end_headers()
        self.wfile.write(self.file.read_bytes())

    def log_message(self, *_: object) -> None:
        """Say nothing."""


@pytest.fixture
def apart(folder: Path) -> Iterator[str]:
    """Where the file of version A is served into an origin of its own."""
    with ThreadingHTTPServer(("127.0.0.1", 0), partial(_Apart, folder / "final-a.html")) as server:
        thread = Thread(target=server.serve_forever, daemon=True)
        thread.start()
        yield f"http://127.0.0.1:{server.server_port}/"
        server.shutdown()
        thread.join()


def finished(page: Page) -> str:
    """Look over, finish, and take the sheet as text."""
    page.locator("#to-review").click()
    page.locator("#finish").click()
    return page.locator("#sheet-text").input_value()


def test_a_whole_test_in_one_file(visit: Visit, folder: Path) -> None:
    """Code, answers, reload, sheet: and not one request beside the file itself."""
    visitor = visit(folder)
    page = visitor.go("final-a.html")
    typed(page, CODE)
    page.wait_for_selector("#paper:not([hidden])")
    option(page, 0, 1)
    sure(page)
    page.reload()
    sure(page)
    assert chosen(page) == ["pack"]
    assert sheet_of(finished(page).encode()).answers[0].value == "pack"
    with page.expect_download() as coming:
        page.locator("#sheet-file").click()
    assert coming.value.suggested_filename == f"final-A-{CODE}.json"
    asked = {url.partition("#")[0] for url in visitor.requests if not url.startswith("blob:")}
    assert asked == {(folder / "final-a.html").as_uri()}


def test_a_code_of_another_version_is_told(visit: Visit, folder: Path) -> None:
    """The file holds one version and says which file is needed."""
    page = visit(folder).go("final-a.html")
    typed(page, code_for("B"))
    assert "version B" in page.locator("#code-problem").inner_text()
    assert not page.locator("#paper").is_visible()
    page.goto((folder / "final-a.html").as_uri() + f"#code={code_for('B')}")
    assert not page.locator("#paper").is_visible()


def test_where_nothing_can_be_kept_it_is_said(visit: Visit, apart: str, tmp_path: Path) -> None:
    """An origin of its own has no store: a draft saves the answers, and the sheet can be made."""
    page = visit(apart).go("")
    typed(page, CODE)
    page.wait_for_selector("#paper:not([hidden])")
    kept_line(page, LOST)
    option(page, 0, 1)
    draft = draft_of(page, tmp_path)
    again = visit(apart).go(f"#code={CODE}")
    kept_line(again, LOST)
    opened(again, draft)
    assert chosen(again) == ["pack"]
    assert json.loads(finished(again))["answers"][0]["value"] == "pack"


def test_a_shared_device_with_a_single_file(visit: Visit, folder: Path) -> None:
    """The switch stands beside the code; after clearing the file asks for the next code."""
    page = visit(folder).go("final-a.html#class=spring")
    page.get_by_label("Several people use this device").check()
    typed(page, CODE)
    page.wait_for_selector("#paper:not([hidden])")
    option(page, 0, 1)
    finished(page)
    with page.expect_download():
        page.locator("#sheet-file").click()
    page.locator("#pass-saved").check()
    page.locator("#pass").click()
    page.wait_for_selector("#code:visible")
    assert page.evaluate(HELD) == []
    assert page.url.endswith("#class=spring&shared")
    assert page.locator("#paper input:checked").count() == 0


def test_a_practice_case_in_one_file(visit: Visit, folder: Path) -> None:
    """Decide, read why, go on; the red flags are one tap away."""
    page = visit(folder).go("landing.html")
    page.locator(".step:visible .option").first.click()
    page.locator(".decide:visible").click()
    assert page.locator(".told:visible").count() == 1
    page.locator("header .flags").click()
    assert page.get_by_text("No pulse at the foot").is_visible()
    assert page.locator("#red-flags").evaluate("one => one.getBoundingClientRect().top < 200")


@pytest.mark.parametrize("scheme", ["light", "dark"])
@pytest.mark.parametrize("name", ["final-a.html", f"final-a.html#code={CODE}", "landing.html"])
def test_axe_finds_nothing_in_a_single_file(visit: Visit, folder: Path, name: str, scheme: str) -> None:
    """Of either kind, before and after the code."""
    visitor = visit(folder, color_scheme=scheme)
    visitor.go(name)
    assert visitor.faults() == []


@pytest.mark.parametrize("name", ["final-a.html", "landing.html"])
def test_without_script_a_single_file_can_be_read(visit: Visit, folder: Path, name: str) -> None:
    """Questions and cautions are there."""
    page = visit(folder, scripts=False).go(name)
    assert page.locator(".board:visible").count()
    assert "not medical advice" in page.locator("footer").inner_text()
