"""Takes what was made out of the tool: one page as a single file, a site as a folder to build elsewhere."""
