"""Reading: the author's files as nouns with places, and everything in them that does not hold."""
