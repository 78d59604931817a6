"""Reading a workbook back; `xlsx` is the only openpyxl import."""
