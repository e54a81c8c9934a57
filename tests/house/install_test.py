#!/usr/bin/env python3
"""The installed program runs from wherever it was put, with the tables that were put beside it.

Usage: install_test.py CMAKE BUILD_FOLDER VERSION
"""
import subprocess
import sys
import tempfile
import unittest
from pathlib import Path

CMAKE = BUILD = VERSION = None
SOURCE_TABLES = Path(__file__).resolve().parent.parent.parent / "datasets"


class Installed(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        folder = tempfile.TemporaryDirectory()
        cls.addClassCleanup(folder.cleanup)
        cls.prefix = Path(folder.name).resolve() / "a place with blanks"
        subprocess.run([CMAKE, "--install", BUILD, "--prefix", cls.prefix],
                       check=True, capture_output=True)
        cls.program = cls.prefix / "bin" / "endplate"
        cls.tables = cls.prefix / "share" / "endplate"

    def run_program(self, *arguments):
        ran = subprocess.run([self.program, *arguments], capture_output=True, text=True, cwd="/",
                             env={}, stdin=subprocess.DEVNULL)
        return ran.stdout, ran.stderr, ran.returncode

    def test_version(self):
        self.assertEqual(self.run_program("--version"), (f"endplate {VERSION}\n", "", 0))

    def test_every_table_is_there(self):
        shipped = {file.relative_to(SOURCE_TABLES): file.read_bytes()
                   for file in SOURCE_TABLES.rglob("*") if file.is_file()}
        installed = {file.relative_to(self.tables): file.read_bytes()
                     for file in self.tables.rglob("*") if file.is_file()}
        self.assertIn(Path("datapackage.json"), installed)
        self.assertEqual(set(installed), set(shipped))
        self.assertTrue(installed == shipped, "an installed table differs from its source")

    def test_it_reads_the_installed_tables(self):
        if "\n  limb " not in self.run_program("--help")[0]:
            self.skipTest("the program has no command yet that reads a table")
        stdout, stderr, status = self.run_program("limb", "--json")
        self.assertEqual((stderr, status), ("", 0))
        self.assertTrue(stdout)

        # A fault in the installed copy alone is found where it lies.
        table = self.tables / "nerve_tree.csv"
        sound = table.read_bytes()
        table.write_bytes(sound + b'"')
        try:
            stdout, stderr, status = self.run_program("limb", "--json")
        finally:
            table.write_bytes(sound)
        self.assertEqual((stdout, status), ("", 1))
        self.assertIn("nerve_tree.csv", stderr)


if __name__ == "__main__":
    CMAKE, BUILD, VERSION, *rest = sys.argv[1:]
    unittest.main(argv=[sys.argv[0], *rest])
