"""A workbook written anew from an older one: `convert` and `handover`."""
