"""What the command line does with workbooks, a module or a folder each."""
