"""The steps by which a record of an earlier edition of the tool is brought up to date."""
