"""What a cell sees: each function's words, units, limits, errors and source, beside its relation."""
