"""The ladder of SweepBenchmark in numpy and scipy: the same frames, load cases, forces and stresses.

Written as one would for speed: what does not change with the stocks is worked out once, beams are
treated all together, the band matrices are solved by LAPACK's pbsv through scipy.
Prints microseconds a frame and, for each of the four walls, the sum that the Java benchmark returns.
"""
import sys
import timeit

import numpy as np
from scipy.linalg import solveh_banded

from ladder import rounded

STATIONS, LENGTH, WIDTH, E, NU = 12, 2.75, 0.62, 210e9, 0.3
RUNGS = (0, 2, 4, 6, 9, 11)
CASES, SPRING = 8, 1e8
WALLS = (0.002, 0.0025, 0.003, 0.004)


def tube(height, width, wall):
    """EN 10219-2 Annex B: corner radii 2t and t up to 6 mm. A, Iy, Iz, It, Wy, Wz."""
    ro, ri = 2 * wall, wall
    area, iy, iz = rounded(height, width, ro) - rounded(height - 2 * wall, width - 2 * wall, ri)
    mid = (ro + ri) / 2
    around = 2 * ((width - wall) + (height - wall)) - 2 * mid * (4 - np.pi)
    inside = (width - wall) * (height - wall) - mid**2 * (4 - np.pi)
    it = wall**3 * around / 3 + 4 * inside**2 * wall / around
    return np.array([area, iy, iz, it, 2 * iy / height, 2 * iz / width])


class Plan:
    """Node 2i is on the right rail, 2i + 1 on the left: half-bandwidth 8."""

    def __init__(self):
        x = -LENGTH * np.arange(STATIONS) / (STATIONS - 1)
        nodes = np.empty((2 * STATIONS, 2))
        nodes[0::2, 0] = nodes[1::2, 0] = x
        nodes[0::2, 1], nodes[1::2, 1] = -WIDTH / 2, WIDTH / 2
        beams = []
        for i in range(STATIONS - 1):
            beams += [(2 * i, 2 * i + 2), (2 * i + 1, 2 * i + 3)]
        self.rails = len(beams)
        beams = np.array(beams + [(2 * i, 2 * i + 1) for i in RUNGS])
        along = nodes[beams[:, 1]] - nodes[beams[:, 0]]
        self.length = np.hypot(along[:, 0], along[:, 1])
        c, s = along[:, 0] / self.length, along[:, 1] / self.length
        turn = np.zeros((len(beams), 6, 6))
        turn[:, 0, 0] = turn[:, 1, 1] = turn[:, 3, 3] = turn[:, 4, 4] = c
        turn[:, 0, 1] = turn[:, 3, 4] = s
        turn[:, 1, 0] = turn[:, 4, 3] = -s
        turn[:, 2, 2] = turn[:, 5, 5] = 1
        # In plane the motions of a node are (u, v, turn about z); out of it (turn x, turn y, w).
        self.turn = turn
        self.freedoms = (3 * beams[:, :, None] + np.arange(3)).reshape(len(beams), 6)
        rows, columns = np.meshgrid(np.arange(6), np.arange(6), indexing="ij")
        i = self.freedoms[:, rows.ravel()]
        j = self.freedoms[:, columns.ravel()]
        self.low = i >= j
        self.places = (i - j)[self.low] * 6 * STATIONS + j[self.low]
        self.in_plane, self.out_of_plane = self.loads()

    @staticmethod
    def loads():
        a, b = np.zeros((6 * STATIONS, CASES)), np.zeros((6 * STATIONS, CASES))
        part = np.arange(CASES) + 1.0
        a[0], a[1], b[2] = -1000 * part, 500, 300 * part
        a[3], a[4], b[5] = -200 * part, 100 * part, -700
        a[32] = 20
        b[30], b[31], b[32] = 40 * part, 30, -900
        return a, b

    def band(self, stiffness):
        band = np.bincount(self.places, stiffness.reshape(len(stiffness), 36)[self.low], 9 * 6 * STATIONS)
        band = band.reshape(9, 6 * STATIONS)
        band[0, -6:] += SPRING
        return band


def bending(k, shift, turn, ei, length, sign):
    for a in (0, 3):
        k[:, shift + a, shift + a] = 12 * ei / length**3
        k[:, turn + a, turn + a] = 4 * ei / length
        k[:, shift, turn + a] = k[:, turn + a, shift] = sign * 6 * ei / length**2
        k[:, shift + 3, turn + a] = k[:, turn + a, shift + 3] = -sign * 6 * ei / length**2
    k[:, shift, shift + 3] = k[:, shift + 3, shift] = -12 * ei / length**3
    k[:, turn, turn + 3] = k[:, turn + 3, turn] = 2 * ei / length


def straight(k, at, stiffness):
    k[:, at, at] = k[:, at + 3, at + 3] = stiffness
    k[:, at, at + 3] = k[:, at + 3, at] = -stiffness


def answer(plan, rail, rung):
    stock = np.empty((len(plan.length), 6))
    stock[: plan.rails], stock[plan.rails :] = rail, rung
    area, iy, iz, it, wy, wz = stock.T
    length = plan.length
    k = np.zeros((2, len(length), 6, 6))
    straight(k[0], 0, E * area / length)
    bending(k[0], 1, 2, E * iz, length, 1)
    straight(k[1], 0, E / (2 * (1 + NU)) * it / length)
    bending(k[1], 2, 1, E * iy, length, -1)
    in_frame = plan.turn.transpose(0, 2, 1) @ k @ plan.turn
    u = solveh_banded(plan.band(in_frame[0]), plan.in_plane, lower=True, check_finite=False)
    w = solveh_banded(plan.band(in_frame[1]), plan.out_of_plane, lower=True, check_finite=False)
    ends = k[0] @ (plan.turn @ u[plan.freedoms])
    beyond = k[1] @ (plan.turn @ w[plan.freedoms])
    stress = (
        np.abs(ends[:, [0, 3]]) / area[:, None, None]
        + np.abs(beyond[:, [1, 4]]) / wy[:, None, None]
        + np.abs(ends[:, [2, 5]]) / wz[:, None, None]
    )
    return stress.max(axis=1).sum()


if __name__ == "__main__":
    plan = Plan()
    pairs = [(tube(0.08, 0.04, wall), tube(0.05, 0.05, wall)) for wall in WALLS]
    best = 0.0
    if "--sum" not in sys.argv:
        runs = 300
        best = min(timeit.repeat(lambda: answer(plan, *pairs[2]), number=runs, repeat=7)) / runs
    print(f"{best * 1e6:.2f}", *(f"{answer(plan, *pair):.12g}" for pair in pairs))
