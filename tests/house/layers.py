#!/usr/bin/env python3
"""The house has one direction: geometry <- models <- src <- ui, and nothing points back.

Usage: layers.py ROOT
Prints one line a breach, "FILE:LINE: WHAT", and ends with status 1 if there is any.
"""
import re
import sys
from pathlib import Path

# A folder may include what stands before it.
LAYERS = ["geometry", "models", "src", "ui"]
SOURCES = {".cpp", ".hpp", ".cc", ".cxx", ".hh", ".hxx", ".h", ".c", ".ipp", ".inl"}
HEADERS = SOURCES - {".cpp", ".cc", ".cxx", ".c"}
INCLUDE = re.compile(r'^\s*#\s*(?:include|include_next|import)\s*[<"]([^>"]+)[>"]')
QT = re.compile(r"(^|/)(Qt?[A-Z]\w*)(\.h|/|$)|^q\w+\.h$")
VTK = re.compile(r"(^|/)vtk", re.IGNORECASE)
CGAL = re.compile(r"^CGAL(/|$)")
# Words of a CMakeLists.txt that link a later layer or a screen.
TARGETS = {
    "geometry": re.compile(r"\bendplate(::|_)(models|cli|desk|ui)\b|\bQt[56]?::|\bVTK::"),
    "models": re.compile(r"\bendplate(::|_)(cli|desk|ui)\b|\bQt[56]?::|\bVTK::"),
    "src": re.compile(r"\bendplate(::|_)(desk|ui)\b"),
}


def folder_of(root, file, included):
    """The top folder that an include reaches, or None for a library's header."""
    for start in (file.parent, root, root / "src"):
        target = (start / included).resolve()
        if target.is_file() and target.is_relative_to(root):
            return target.relative_to(root).parts[0]
    named = [part for part in Path(included).parts if part != ".."]
    return named[0] if len(named) > 1 and named[0] in [*LAYERS, "tests"] else None


def breaches_of_include(root, file, included):
    layer = file.relative_to(root).parts[0]
    if layer in ("geometry", "models"):
        if QT.search(included):
            yield f"{layer} includes Qt ({included})"
        if VTK.search(included):
            yield f"{layer} includes VTK ({included})"
    if file.suffix in HEADERS:
        if CGAL.search(included):
            yield f"a header includes CGAL ({included}); keep it in the .cpp"
        if VTK.search(included):
            yield f"a header includes VTK ({included}); keep it in the .cpp"
    reached = folder_of(root, file, included)
    if layer in LAYERS and reached in LAYERS and LAYERS.index(reached) > LAYERS.index(layer):
        yield f"{layer} includes {reached} ({included})"
    if layer in LAYERS and reached == "tests":
        yield f"{layer} includes tests ({included})"


def breaches(root):
    looked_at = 0
    for layer in [*LAYERS, "tests"]:
        for file in sorted((root / layer).rglob("*")):
            name = file.relative_to(root)
            if file.suffix in SOURCES:
                looked_at += 1
                for number, line in enumerate(file.read_text(errors="replace").splitlines(), 1):
                    if include := INCLUDE.match(line):
                        for breach in breaches_of_include(root, file, include[1]):
                            yield f"{name}:{number}: {breach}"
            elif file.name == "CMakeLists.txt" and layer in TARGETS:
                for number, line in enumerate(file.read_text().splitlines(), 1):
                    if link := TARGETS[layer].search(line.split("#")[0]):
                        yield f"{name}:{number}: {layer} links {link[0]}"
    if looked_at == 0:
        yield f"{root}: no source file here"


def main():
    found = list(breaches(Path(sys.argv[1]).resolve()))
    print("\n".join(found) if found else "Every include and link points the right way.")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main())
