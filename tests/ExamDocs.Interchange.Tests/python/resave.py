"""Opens a workbook with openpyxl and saves it again under another name."""
import sys

import openpyxl

openpyxl.load_workbook(sys.argv[1]).save(sys.argv[2])
