"""The functions in LibreOffice Calc: `builder` makes an extension, `addin` is what runs inside LibreOffice.

The names below stand in files that users save: `sheetfuncs.Functions.` before a function's name
is how an `.ods` file calls it.
"""

SERVICE = "sheetfuncs.Functions"
INTERFACE = "sheetfuncs.XFunctions"
