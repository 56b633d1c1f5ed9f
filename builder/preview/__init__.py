"""Preview: a course beside the editor, built anew in memory with every save, on this machine alone."""
