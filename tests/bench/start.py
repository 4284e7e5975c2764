"""How long a person waits after starting a command: `chat` to its first answer, and `--help`.

What Python has compiled it keeps beside the source and reads the next time, unless it is told not
to; the commands are started as on a person's machine, where it is not.
"""

import asyncio
import os
import sys
import tempfile
import time
from asyncio.subprocess import DEVNULL, PIPE
from pathlib import Path

from tests.bench.measure import Measured, median

TIMES = 9
CHAT_SECONDS, HELP_SECONDS = 0.8, 0.15
_AT_HOME = {name: v for name, v in os.environ.items() if name != "PYTHONDONTWRITEBYTECODE"}


async def measure() -> list[Measured]:
    """Median seconds of each, with Python's own start in the same run."""
    python, to_help, to_answer = [], [], []
    with tempfile.TemporaryDirectory() as folder:
        for number in range(TIMES + 1):
            spent = (
                await _run("-c", "pass"),
                await _run("-m", "bot", "--help"),
                await _first_answer(Path(folder) / f"{number}.db"),
            )
            if number:  # the first one warms the caches of the disk
                python.append(spent[0])
                to_help.append(spent[1])
                to_answer.append(spent[2])
    bare = f"Python alone starts in {median(python):.3f} s"
    return [
        Measured(
            what="chat: start to first answer", value=median(to_answer), unit="s", bar=CHAT_SECONDS
        ),
        Measured(what="--help", value=median(to_help), unit="s", bar=HELP_SECONDS, note=bare),
    ]


async def _run(*given: str) -> float:
    began = time.perf_counter()
    process = await asyncio.create_subprocess_exec(
        sys.executable, *given, stdout=DEVNULL, env=_AT_HOME
    )
    await process.wait()
    return time.perf_counter() - began


async def _first_answer(book: Path) -> float:
    began = time.perf_counter()
    process = await asyncio.create_subprocess_exec(
        *(sys.executable, "-m", "bot", "chat", "--book", str(book)),
        stdin=PIPE,
        stdout=PIPE,
        env=_AT_HOME,
    )
    assert process.stdin
    assert process.stdout
    process.stdin.write(b"added 2 kg scraps to the shed bin\n")
    while "of starter on" not in (await process.stdout.readline()).decode():
        pass
    spent = time.perf_counter() - began
    process.stdin.close()
    await process.wait()
    return spent
