#!/usr/bin/env python3
"""clang-format would leave every C++ file as it is.

Usage: style.py ROOT
The layout depends on the version: this is the one of Debian 12.
"""
import re
import subprocess
import sys
from pathlib import Path

VERSION = "14"


def main():
    root = Path(sys.argv[1]).resolve()
    said = subprocess.run(["clang-format", "--version"], capture_output=True, text=True, check=True)
    version = re.search(r"version (\d+)", said.stdout)[1]
    if version != VERSION:
        print(f"clang-format {version} is here; {VERSION}, the one of Debian 12, is asked for")
        return 1

    files = [str(file) for folder in ("geometry", "models", "src", "ui", "tests")
             for file in sorted((root / folder).rglob("*")) if file.suffix in (".cpp", ".hpp")]
    if not files:
        print(f"{root}: no C++ file here")
        return 1
    run = subprocess.run(["clang-format", "--dry-run", "-Werror", "--style=file", *files],
                         capture_output=True, text=True)
    wrong = sorted(set(re.findall(r"^(.+?):\d+:\d+: error", run.stderr, re.MULTILINE)))
    for file in wrong:
        print(f"{Path(file).relative_to(root)}: not laid out by .clang-format; run scripts/format")
    if run.returncode != 0 and not wrong:
        print(run.stderr)
    if run.returncode == 0:
        print(f"{len(files)} files are laid out by .clang-format.")
    return 1 if run.returncode != 0 else 0


if __name__ == "__main__":
    sys.exit(main())
