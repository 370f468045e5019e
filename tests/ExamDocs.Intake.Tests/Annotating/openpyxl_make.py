"""Writes a workbook of rope bridges as somebody's own script might: python3 openpyxl_make.py FILE"""
import datetime
import sys

from openpyxl import Workbook
from openpyxl.chart import BarChart, Reference
from openpyxl.comments import Comment
from openpyxl.formatting.rule import CellIsRule
from openpyxl.styles import Font, PatternFill
from openpyxl.workbook.defined_name import DefinedName
from openpyxl.worksheet.datavalidation import DataValidation

book = Workbook()
sheet = book.active
sheet.title = "Rope bridges"
sheet.append(["id", "description", "serial", "manufactured", "cover-cut", "conclusion"])
sheet.append(["BRG-1", "bridge, short", "00123", datetime.date(2024, 2, 1), "claer", "fit"])
sheet.append(["BRG-2", "bridge, long", None, datetime.date(2024, 3, 1), "clear", "fit"])
for cell in sheet[1]:
    cell.font = Font(bold=True)
sheet["D2"].number_format = sheet["D3"].number_format = "yyyy-mm-dd"
sheet["A2"].comment = Comment("Checked on the bench.", "A. Elm", height=80, width=200)
sheet["B3"].comment = Comment("Ask the owner.", "B. Ash")
sheet.freeze_panes = "A2"
sheet.row_dimensions[3].hidden = True
lists = DataValidation(type="list", formula1='"fit,withdraw"', allow_blank=True)
lists.add("F2:F9")
sheet.add_data_validation(lists)
sheet.conditional_formatting.add("E2:E9", CellIsRule(operator="equal", formula=['"defect"'], fill=PatternFill(bgColor="FFC7CE")))

loads = book.create_sheet("Bob's list")
loads.append([25, "kN"])
loads.append(["=A1*2", "=UPPER(B1)"])
loads.merge_cells("A4:B4")
chart = BarChart()
chart.add_data(Reference(loads, min_col=1, min_row=1, max_row=2))
loads.add_chart(chart, "D2")
book.defined_names.append(DefinedName("Loads", attr_text="'Bob''s list'!$A$1:$A$2"))
book.save(sys.argv[1])
