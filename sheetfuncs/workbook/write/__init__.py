"""Writing a workbook; `writer` is the only XlsxWriter import."""
