"""`sheetfuncs carry`: the functions defined as names in a workbook of one's own."""
