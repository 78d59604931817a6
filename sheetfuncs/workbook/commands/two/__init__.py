"""Two copies of a workbook: `compare` tells what differs, `merge` makes them one."""
