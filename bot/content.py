"""What the bot says, as Matrix room events (client-server specification 1.19)."""

import html
import json
import re
from dataclasses import replace
from typing import Any

from storage.rows import Waiting

Content = dict[str, Any]

FILES = {"file": "m.file", "picture": "m.image"}
"""What is posted with a file; its words are the caption."""


LARGEST = 40_000
"""Characters of JSON in an event: 64 KiB is the most a homeserver takes, and encryption adds."""
CUT_SHORT = "… (the rest is too long to say here)"


_CALL = re.compile(r"@(?=room\b)", re.IGNORECASE)
"""What would call everybody: whatever it came from, the bot never does."""


def event_of(row: Waiting) -> tuple[str, Content]:
    """Event type and content of a message of the outbox; cut short where it is too long for one."""
    kind, content = _event_of(row)
    body = row.message.body
    while len(json.dumps(content)) > LARGEST:
        body = body[: len(body) // 2]
        shorter = replace(row.message, body=f"{body}\n{CUT_SHORT}")
        kind, content = _event_of(replace(row, message=shorter))
    return kind, content


def _event_of(row: Waiting) -> tuple[str, Content]:
    message = row.message
    if message.kind == "reaction":
        relation = {"rel_type": "m.annotation", "event_id": message.to_event, "key": message.body}
        return "m.reaction", {"m.relates_to": relation}
    said = _said(row)
    if row.rewrites_event is None:
        relation = _relation(row)
        return "m.room.message", {**said, "m.relates_to": relation} if relation else said
    return "m.room.message", _edit(said, row.rewrites_event)


def _said(row: Waiting) -> Content:
    message = row.message
    # A notice notifies nobody: what must reach people is said as a person would say it.
    is_for_people = message.mentions or message.kind in ("digest", "reminder")
    kind = "m.text" if is_for_people else "m.notice"
    body = _CALL.sub("@ ", message.body)
    said: Content = {"msgtype": FILES.get(message.kind, kind), "body": body}
    if "\n" in body:
        said["format"] = "org.matrix.custom.html"
        said["formatted_body"] = html.escape(body, quote=False).replace("\n", "<br>")
    # Always there, or older rules would have a name in the text ping its bearer.
    said["m.mentions"] = {"user_ids": list(message.mentions)} if message.mentions else {}
    return said


def _relation(row: Waiting) -> Content:
    message = row.message
    reply = {"m.in_reply_to": {"event_id": message.to_event}} if message.to_event else {}
    if message.thread is None:
        return reply
    return {"rel_type": "m.thread", "event_id": message.thread, "is_falling_back": False} | reply


def _edit(said: Content, target: str) -> Content:
    edit: Content = {
        **said,
        "body": f"* {said['body']}",
        # Nobody is called a second time.
        "m.mentions": {},
        "m.new_content": said,
        "m.relates_to": {"rel_type": "m.replace", "event_id": target},
    }
    if "formatted_body" in said:
        edit["formatted_body"] = f"* {said['formatted_body']}"
    return edit
