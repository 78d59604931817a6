"""Relations of water, air, sugar and instruments, in SI units, each with its source.

Every function here takes and returns plain floats (pascals, kilograms, metres, joules,
degrees Celsius, and °Brix as percent by mass) and knows nothing of cells, units of the
yard or blanks.  Each also runs on traced values: it uses the functions of
`sheetfuncs.science.maths` and never `if`, so one definition serves Python and
every spreadsheet.
"""
