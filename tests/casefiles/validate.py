"""Compares the published JSON Schema with what the reader was seen to refuse.

Usage: validate.py CASE.schema.json GOOD_FOLDER... BROKEN_FOLDER
Prints one line for each disagreement; the exit status tells whether there was one.
"""

import csv
import json
import pathlib
import sys

from jsonschema import Draft202012Validator


def unique(pairs):
    if len({key for key, _ in pairs}) < len(pairs):
        raise ValueError("a key stands twice")
    return dict(pairs)


def refuse(constant):
    raise ValueError(f"{constant} is no JSON value")


def load(path):
    text = path.read_bytes().decode("utf-8")
    return json.loads(text, object_pairs_hook=unique, parse_constant=refuse)


def main():
    schema_path, *good_folders, broken_folder = map(pathlib.Path, sys.argv[1:])
    schema = json.loads(schema_path.read_text())
    Draft202012Validator.check_schema(schema)
    validator = Draft202012Validator(schema, format_checker=Draft202012Validator.FORMAT_CHECKER)
    disagreements = 0
    seen = 0

    def report(path, what):
        nonlocal disagreements
        disagreements += 1
        print(f"{path}: {what}")

    for folder in good_folders:
        for path in sorted(folder.glob("*.json")):
            seen += 1
            for error in validator.iter_errors(load(path)):
                report(path, f"refused at {error.json_path}: {error.message}")
    with open(broken_folder / "index.csv", newline="") as index:
        for row in csv.DictReader(index):
            seen += 1
            path = broken_folder / row["file"]
            try:
                refused = not validator.is_valid(load(path))
            except (ValueError, RecursionError):
                refused = True
            if refused != (row["seen_by"] != "meaning"):
                report(path, "refused" if refused else "accepted")
    print(f"{seen} files, {disagreements} disagreements")
    return 1 if disagreements or seen == 0 else 0


sys.exit(main())
