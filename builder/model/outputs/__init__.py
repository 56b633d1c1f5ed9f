"""The shapes of what is handed out as JSON, described field by field; within a format changes only add."""
