"""Turns seeds that are kept one a line into files for libFuzzer, or files back into lines.

usage: seed_files.py FOLDER SEEDS...     writes each line of SEEDS (.txt as it is, .hex as bytes) into FOLDER
       seed_files.py --lines FOLDER      prints the files of FOLDER as lines of hexadecimal digits, shortest first
"""

import hashlib
import pathlib
import sys


def lines_of(path: pathlib.Path) -> list[bytes]:
    lines = path.read_bytes().split(b"\n")
    return [bytes.fromhex(line.decode()) for line in lines] if path.suffix == ".hex" else lines


def main() -> None:
    if sys.argv[1] == "--lines":
        contents = {path.read_bytes() for path in pathlib.Path(sys.argv[2]).iterdir()}
        for content in sorted(contents, key=lambda content: (len(content), content)):
            print(content.hex())
        return
    folder = pathlib.Path(sys.argv[1])
    folder.mkdir(parents=True, exist_ok=True)
    for path in map(pathlib.Path, sys.argv[2:]):
        for seed in lines_of(path):
            (folder / hashlib.sha256(seed).hexdigest()[:16]).write_bytes(seed)


if __name__ == "__main__":
    main()
