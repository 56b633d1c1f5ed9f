"""One module for each outside thing; nothing else imports it."""
