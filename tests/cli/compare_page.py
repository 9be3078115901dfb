#!/usr/bin/env python3
"""The HTML page of `compare` in a real browser: it has its headings and charts, nothing is logged,
and it asks for nothing but itself - watched by the browser's own network log.

    compare_page.py PROGRAM SOURCE_DIR CHROMIUM
"""
import html.parser
import json
import os
import pathlib
import subprocess
import sys
import tempfile

program, source, browser = sys.argv[1], pathlib.Path(sys.argv[2]), sys.argv[3]
if not os.access(browser, os.X_OK):
    print("there is no chromium")
    sys.exit(77)
samples = sorted(str(p) for p in (source / "samples").glob("*.resuslog"))


class Outline(html.parser.HTMLParser):
    def __init__(self):
        super().__init__()
        self.headings, self.counts, self.links, self.ids, self.inside = [], {}, [], set(), None

    def handle_starttag(self, tag, attributes):
        attributes = dict(attributes)
        self.counts[tag] = self.counts.get(tag, 0) + 1
        if tag in ("h1", "h2", "h3"):
            self.headings.append([tag, ""])
            self.inside = tag
        if "id" in attributes:
            self.ids.add(attributes["id"])
        for key in ("href", "src", "xlink:href", "data", "action"):
            if key in attributes:
                self.links.append(attributes[key])

    def handle_endtag(self, tag):
        if tag == self.inside:
            self.inside = None

    def handle_data(self, data):
        if self.inside:
            self.headings[-1][1] += data


def urls_in(log):
    """Every URL that a page made the browser load, from its NetLog. What the browser asks for on its
    own account has no page's origin."""
    entries = json.loads(log.read_text())
    kinds = entries["constants"]["logEventTypes"]
    start = kinds["URL_REQUEST_START_JOB"]
    return [event["params"]["url"] for event in entries["events"]
            if event["type"] == start and "url" in event.get("params", {}) and
            (event["params"].get("initiator") != "not an origin" or
             "file://" in event["params"].get("network_isolation_key", ""))]


def open_in_browser(page, folder, name):
    log = folder / (name + ".netlog")
    run = subprocess.run(
        [browser, "--headless", "--no-sandbox", "--disable-gpu", "--disable-extensions",
         "--disable-background-networking", "--disable-component-update", "--disable-sync",
         "--no-first-run", "--disable-default-apps",
         "--host-resolver-rules=MAP * ~NOTFOUND", "--disable-client-side-phishing-detection",
         "--enable-logging=stderr", "--log-level=0", f"--user-data-dir={folder / (name + '.user')}",
         f"--log-net-log={log}", "--dump-dom", page.as_uri()],
        capture_output=True, text=True, timeout=120)
    if run.returncode != 0:
        sys.exit(f"the browser ended with {run.returncode}: {run.stderr}")
    console = [line for line in run.stderr.splitlines() if "CONSOLE" in line]
    return run.stdout, console, urls_in(log)


with tempfile.TemporaryDirectory() as name:
    folder = pathlib.Path(name)
    for language, title in (("en", "Comparison of records"), ("de", "Vergleich von Aufzeichnungen")):
        page = folder / f"{language}.html"
        run = subprocess.run([program, "compare", *samples, "--page", str(page), "--language",
                              language], capture_output=True, text=True)
        assert run.returncode in (0, 1), run.stderr
        dom, console, urls = open_in_browser(page, folder, language)
        outline = Outline()
        outline.feed(dom)
        assert outline.headings[0] == ["h1", title], outline.headings
        kinds = [text for tag, text in outline.headings if tag == "h2"]
        sites = [text for tag, text in outline.headings if tag == "h3"]
        assert len(kinds) >= 2 and sites, outline.headings
        assert outline.counts["svg"] >= 4 and outline.counts["table"] >= 2, outline.counts
        assert outline.counts["figcaption"] == outline.counts["svg"], outline.counts
        assert "script" not in outline.counts, outline.counts
        for link in outline.links:
            assert link.startswith("#") and link[1:] in outline.ids, link
        assert console == [], console
        outside = [url for url in urls if url != page.as_uri()]
        assert outside == [], outside
    # The two watches see what they are for.
    bad = folder / "bad.html"
    bad.write_text("<script>console.error('heard')</script><img src='http://127.0.0.1:9/x.png'>")
    dom, console, urls = open_in_browser(bad, folder, "bad")
    assert any("heard" in line for line in console), console
    assert "http://127.0.0.1:9/x.png" in urls, urls
