"""The functions as program text, from the same trace as a LAMBDA: plain VBA for Excel, JavaScript for the others.

`statements` turns a traced function into assignments and checks; `vba` and `javascript` say how
their language writes these; `sheets` and `office` are the two places where the JavaScript runs.
"""
