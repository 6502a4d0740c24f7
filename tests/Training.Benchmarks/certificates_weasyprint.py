"""Prints the page of page.json so many times with WeasyPrint; on standard output: pages a second, ms of processor time
a page, bytes of a page, peak memory in MB.

WeasyPrint draws no QR code of its own: the page has none here, nor has it any other drawing.
"""
import html
import json
import logging
import resource
import sys
import time

from weasyprint import CSS, HTML
from weasyprint.text.fonts import FontConfiguration

# It remarks on the dates inside font files.
logging.getLogger("fontTools").setLevel(logging.ERROR)
page = json.load(open(sys.argv[1], encoding="utf-8"))
pages = int(sys.argv[2])
fonts = FontConfiguration()
weights = {"Light": 300, "Regular": 400, "Bold": 700}
style = CSS(
    string="@page { size: letter landscape; margin: 26pt } body { margin: 0; height: 556pt; border: 4pt double; font-family: Lato } p { margin: 0 180pt 0 34pt; line-height: 1.35 }",
    font_config=fonts,
)
body = "".join(f'<p style="font-size:{size}pt;font-weight:{weights[face]}">{html.escape(text)}</p>' for face, size, text in page["lines"])
source = f'<!doctype html><html lang="es"><title>{html.escape(page["title"])}</title><body>{body}</body></html>'


def write():
    return HTML(string=source).write_pdf(stylesheets=[style], font_config=fonts)


last = write()
start, processor = time.perf_counter(), time.process_time()
for _ in range(pages):
    last = write()
seconds, processor = time.perf_counter() - start, time.process_time() - processor
assert last.startswith(b"%PDF-")
print(pages / seconds, 1000 * processor / pages, len(last), resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024)
