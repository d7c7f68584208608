"""Holds circuit files against the published schema.

usage: schema_check.py SCHEMA GOOD_FOLDER BAD_FOLDER

Every file in GOOD_FOLDER must be valid, every file in BAD_FOLDER must not be. Prints what is not so, and how many
files were looked at; exit status 0 only if all is as it must be.
"""

import json
import pathlib
import sys

import jsonschema


def main() -> int:
    schema_path, good_folder, bad_folder = map(pathlib.Path, sys.argv[1:])
    schema = json.loads(schema_path.read_text(encoding="utf-8"))
    jsonschema.Draft202012Validator.check_schema(schema)
    validator = jsonschema.Draft202012Validator(schema)
    wrong = 0
    good = sorted(good_folder.iterdir())
    bad = sorted(bad_folder.iterdir())
    for path in good:
        error = next(validator.iter_errors(json.loads(path.read_text(encoding="utf-8"))), None)
        if error:
            wrong += 1
            print(f"{path.name} is refused at {error.json_path}: {error.message[:200]}")
    for path in bad:
        if validator.is_valid(json.loads(path.read_text(encoding="utf-8"))):
            wrong += 1
            print(f"{path.name} is not refused")
    print(f"{len(good)} good and {len(bad)} bad files, {wrong} judged wrongly")
    return 0 if wrong == 0 and good and bad else 1


if __name__ == "__main__":
    sys.exit(main())
