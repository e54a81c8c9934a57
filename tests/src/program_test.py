#!/usr/bin/env python3
"""The program from outside: help, version and wrong arguments, each with the whole standard output,
the whole standard error and the exit status.

Usage: program_test.py PROGRAM VERSION [--write]
--write lays down what the program prints now as what is expected of its help (look at the change
before you commit it).
"""
import os
import re
import subprocess
import sys
import unittest
from pathlib import Path

HELP = Path(__file__).resolve().parent / "help"
PROGRAM = VERSION = None


def run(*arguments):
    # A bare environment, away from the tree: neither may matter.
    return subprocess.run([PROGRAM, *arguments], capture_output=True, text=True, cwd="/",
                          env={"PATH": os.environ["PATH"]}, stdin=subprocess.DEVNULL)


def commands():
    """The commands that --help lists."""
    listed = run("--help").stdout.partition("Subcommands:")[2]
    return re.findall(r"^  (\S+)", listed, re.MULTILINE)


def pages():
    """File name to the arguments that print this page of help."""
    return {"endplate.txt": ["--help"]} | {f"{c}.txt": [c, "--help"] for c in commands()}


class Program(unittest.TestCase):
    maxDiff = None

    def answers(self, arguments, stdout):
        ran = run(*arguments)
        self.assertEqual((ran.stdout, ran.stderr, ran.returncode), (stdout, "", 0))

    def refuses(self, arguments, stderr):
        ran = run(*arguments)
        self.assertEqual((ran.stdout, ran.stderr, ran.returncode), ("", stderr, 2))

    def test_help(self):
        for name, arguments in pages().items():
            with self.subTest(" ".join(arguments)):
                page = HELP / name
                self.assertTrue(page.exists(), f"no page for it: run {__file__} PROGRAM VERSION --write")
                self.answers(arguments, page.read_text())

    def test_no_page_of_help_is_left_over(self):
        self.assertEqual({page.name for page in HELP.iterdir()}, set(pages()))

    def test_help_fits_a_terminal(self):
        for arguments in pages().values():
            for line in run(*arguments).stdout.splitlines():
                self.assertLessEqual(len(line), 100, line)

    def test_version(self):
        self.answers(["--version"], f"endplate {VERSION}\n")
        for command in commands():
            with self.subTest(command):
                self.answers([command, "--version"], f"endplate {VERSION}\n")

    def test_wrong_arguments(self):
        see = "See endplate --help.\n"
        self.refuses([], f"error: arguments: A subcommand is required. {see}")
        self.refuses(["no-such-command"], f"error: arguments: A subcommand is required. {see}")
        for command in commands():
            with self.subTest(command):
                for option, value in (("--samples", "7"), ("--seed", "x"), ("--today", "2026-02-30")):
                    ran = run(command, option, value)
                    self.assertEqual((ran.stdout, ran.returncode), ("", 2), option)
                    self.assertRegex(ran.stderr, rf"\Aerror: arguments: .*{option}.* {see}\Z")


if __name__ == "__main__":
    PROGRAM, VERSION, *rest = sys.argv[1:]
    PROGRAM = Path(PROGRAM).resolve()
    if rest == ["--write"]:
        HELP.mkdir(exist_ok=True)
        for old in HELP.iterdir():
            old.unlink()
        for name, arguments in pages().items():
            (HELP / name).write_text(run(*arguments).stdout)
        sys.exit(0)
    unittest.main(argv=[sys.argv[0], *rest])
