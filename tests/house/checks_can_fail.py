#!/usr/bin/env python3
"""Each check of the house fails on a tree that breaks its rule, and only then.

Usage: checks_can_fail.py [-v]
"""
import subprocess
import sys
import tempfile
import unittest
from pathlib import Path

HERE = Path(__file__).resolve().parent
LAYOUT = (HERE.parent.parent / ".clang-format").read_text()
SOUND = {
    ".clang-format": LAYOUT,
    "geometry/curve.hpp": "#pragma once\n#include <Eigen/Core>\n",
    "geometry/curve.cpp": '#include "geometry/curve.hpp"\n\n#include <CGAL/Simple_cartesian.h>\n',
    "geometry/CMakeLists.txt": "# never endplate::models\ntarget_link_libraries(g CGAL::CGAL)\n",
    "models/limb/limb.hpp": '#pragma once\n#include "geometry/curve.hpp"\n',
    "src/output/table.hpp": "#pragma once\n",
    "src/program.cpp": '#include "models/limb/limb.hpp"\n#include "output/table.hpp"\n',
    "tests/limb_test.cpp": '#include "models/limb/limb.hpp"\n',
}


def complaints(check, changes):
    """What `check` prints of the sound tree with `changes` (a path to its text) laid over it."""
    with tempfile.TemporaryDirectory() as folder:
        for path, text in (SOUND | changes).items():
            file = Path(folder) / path
            file.parent.mkdir(parents=True, exist_ok=True)
            file.write_text(text)
        run = subprocess.run([sys.executable, "-B", HERE / check, folder],
                             capture_output=True, text=True)
    return run.returncode, run.stdout + run.stderr


class Checks(unittest.TestCase):
    def passes(self, check, changes=None):
        status, said = complaints(check, changes or {})
        self.assertEqual(status, 0, said)
        return said

    def fails(self, check, path, text, words):
        status, said = complaints(check, {path: text})
        self.assertEqual(status, 1, f"{check} lets this through in {path}:\n{text[:200]}\n{said}")
        self.assertIn(words, said)
        self.assertIn(path.split("/")[0], said)

    def test_a_sound_tree_passes(self):
        for check in ("layers.py", "tree.py", "style.py"):
            with self.subTest(check):
                self.passes(check)

    def test_an_empty_tree_does_not_pass(self):
        with tempfile.TemporaryDirectory() as folder:
            for check in ("layers.py", "style.py"):
                run = subprocess.run([sys.executable, "-B", HERE / check, folder], capture_output=True)
                self.assertEqual(run.returncode, 1, check)

    def test_layers(self):
        rules = [
            ("geometry/bad.cpp", "#include <QString>\n", "geometry includes Qt"),
            ("geometry/bad.cpp", "#include <QtCore/qglobal.h>\n", "geometry includes Qt"),
            ("geometry/bad.cpp", "#include <qwidget.h>\n", "geometry includes Qt"),
            ("models/limb/bad.cpp", "#include <QPointF>\n", "models includes Qt"),
            ("models/limb/bad.cpp", "  #  include <vtkPolyData.h>\n", "models includes VTK"),
            ("geometry/bad.cpp", "#include <vtk/vtkPoints.h>\n", "geometry includes VTK"),
            ("geometry/bad.hpp", "#include <CGAL/AABB_tree.h>\n", "a header includes CGAL"),
            ("models/limb/bad.hpp", "#include <CGAL/AABB_tree.h>\n", "a header includes CGAL"),
            ("src/bad.hpp", "#include <CGAL/AABB_tree.h>\n", "a header includes CGAL"),
            ("tests/bad.hpp", "#include <CGAL/AABB_tree.h>\n", "a header includes CGAL"),
            ("src/bad.hpp", "#include <vtkPoints.h>\n", "a header includes VTK"),
            ("ui/bad.h", "#include <vtkPoints.h>\n", "a header includes VTK"),
            ("geometry/bad.cpp", '#include "models/limb/limb.hpp"\n', "geometry includes models"),
            ("geometry/bad.cpp", '#include "../models/limb/limb.hpp"\n', "geometry includes models"),
            ("geometry/bad.cpp", '#include "models/not_there.hpp"\n', "geometry includes models"),
            ("geometry/bad.cpp", '#include "output/table.hpp"\n', "geometry includes src"),
            ("models/limb/bad.cpp", '#include "src/output/table.hpp"\n', "models includes src"),
            ("models/limb/bad.cpp", '#include "output/table.hpp"\n', "models includes src"),
            ("models/limb/bad.cpp", '#include "ui/window.hpp"\n', "models includes ui"),
            ("src/bad.cpp", '#include "ui/window.hpp"\n', "src includes ui"),
            ("src/bad.cpp", '#include "tests/helper.hpp"\n', "src includes tests"),
            ("geometry/CMakeLists.txt", "target_link_libraries(g endplate::models)\n", "links"),
            ("models/CMakeLists.txt", "target_link_libraries(m Qt6::Core)\n", "links"),
            ("models/CMakeLists.txt", "target_link_libraries(m endplate_cli)\n", "links"),
        ]
        for path, text, words in rules:
            with self.subTest(path=path, text=text):
                self.fails("layers.py", path, text, words)

    def test_what_the_layers_allow(self):
        self.passes("layers.py", {
            "src/scene/scene.cpp": "#include <vtkPoints.h>\n",
            "ui/window.hpp": '#pragma once\n#include <QMainWindow>\n#include "src/output/table.hpp"\n',
            "models/limb/limb.cpp": "#include <Quantity/not_qt.hpp>\n// #include <QString>\n",
        })

    def test_tree(self):
        rules = [
            ("src/long.cpp", "int x;\n" * 801, "801 lines"),
            ("scripts/long", "true\n" * 801, "801 lines"),
            ("src/path.cpp", 'auto p = "' + "/" + 'home/someone/x";\n', "a path of one machine"),
            ("docs/path.md", "see " + "/" + "work/x\n", "a path of one machine"),
            ("scripts/path", "rm -r " + "/" + "tmp/x\n", "a path of one machine"),
            ("docs/path.md", "see ~" + "/x\n", "a home folder"),
            ("docs/address.md", "ask 192.168" + ".1.7\n", "an address of a private network"),
            ("scripts/host", "echo http://deb.debian" + ".org/debian\n", "a package registry"),
            ("src/crlf.cpp", "int x;\r\n", "carriage returns"),
            ("src/blank.cpp", "int x; \n", "blanks at the end"),
            ("helpers/a.cpp", "int x;\n", "no such folder"),
        ]
        for path, text, words in rules:
            with self.subTest(path=path):
                self.fails("tree.py", path, text, words)

    def test_a_long_file_is_remarked_on(self):
        self.assertIn("remark: src/long.cpp: 401 lines",
                      self.passes("tree.py", {"src/long.cpp": "int x;\n" * 401}))

    def test_what_a_file_may_hold(self):
        self.passes("tree.py", {
            "datasets/sources.csv": "https://example.org/home/page,10.1302/0301-620X.101B\n",
            "docs/install.md": "share/endplate, build/release/bin, --prefix $HOME/endplate, v1.10.1.2\n",
        })

    def test_style(self):
        for path in ("geometry/bad.cpp", "src/bad.hpp", "tests/bad.cpp", "ui/bad.cpp"):
            with self.subTest(path=path):
                self.fails("style.py", path, "int   f( int a ){return a;}\n", "run scripts/format")


if __name__ == "__main__":
    unittest.main()
