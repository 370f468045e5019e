"""Marks a row of the example's rope bridges beside its values: beside.py IN FOLDER HOW...; one workbook HOW.xlsx each."""
import os
import sys

import openpyxl
from openpyxl.comments import Comment
from openpyxl.formatting.rule import FormulaRule
from openpyxl.styles import Border, Font, Side


def mark(how):
    book = openpyxl.load_workbook(sys.argv[1])
    sheet = book["Rope bridges"]
    columns = {str(cell.value).rstrip(" *"): cell.column for cell in sheet[1]}
    answer = sheet.cell(2, columns["cover-cut"])

    if how == "comment":
        answer.comment = Comment("CUT 4 mm - WITHDRAW", "ExamDocs")
    elif how == "comment-on-id":
        sheet["A2"].comment = Comment("this one is cut", "A. Elm")
    elif how == "comment-on-date":
        sheet.cell(2, columns["last examined"]).comment = Comment("never examined", "A. Elm")
    elif how == "comment-on-description":
        sheet.cell(2, columns["description"]).comment = Comment("nice rope", "A. Elm")
    elif how == "strike":
        answer.font = Font(strike=True)
    elif how == "strike-row":
        for cell in sheet[2]:
            cell.font = Font(strike=True)
    elif how == "strike-conclusion":
        sheet.cell(2, columns["conclusion"]).font = Font(strike=True)
    elif how == "crossed":
        answer.border = Border(diagonalUp=True, diagonalDown=True, diagonal=Side(style="thick"))
    elif how == "strike-condition":
        sheet.conditional_formatting.add("A2:Z9", FormulaRule(formula=["TRUE"], font=Font(strike=True)))
    elif how == "words":
        words = book.create_sheet("Words")
        words.append(["id", "description", "cover-cut", "cover-cut note", "core-visible", "end-stitch"])
        words.append(["HIDDEN-1", "a bridge", "defect", "cut 4 mm"])
        words.sheet_state = "veryHidden"
    elif how == "words-without-headings":
        words = book.create_sheet("Words")
        words.append([answer.parent["A2"].value, "defect", "cut 4 mm"])
        words.sheet_state = "hidden"
    elif how == "guide":
        book["How to fill this in"].cell(40, 2, f"{sheet['A2'].value}: cut, withdraw")
    elif how == "beyond":
        sheet.cell(2, len(columns) + 3, "cut, withdraw")
    elif how == "below":
        sheet.cell(5000, len(columns) + 3, "BRG-01 cut, withdraw")
    elif how == "hidden":
        answer.value = "defect - cut 4 mm"
        sheet.row_dimensions[2].hidden = True
        sheet.column_dimensions[answer.column_letter].hidden = True
    else:
        raise SystemExit(f"unknown: {how}")
    book.save(os.path.join(sys.argv[2], how + ".xlsx"))


for how in sys.argv[3:]:
    mark(how)
