"""What axe-core finds wrong with a page for those who cannot see it well, in Chromium without a window."""

from __future__ import annotations

import json
import re
from html import unescape
from importlib import resources
from pathlib import Path
from typing import Any

from tests.tools import browser

WIDTHS = (390, 1200)


def violations(page: Path, width: int, dark: bool = False) -> list[dict[str, Any]]:
    """The rules of axe-core that a page breaks: each with its words and the places."""
    script = (resources.files("axe_core_python") / "axe.min.js").read_text(encoding="utf-8")
    found = page.with_name(f"axe-{width}-{dark}.html")
    keep = 'document.body.innerHTML = ""; document.body.dataset.axe = JSON.stringify(r.violations)'
    run = f"axe.run().then(r => {{ {keep} }})"
    found.write_text(
        f"{page.read_text(encoding='utf-8')}<script>{script}</script><script>{run}</script>", encoding="utf-8"
    )
    scheme = ["--blink-settings=preferredColorScheme=0"] if dark else []
    told = browser.run(found, *scheme, f"--window-size={width},900", "--virtual-time-budget=20000", "--dump-dom")
    answer = re.search(r'data-axe="([^"]*)"', told)
    assert answer, "axe-core did not answer"
    result: list[dict[str, Any]] = json.loads(unescape(answer[1]))
    return result


def told(found: list[dict[str, Any]]) -> str:
    return "\n".join(f"{one['id']}: {one['help']} {[node['html'][:120] for node in one['nodes']][:3]}" for one in found)
