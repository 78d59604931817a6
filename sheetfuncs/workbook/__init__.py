"""The season workbook: sheets as data, laid out, computed, written; and read back."""
