"""`sheetfuncs check`: what was typed, and what became of what is computed."""
