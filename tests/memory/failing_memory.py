"""Runs the console on circuits with each allocation failing in turn.

usage: failing_memory.py PROGRAM SHIM FACTOR FILE...

The n-th allocation fails, n growing by FACTOR from one to the next; with FACTOR 1 every n is tried. Whatever fails, the
program ends by itself: with the whole result and its usual status, or with none, a message, and another status.
"""

import os
import pathlib
import subprocess
import sys
import tempfile

COMMANDS = [["check"], ["nets"], ["parts", "--csv"], ["drive", "--json"]]
STUDY = ["spread", "--count", "3", "--seed", "1"]
FINE, FINDINGS, UNREADABLE, FAILED_ITSELF = 0, 1, 3, 4


def numbers(count: int, factor: float):
    number = 1
    while number <= count:
        yield number
        number = max(number + 1, int(number * factor))


class Program:
    def __init__(self, program: str, shim: str):
        self.program = program
        self.environment = {**os.environ, "LD_PRELOAD": shim, "LC_ALL": "C.UTF-8"}

    def run(self, arguments: list[str], failing: int = -1, count_file: str = "/dev/null"):
        own = {"PUMPWRIGHT_FAILING_ALLOCATION": str(failing), "PUMPWRIGHT_ALLOCATIONS_FILE": count_file}
        return subprocess.run([self.program, *arguments], capture_output=True, timeout=600, env={**self.environment, **own})


def complaint(sound, run) -> str:
    """What is wrong with a run, or nothing."""
    if run.returncode < 0:
        return f"ended by signal {-run.returncode}"
    if run.returncode in (FINE, FINDINGS):
        return "" if (run.returncode, run.stdout) == (sound.returncode, sound.stdout) else "another result than without failure"
    if run.returncode not in (UNREADABLE, FAILED_ITSELF):
        return f"exit status {run.returncode}"
    if not run.stderr.startswith(b"pumpwright: ") and run.returncode == FAILED_ITSELF:
        return "no message"
    return "" if run.stderr and not run.stdout else "a message and half a result"


def main() -> int:
    program = Program(sys.argv[1], sys.argv[2])
    factor = float(sys.argv[3])
    wrong = tried = 0
    jobs = [[command[0], path, *command[1:]] for path in sys.argv[4:] for command in COMMANDS]
    jobs.append([STUDY[0], sys.argv[4], *STUDY[1:]])
    with tempfile.TemporaryDirectory() as folder:
        count_file = pathlib.Path(folder, "count")
        for arguments in jobs:
            sound = program.run(arguments, count_file=str(count_file))
            count = int(count_file.read_text())
            for number in numbers(count, factor):
                tried += 1
                found = complaint(sound, program.run(arguments, number))
                if found:
                    wrong += 1
                    print(f"{' '.join(arguments)}, allocation {number} of {count}: {found}")
    print(f"{tried} runs of {len(jobs)} commands, {wrong} ended otherwise than they must")
    return 0 if wrong == 0 and tried > 0 else 1


if __name__ == "__main__":
    sys.exit(main())
