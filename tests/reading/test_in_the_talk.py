"""Words that may lean on a record: which fields say what record is meant."""

from dataclasses import fields

import pytest

from handlers.reading.acts import Amend, Retract
from handlers.reading.room.inthetalk import NAMING


@pytest.mark.parametrize("kind", [Amend, Retract])
def test_what_names_a_record_is_a_field_of_the_act(kind: type[Amend | Retract]) -> None:
    assert {*NAMING[kind]} <= {field.name for field in fields(kind)}
