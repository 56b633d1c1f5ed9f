"""From a judged course to sites: plans of pages, drawings and the look."""
