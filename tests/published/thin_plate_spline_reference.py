#!/usr/bin/env python3
"""SciPy's interpolator of the same energy, for thin_plate_spline_scipy_test.cpp.

Usage: thin_plate_spline_reference.py LANDMARKS POINTS OUT SMOOTHING...
LANDMARKS: six columns, from and to; POINTS: three columns; OUT: the warped points, one set after the
other. Status 3 without SciPy.
"""
import sys

import numpy

try:
    from scipy.interpolate import RBFInterpolator
except ImportError:
    sys.exit(3)

landmarks = numpy.loadtxt(sys.argv[1])
points = numpy.loadtxt(sys.argv[2])
warped = [RBFInterpolator(landmarks[:, :3], landmarks[:, 3:], kernel="linear", degree=1,
                          smoothing=float(smoothing))(points) for smoothing in sys.argv[4:]]
numpy.savetxt(sys.argv[3], numpy.concatenate(warped), fmt="%.17g")
