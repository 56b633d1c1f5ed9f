"""Takes answer sheets into the record, each exactly once."""
