"""Where the functions run: each host is a loop over the catalogue."""
