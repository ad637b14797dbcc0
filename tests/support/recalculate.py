"""Calculates workbooks in a LibreOffice that runs: reads {port, logical, jobs} as JSON, answers {logical, found}.

A job opens a file, or types values into the one that is open, each [sheet, column, row, lines of values]; "areas" are
the sheets' areas to be read, each [sheet, column, row, last column, last row]. Errors come as {"error": name}.
"logical" says of formulas that gave 1 or 0 whether they show TRUE or FALSE: those of a column that differ in places only
are alike.
"""

import json
import os
import re
import sys

import uno
from com.sun.star.beans import PropertyValue

NAMES = {519: "#VALUE!", 524: "#REF!", 525: "#NAME?", 532: "#DIV/0!", 32767: "#N/A"}
PLACE = re.compile(r"\$?[A-Z]{1,3}\$?\d+")
UNSURE = (None, 0, 1)  # an error or nothing, FALSE or 0, TRUE or 1
JOB = json.load(sys.stdin)
LOGICAL = JOB["logical"]

context = uno.getComponentContext()
resolver = context.ServiceManager.createInstanceWithContext("com.sun.star.bridge.UnoUrlResolver", context)
office = resolver.resolve(f"uno:socket,host=127.0.0.1,port={JOB['port']},tcpNoDelay=1;urp;StarOffice.ComponentContext")
desktop = office.ServiceManager.createInstanceWithContext("com.sun.star.frame.Desktop", office)
hidden = PropertyValue()
hidden.Name, hidden.Value = "Hidden", True


class Open:
    """The workbook that is open."""

    def __init__(self, address):
        self.document = desktop.loadComponentFromURL(address, "_blank", 0, (hidden,))
        self.sheets = {name: self.document.Sheets.getByName(name) for name in self.document.Sheets.ElementNames}
        for sheet in self.sheets.values():
            sheet.unprotect("")
        self.formulas = {}

    def type(self, name, column, row, lines):
        area = self.sheets[name].getCellRangeByPosition(column, row, column + len(lines[0]) - 1, row + len(lines) - 1)
        area.setDataArray(tuple(tuple("" if value is None else value for value in line) for line in lines))

    def formula(self, area, i, j):
        if area not in self.formulas:
            self.formulas[area] = self.cells(area).getFormulaArray()
        return f"{area[0]} {area[1] + j} {PLACE.sub('', self.formulas[area][i][j])}"

    def cells(self, area):
        return self.sheets[area[0]].getCellRangeByPosition(*area[1:])

    def value(self, area, i, j, found):
        cell = lambda: self.cells(area).getCellByPosition(j, i)
        if found is None:
            code = cell().getError()
            return {"error": NAMES.get(code, "#NUM!" if 501 < code < 504 else f"Err:{code}")} if code else None
        formula = self.formula(area, i, j)
        if formula not in LOGICAL:
            LOGICAL[formula] = cell().getString() in ("TRUE", "FALSE")
        return bool(found) if LOGICAL[formula] else found

    def read(self, area):
        return [
            [found if found not in UNSURE else self.value(area, i, j, found) for j, found in enumerate(line)]
            for i, line in enumerate(self.cells(area).getDataArray())
        ]


book = None
answer = []
for job in JOB["jobs"]:
    if "open" in job:
        if book:
            book.document.close(True)
        book = Open(job["open"])
    for block in job["type"]:
        book.type(*block)
    book.document.calculateAll()
    answer.append([book.read(tuple(area)) for area in job["areas"]])
if book:
    book.document.close(True)
sys.stdout.write(json.dumps({"logical": LOGICAL, "found": answer}))
sys.stdout.flush()
os._exit(0)  # the bridge to the office can crash while Python takes its parts down
