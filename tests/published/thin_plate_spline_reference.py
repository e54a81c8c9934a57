#!/usr/bin/env python3
"""SciPy's interpolator of the same energy, for thin_plate_spline_scipy_test.cpp.

Usage: thin_plate_spline_reference.py LANDMARKS POINTS OUT SMOOTHING...
LANDMARKS: seven columns, from, to and a smoothing for each; POINTS: three columns; OUT: the warped
points, one set after the other: for each SMOOTHING, then with the smoothing of each landmark, then
so with a shift as the only affine part of the displacement. Status 3 without SciPy.
"""
import sys

import numpy

try:
    from scipy.interpolate import RBFInterpolator
except ImportError:
    sys.exit(3)

landmarks = numpy.loadtxt(sys.argv[1])
points = numpy.loadtxt(sys.argv[2])
sources, targets, each = landmarks[:, :3], landmarks[:, 3:6], landmarks[:, 6]
warped = [RBFInterpolator(sources, targets, kernel="linear", degree=1, smoothing=smoothing)(points)
          for smoothing in [*map(float, sys.argv[4:]), each]]
warped.append(points + RBFInterpolator(sources, targets - sources, kernel="linear", degree=0,
                                       smoothing=each)(points))
numpy.savetxt(sys.argv[3], numpy.concatenate(warped), fmt="%.17g")
