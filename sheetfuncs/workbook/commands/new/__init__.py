"""`sheetfuncs new`."""
