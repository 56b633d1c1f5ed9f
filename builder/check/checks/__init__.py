"""One check a file; each says what is wrong and where, and nothing else."""
