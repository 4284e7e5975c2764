"""What the bot says, as the Matrix specification (client-server API 1.19) wants it written."""

from __future__ import annotations

import json
from datetime import UTC, datetime
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.content import CUT_SHORT, event_of
from storage.rows import Message, Waiting


def content(rewrites: str | None = None, **message: Any) -> tuple[str, dict[str, Any]]:
    said = Message(**{"tx_id": "t", "kind": "reply", "body": "Two spoons."} | message)
    at = datetime(2026, 3, 1, tzinfo=UTC)
    return event_of(Waiting(id=1, room="!r", message=said, made_at=at, rewrites_event=rewrites))


PLAIN = {"msgtype": "m.notice", "body": "Two spoons.", "m.mentions": {}}


@pytest.mark.parametrize(
    ("made", "kind", "expected"),
    [
        # "Reactions": m.annotation with the target and the key.
        (
            content(kind="reaction", body="✅", to_event="$e"),
            "m.reaction",
            {"m.relates_to": {"rel_type": "m.annotation", "event_id": "$e", "key": "✅"}},
        ),
        # "Rich replies": no fallback since 1.13.
        (
            content(to_event="$e"),
            "m.room.message",
            PLAIN | {"m.relates_to": {"m.in_reply_to": {"event_id": "$e"}}},
        ),
        (content(kind="greeting"), "m.room.message", PLAIN),
        # "Threading": a real reply within a thread is not falling back.
        (
            content(to_event="$e", thread="$root"),
            "m.room.message",
            PLAIN
            | {
                "m.relates_to": {
                    "rel_type": "m.thread",
                    "event_id": "$root",
                    "is_falling_back": False,
                    "m.in_reply_to": {"event_id": "$e"},
                }
            },
        ),
        # "Event replacements": the new content whole, and a fallback marked with "* ".
        (
            content(rewrites="$answer", to_event="$e"),
            "m.room.message",
            PLAIN
            | {
                "body": "* Two spoons.",
                "m.new_content": PLAIN,
                "m.relates_to": {"rel_type": "m.replace", "event_id": "$answer"},
            },
        ),
        # "m.notice" and push rules: what is to reach a person is no notice.
        (
            content(kind="digest", mentions=("@ines:x",)),
            "m.room.message",
            PLAIN | {"msgtype": "m.text", "m.mentions": {"user_ids": ["@ines:x"]}},
        ),
    ],
    ids=["mark", "reply", "greeting", "in a thread", "edit", "reminder"],
)
def test_written_as_specified(
    made: tuple[str, dict[str, Any]], kind: str, expected: dict[str, Any]
) -> None:
    assert made == (kind, expected)


def test_what_people_wrote_is_escaped() -> None:
    _, made = content(body='<b onclick="x">Rosemary</b> & co\nis full.')
    assert made["body"] == '<b onclick="x">Rosemary</b> & co\nis full.'
    assert made["formatted_body"] == (
        '&lt;b onclick="x"&gt;Rosemary&lt;/b&gt; &amp; co<br>is full.'
    )


def test_an_edit_pings_nobody_a_second_time() -> None:
    _, made = content(rewrites="$answer", mentions=("@ines:x",))
    assert made["m.mentions"] == {}
    assert made["m.new_content"]["m.mentions"] == {"user_ids": ["@ines:x"]}


@given(
    st.text(min_size=1, max_size=20).flatmap(lambda t: st.just(t * 4000)),
    st.sampled_from([None, "$answer"]),
)
def test_what_is_too_long_for_an_event_is_cut_short(body: str, rewrites: str | None) -> None:
    """An event has at most 65,536 bytes ("Size limits"), and Megolm's base64 adds a third."""
    _, made = content(rewrites=rewrites, body=body, to_event="$e")
    assert len(json.dumps(made).encode()) * 4 / 3 < 60_000
    if len(body) > 40_000:
        assert made["body"].endswith(CUT_SHORT)


@pytest.mark.parametrize("body", ["tell @room", "@Room\n@ROOM: dirty lids"])
@pytest.mark.parametrize("rewrites", [None, "$before"])
@pytest.mark.parametrize("kind", ["reply", "digest", "file"])
def test_no_message_calls_the_whole_room(body: str, rewrites: str | None, kind: str) -> None:
    _, made = content(rewrites, body=body, kind=kind)
    assert made["m.mentions"] == {}
    assert "@room" not in json.dumps(made).casefold()
