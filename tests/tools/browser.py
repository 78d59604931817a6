"""A browser for the tests: Chromium without a window."""

from __future__ import annotations

import shutil
import subprocess
import threading
import zlib
from collections.abc import Callable
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path
from typing import NamedTuple

from tests.tools import office

NAMES = ("chromium", "chromium-browser", "google-chrome")


def program() -> str | None:
    return next(filter(None, map(shutil.which, NAMES)), None)


def needed() -> None:
    """Skip a test where there is no browser; under CI that is a failure."""
    if program() is None:
        office.missing("needs Chromium")


def run(page: Path, *options: str) -> str:
    """Open a page of this machine with options that make the browser do something and end."""
    # without a sandbox: in a container the tests run as root, and the page is ours
    fixed = [str(program()), "--headless", "--no-sandbox", "--disable-gpu", "--hide-scrollbars"]
    done = subprocess.run([*fixed, *options, page.as_uri()], check=True, capture_output=True, text=True, timeout=120)
    return done.stdout


class Watched(NamedTuple):
    """What a page became in the browser, and what it asked for on the way."""

    dom: str
    asked: list[str]


def watched(page: Callable[[str], Path]) -> Watched:
    """Open a page that is told an address of this machine; whatever is asked for there, is noted."""
    asked: list[str] = []

    class Listener(BaseHTTPRequestHandler):
        def do_GET(self) -> None:
            asked.append(self.path)
            self.send_response(204)
            self.end_headers()

        do_POST = do_GET  # noqa: N815 (the library's own name)

        def log_message(self, *_: object) -> None:
            pass

    with ThreadingHTTPServer(("127.0.0.1", 0), Listener) as server:
        threading.Thread(target=server.serve_forever, daemon=True).start()
        try:
            address = f"http://127.0.0.1:{server.server_port}"
            dom = run(page(address), "--virtual-time-budget=3000", "--dump-dom")
        finally:
            server.shutdown()
    return Watched(dom, asked)


def screenshot(page: Path, target: Path, width: int, height: int, dark: bool = False) -> None:
    scheme = ["--blink-settings=preferredColorScheme=0"] if dark else []
    run(page, *scheme, f"--window-size={width},{height}", f"--screenshot={target}")
    assert target.exists(), "the browser took no picture"


def first_pixel(picture: Path) -> tuple[int, ...]:
    """Red, green and blue at the top left of a PNG file (ISO/IEC 15948): no filter changes the first pixel."""
    content, data, place = picture.read_bytes(), b"", 8
    while place < len(content):
        length = int.from_bytes(content[place : place + 4], "big")
        if content[place + 4 : place + 8] == b"IDAT":
            data += content[place + 8 : place + 8 + length]
        place += 12 + length
    return tuple(zlib.decompress(data)[1:4])
