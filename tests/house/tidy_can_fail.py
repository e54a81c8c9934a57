#!/usr/bin/env python3
"""The lint fails on a file with a fault and passes without it.

Usage: tidy_can_fail.py FOLDER   (one inside the tree, so that its .clang-tidy holds)
"""
import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent.parent
SOUND = "int twice(int value);\nint twice(int value) { return 2 * value; }\n"
FAULTS = {
    "bugprone-integer-division": "double half(int value);\ndouble half(int value) { return value / 2; }\n",
    "readability-identifier-naming": "int Twice(int value);\nint Twice(int value) { return 2 * value; }\n",
    "cppcoreguidelines-narrowing-conversions":
        "int whole(double value);\nint whole(double value) { return value; }\n",
}


def lint(folder, text):
    file = Path(folder).resolve() / "linted.cpp"
    file.parent.mkdir(parents=True, exist_ok=True)
    file.write_text(text)
    ran = subprocess.run([ROOT / "scripts" / "tidy", file], capture_output=True, text=True)
    return ran.returncode, ran.stdout + ran.stderr


def main():
    status, said = lint(sys.argv[1], SOUND)
    failures = [] if status == 0 else [f"a sound file is refused:\n{said}"]
    for name, text in FAULTS.items():
        status, said = lint(sys.argv[1], text)
        if status == 0 or name not in said:
            failures.append(f"{name} is let through:\n{said}")
    print("\n".join(failures) or "The lint passes a sound file and finds each fault.")
    return 1 if failures else 0


if __name__ == "__main__":
    sys.exit(main())
