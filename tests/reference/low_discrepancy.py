"""sobol.csv: the first 512 points of the Sobol sequence in 32 dimensions, not scrambled.

Source: scipy 1.17.1, scipy.stats.qmc.Sobol (direction numbers of Joe and Kuo 2008,
new-joe-kuo-6). The first point is the origin. Every coordinate is a multiple of 1/512, so
the decimals are exact.
"""

from scipy.stats.qmc import Sobol

from csv_table import write_table

DIMENSIONS = 32
POINTS = 512


def write(directory):
    points = Sobol(d=DIMENSIONS, scramble=False).random(POINTS)
    assert ((points * POINTS) % 1.0 == 0.0).all()
    columns = [f"dimension_{number}" for number in range(1, DIMENSIONS + 1)]
    write_table(directory / "sobol.csv", columns, points.tolist())
