"""Lists certificates, and refuses with reasons."""
