"""Says as JSON what openpyxl sees in a workbook: python3 openpyxl_look.py FILE"""
import json
import sys

from openpyxl import load_workbook

book = load_workbook(sys.argv[1])
seen = {"sheets": book.sheetnames, "cells": {}}
for sheet in book:
    for row in sheet.iter_rows():
        for cell in row:
            comment = cell.comment
            link = cell.hyperlink
            if cell.value is None and comment is None:
                continue
            seen["cells"][f"{sheet.title}!{cell.coordinate}"] = {
                "value": None if cell.value is None else str(cell.value),
                "note": comment and comment.text,
                "author": comment and comment.author,
                "fill": cell.fill.fgColor.rgb if cell.fill.fill_type == "solid" else None,
                "format": cell.number_format,
                "bold": bool(cell.font.b),
                "link": link and link.location,
            }
    seen[sheet.title] = {
        "freeze": sheet.freeze_panes, "charts": len(sheet._charts), "hidden": [r for r, d in sheet.row_dimensions.items() if d.hidden],
        "validations": len(sheet.data_validations.dataValidation), "conditions": len(list(sheet.conditional_formatting)),
    }
json.dump(seen, sys.stdout)
