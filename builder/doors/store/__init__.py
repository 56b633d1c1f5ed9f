"""The record: one database file per provider, on the private side."""
