"""What a workbook is made of: records, kinds of cell, formulas, places."""
