"""Forges copies with openpyxl: FOLDER/in.xlsx becomes FOLDER/NUMBER.xlsx; prints the kinds, one a line."""
import sys
from openpyxl import load_workbook
from openpyxl.comments import Comment
from openpyxl.formatting.rule import CellIsRule, FormulaRule
from openpyxl.styles import Alignment, Font, PatternFill
from openpyxl.worksheet.datavalidation import DataValidation

folder = sys.argv[1]
RED = PatternFill(bgColor="FFFFFFFF")


def place(book, name):
    sheet, cell = book.defined_names[name].attr_text.split("!")
    return book[sheet.strip("'")][cell.replace("$", "")]


def look(name, **changes):
    def make(book):
        for key, value in changes.items():
            setattr(place(book, name), key, value)
    return make


def on(sheet, change):
    return lambda book: change(book[sheet])


KINDS = [
    ("openpyxl: a format that says another number", look("Used_CU", number_format='"92.0"')),
    ("openpyxl: a format that shows nothing", look("Used_MAR", number_format=";;;")),
    ("openpyxl: white text", look("Used_CU", font=Font(color="FFFFFFFF"), fill=PatternFill())),
    ("openpyxl: tiny text", look("Used_CU", font=Font(size=1))),
    ("openpyxl: text struck out", look("Used_DU", font=Font(strike=True))),
    ("openpyxl: turned text", look("Used_DU", alignment=Alignment(textRotation=90))),
    ("openpyxl: black on black", look("Used_DU", fill=PatternFill("solid", fgColor="FF000000"))),
    ("openpyxl: a font of signs", look("Used_CU", font=Font(name="Webdings"))),
    ("openpyxl: a hidden row", on("Results", lambda sheet: setattr(sheet.row_dimensions[8], "hidden", True))),
    ("openpyxl: a hidden column", on("Results", lambda sheet: setattr(sheet.column_dimensions["B"], "hidden", True))),
    ("openpyxl: a tiny column", on("Results", lambda sheet: setattr(sheet.column_dimensions["B"], "width", 0.5))),
    ("openpyxl: a hidden sheet", on("Limits", lambda sheet: setattr(sheet, "sheet_state", "hidden"))),
    ("openpyxl: cells merged over figures", on("Results", lambda sheet: sheet.merge_cells("B7:C9"))),
    ("openpyxl: text in an empty cell", on("Results", lambda sheet: sheet.__setitem__("Z90", "CU 92.0"))),
    ("openpyxl: a conditional format", on("Results", lambda sheet: sheet.conditional_formatting.add("B5:B20", FormulaRule(formula=["TRUE"], font=Font(color="FFFFFFFF"))))),
    ("openpyxl: a conditional format by value", on("Results", lambda sheet: sheet.conditional_formatting.add("B5:B20", CellIsRule(operator="greaterThan", formula=["0"], font=Font(color="FFFFFFFF"))))),
    ("openpyxl: only a part printed", on("Results", lambda sheet: setattr(sheet, "print_area", "A1:B3"))),
    ("openpyxl: words in the header", on("Report", lambda sheet: setattr(sheet.oddHeader.center, "text", "CU 92.0"))),
    ("openpyxl: a second Results", lambda book: book.copy_worksheet(book["Results"])),
    ("openpyxl: a label", on("Results", lambda sheet: sheet.__setitem__("A1", "Results, approved"))),
    ("openpyxl: a formula typed over", lambda book: setattr(place(book, "Used_CU"), "value", 92)),
    ("openpyxl: a reading", lambda book: setattr(place(book, "Site_Name"), "value", "Another Nursery")),
    ("openpyxl: untouched but for a comment", on("Results", lambda sheet: setattr(sheet["A1"], "comment", Comment("seen", "officer")))),
]

for number, (kind, make) in enumerate(KINDS):
    book = load_workbook(f"{folder}/in.xlsx")
    make(book)
    book.save(f"{folder}/{number}.xlsx")
    print(kind)
