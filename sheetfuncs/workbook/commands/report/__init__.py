"""`sheetfuncs report`."""
