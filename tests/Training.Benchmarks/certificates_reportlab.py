"""Prints the page of page.json so many times with ReportLab; on standard output: pages a second, ms of processor time
a page, bytes of a page, peak memory in MB."""
import io
import json
import resource
import sys
import time

from reportlab.graphics import renderPDF
from reportlab.graphics.barcode.qr import QrCodeWidget
from reportlab.graphics.shapes import Drawing
from reportlab.lib.pagesizes import landscape, letter
from reportlab.lib.utils import simpleSplit
from reportlab.pdfbase import pdfmetrics
from reportlab.pdfbase.ttfonts import TTFont
from reportlab.pdfgen import canvas

page = json.load(open(sys.argv[1], encoding="utf-8"))
pages = int(sys.argv[2])
for face in ("Light", "Regular", "Bold"):
    pdfmetrics.registerFont(TTFont(face, f"{page['fonts']}/Lato-{face}.ttf"))


def write():
    file = io.BytesIO()
    width, height = landscape(letter)
    sheet = canvas.Canvas(file, pagesize=(width, height))
    sheet.setTitle(page["title"])
    sheet.setAuthor(page["provider"])
    for inset in (26, 30):
        sheet.rect(inset, inset, width - 2 * inset, height - 2 * inset)
    y = height - 70
    for face, size, text in page["lines"]:
        for line in simpleSplit(text, face, size, width - 280):
            sheet.setFont(face, size)
            sheet.drawString(60, y, line)
            y -= size * 1.35
    code = QrCodeWidget(page["address"], barLevel="M")
    left, bottom, right, top = code.getBounds()
    drawing = Drawing(110, 110, transform=[110 / (right - left), 0, 0, 110 / (top - bottom), 0, 0])
    drawing.add(code)
    renderPDF.draw(drawing, sheet, width - 180, 60)
    sheet.save()
    return file.getvalue()


last = write()
start, processor = time.perf_counter(), time.process_time()
for _ in range(pages):
    last = write()
seconds, processor = time.perf_counter() - start, time.process_time() - processor
assert last.startswith(b"%PDF-")
print(pages / seconds, 1000 * processor / pages, len(last), resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024)
