"""The door to the site generator: whole sites into a folder, or single pages of one that is never written."""

from builder.doors.site.build import INDEX, OpenSite, build_site
from builder.doors.site.leave import leave_site

__all__ = ["INDEX", "OpenSite", "build_site", "leave_site"]
