"""New files: what an author begins with, commented in a therapist's words."""
