"""caseloom: from written cases to a judged, taught, graded and recorded course."""

__version__ = "0.1.0"
