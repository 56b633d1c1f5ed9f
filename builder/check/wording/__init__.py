"""How questions read, as words and numbers: what the wording checks share."""
