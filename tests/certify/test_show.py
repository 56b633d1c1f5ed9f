"""What certifying says on the terminal."""

from builder.certify.rows import CERTIFICATE_COLUMNS, REFUSED_COLUMNS
from builder.certify.show import lines
from builder.model.outcome import Issued

GIVEN = {
    "certificate": "00001",
    "name": "Ann",
    "hours": "6.00",
    "hour unit": "clock hours",
    "kind": "achievement",
    "status": "issued",
}


def test_certificates_and_refusals_each_have_a_line() -> None:
    """A person refused for two reasons counts once and is told both."""
    row = dict.fromkeys(CERTIFICATE_COLUMNS, "") | GIVEN
    refused = dict.fromkeys(REFUSED_COLUMNS, "") | {"name": "Ben", "code": "B", "requirement": "test final"}
    both = (refused | {"reason": "Half."}, refused | {"reason": "Late."})
    issued = Issued(klass="spring", certificates=(row,), refused=both, fresh=("00001",))
    assert lines(issued) == [
        "Class spring: 1 on the certificate list, 1 refused.",
        "  00001      Ann: 6.00 (clock hours), achievement, issued",
        "  refused    Ben: test final: Half.",
        "  refused    Ben: test final: Late.",
    ]
