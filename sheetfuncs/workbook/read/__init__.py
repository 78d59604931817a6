"""Reading a workbook back; `cells` is the only openpyxl import."""
