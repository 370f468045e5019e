"""Writes a workbook of values that spreadsheets are known to turn into others: traps.py OUT [1904|iso]"""
import datetime
import sys

import openpyxl
from openpyxl.utils.datetime import CALENDAR_MAC_1904

NOBREAK = "\u00a0"

book = openpyxl.Workbook(iso_dates="iso" in sys.argv)
if "1904" in sys.argv:
    book.epoch = CALENDAR_MAC_1904
sheet = book.active
sheet.title = "Rope bridges"
sheet.append(["id", "description", "manufactured", "serial", "safe working load"])


def row(name, made=None, made_format=None, serial=None, serial_format=None, load=None, hidden=False):
    sheet.append([name, "A rope bridge"])
    at = sheet.max_row
    for column, value, form in ((3, made, made_format), (4, serial, serial_format), (5, load, None)):
        if value is not None:
            cell = sheet.cell(at, column, value)
            if form is not None:
                cell.number_format = form
    sheet.row_dimensions[at].hidden = hidden


row("day", 39267 if "1904" in sys.argv else 40729, "yyyy-mm-dd")
row("real-date", datetime.date(2024, 2, 29))
row("locale", 43889 if "1904" in sys.argv else 45351, "[$-409]d-mmm-yy")
row("before-60", 59, "yyyy-mm-dd")
row("sixty", 60, "yyyy-mm-dd")
row("after-60", 61, "yyyy-mm-dd")
row("time", 0.5, "h:mm")
row("duration", 1.5, "[h]:mm")
row("red", 45351, "[Red]0.00")
row("two-ways", "03/04/2026")
row("noughts", serial=123, serial_format="00000")
row("number", serial=12345)
row("long", serial=1234567890123456)
row("digits", serial="1234567890123456")
row("blanks", serial=f"  {NOBREAK}OT-77{NOBREAK} ")
row("error", serial="#N/A")
row("dated-serial", serial=12345, serial_format="yyyy-mm-dd")
row("comma", load="11,2")
row("thousand", load="1,250")
row("thin", load="1\u2009250")
row("exponent", load="1e3")
row("hidden", serial="OT-78", hidden=True)
row("formula", serial="=1+1")
book.save(sys.argv[1])
