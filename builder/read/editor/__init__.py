"""What an editor is told of every sort of file: its keys, and the names and values that may stand there."""
