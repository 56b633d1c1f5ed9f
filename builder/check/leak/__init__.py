"""Looking for keys in a finished site: how it reads, what is withheld, and what marks a right answer."""
