"""What an answer earns: named policies, each with its source, in exact fractions."""
