"""One step a file, oldest first; a step that was ever released is never changed."""
