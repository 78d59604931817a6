"""Saved forecasts and weather records, read into days: the low of the night before, and the high.

A module a format, each recognised by what is in the file: `national` (U.S. National Weather Service,
JSON), `dwml` (the same, XML), `city_page` (Environment Canada, JSON and XML), `open_meteo` (JSON and
CSV), `daily_summaries` (NOAA, CSV) and `table` (copied from a page).  `saved` tells them apart.
Nothing here reaches the network.
"""
