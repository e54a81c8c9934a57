#!/usr/bin/env python3
"""What a file of the tree may look like: its length, where it lies, and no word of any machine.

Usage: tree.py ROOT
Prints one line a breach, "FILE:LINE: WHAT", and ends with status 1 if there is any. A file of more
than 400 lines is only remarked on.
"""
import re
import sys
from pathlib import Path

LONG = 400
TOO_LONG = 800
TOP = {"src", "geometry", "models", "ui", "tests", "datasets", "docs", "scripts"}
SKIPPED = {".git", "build", ".cache", "__pycache__"}
CODE = {".cpp", ".hpp", ".py", ".sh", ".cmake", ".R", ".r"}
BINARY = {".png", ".jpg", ".pdf", ".glb", ".stl", ".ply", ".woff2"}

# Each is written so that it does not match itself.
MACHINE = {
    "a path of one machine": re.compile(
        r"(?<![\w.~}$*)/-])/(?:home|root|work|tmp|mnt|Users|var/tmp|private)/\w"),
    "a home folder": re.compile(r"(?<!\w)~[/]\w"),
    "an address of a private network": re.compile(
        r"(?<![\d.])(?:10\.\d+|192\.168|172\.(?:1[6-9]|2\d|3[01]))\.\d+\.\d+(?![\d.])"),
    "the host of a package registry": re.compile(
        r"\b(?:deb|security|snapshot)\.debian[.]org|registry\.npmjs[.]org|\bpypi[.]org"
        r"|pythonhosted[.]org|\bcran\.r-project[.]org|proxy\.golang[.]org|archive\.ubuntu[.]com"
        r"|\w+-docker\.pkg[.]dev|index\.crates[.]io", re.IGNORECASE),
}


def files(root):
    for path in sorted(root.iterdir()):
        if path.name in SKIPPED:
            continue
        if path.is_dir():
            yield from files(path)
        else:
            yield path


def is_code(file):
    if file.suffix:
        return file.suffix in CODE or file.name == "CMakeLists.txt"
    return file.parent.name in ("scripts", ".ci")


def breaches(root, remarks):
    for entry in sorted(root.iterdir()):
        if entry.is_dir() and not entry.name.startswith(".") and entry.name not in TOP | SKIPPED:
            yield f"{entry.name}: no such folder in the house; see DEVELOPERS.md"
    here = str(root)
    for file in files(root):
        if file.suffix in BINARY or not file.is_file():
            continue
        name = file.relative_to(root)
        text = file.read_bytes().decode(errors="replace")
        lines = text.splitlines()
        if is_code(file):
            if len(lines) > TOO_LONG:
                yield f"{name}: {len(lines)} lines, at most {TOO_LONG}; split it by subject"
            elif len(lines) > LONG:
                remarks.append(f"remark: {name}: {len(lines)} lines, more than {LONG}")
        if name == Path("LICENSE"):
            continue
        if is_code(file) and "\r" in text:
            yield f"{name}: carriage returns; end lines with a newline alone"
        for number, line in enumerate(lines, 1):
            if is_code(file) and line != line.rstrip():
                yield f"{name}:{number}: blanks at the end of the line"
            for what, pattern in MACHINE.items():
                if found := pattern.search(line):
                    yield f"{name}:{number}: {what} ({found[0]})"
            if len(here) > 8 and here in line:
                yield f"{name}:{number}: the path of this very tree"


def main():
    remarks = []
    found = list(breaches(Path(sys.argv[1]).resolve(), remarks))
    print("\n".join([*remarks, *found] if found else [*remarks, "Every file is as the house has it."]))
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main())
