"""The ladder of LadderBenchmark in numpy: the same frame, load cases and forces, for comparison.

Prints microseconds for one whole answer (assemble, solve four cases, end forces of every beam) and the
sum of forces that the Java benchmark returns, so that both are seen to solve the same problem.
"""
import timeit

import numpy as np

LENGTH, WIDTH, E, NU = 2.8, 0.62, 210e9, 0.3
# Tube 80 x 40 x 3 by EN 10219-2 Annex B [m]: area, about the horizontal axis, the vertical axis, torsion.
B, H, T, RO, RI = 0.040, 0.080, 0.003, 0.006, 0.003


def rounded(height, width, radius):
    """Area and second moments of a rectangle with rounded corners, exact."""
    corner = (1 - np.pi / 4) * radius**2
    offset = (10 - 3 * np.pi) / (12 - 3 * np.pi) * radius
    own = (1 / 3 - np.pi / 16 - 1 / (9 * (4 - np.pi))) * radius**4
    area = width * height - 4 * corner
    iy = width * height**3 / 12 - 4 * (own + corner * (height / 2 - offset) ** 2)
    iz = height * width**3 / 12 - 4 * (own + corner * (width / 2 - offset) ** 2)
    return np.array([area, iy, iz])


def tube():
    area, iy, iz = rounded(H, B, RO) - rounded(H - 2 * T, B - 2 * T, RI)
    mid = (RO + RI) / 2
    around = 2 * ((B - T) + (H - T)) - 2 * mid * (4 - np.pi)
    inside = (B - T) * (H - T) - mid**2 * (4 - np.pi)
    return area, iy, iz, T**3 * around / 3 + 4 * inside**2 * T / around


def ladder(bays):
    x = -LENGTH * np.arange(bays + 1) / bays
    right = np.stack([x, np.full_like(x, -WIDTH / 2)], 1)
    left = np.stack([x, np.full_like(x, WIDTH / 2)], 1)
    nodes = np.concatenate([right, left])
    n = bays + 1
    cross = [(i, n + i) for i in range(n)]
    rails = [(i, i + 1) for i in range(bays)] + [(n + i, n + i + 1) for i in range(bays)]
    return nodes, np.array(cross + rails)


def stiffness(length, cosine, sine):
    """Twelve-freedom stiffness of every beam in its own axes, and the turn into the frame's."""
    area, iy, iz, it = tube()
    g = E / (2 * (1 + NU))
    k = np.zeros((len(length), 12, 12))

    def put(i, j, value):
        k[:, i, j] = k[:, j, i] = value

    for a, value in ((0, E * area / length), (3, g * it / length)):
        put(a, a, value), put(a + 6, a + 6, value), put(a, a + 6, -value)
    for shift, turn, inertia, sign in ((1, 5, iz, 1), (2, 4, iy, -1)):
        ei = E * inertia
        for a in (shift, shift + 6):
            put(a, a, 12 * ei / length**3)
        put(shift, shift + 6, -12 * ei / length**3)
        for b in (turn, turn + 6):
            put(shift, b, sign * 6 * ei / length**2)
            put(shift + 6, b, -sign * 6 * ei / length**2)
            put(b, b, 4 * ei / length)
        put(turn, turn + 6, 2 * ei / length)
    turn3 = np.zeros((len(length), 3, 3))
    turn3[:, 0, 0] = turn3[:, 1, 1] = cosine
    turn3[:, 0, 1], turn3[:, 1, 0] = sine, -sine
    turn3[:, 2, 2] = 1
    turn12 = np.zeros((len(length), 12, 12))
    for a in range(4):
        turn12[:, 3 * a : 3 * a + 3, 3 * a : 3 * a + 3] = turn3
    return k, turn12


def answer(bays):
    nodes, beams = ladder(bays)
    along = nodes[beams[:, 1]] - nodes[beams[:, 0]]
    length = np.hypot(along[:, 0], along[:, 1])
    k, turn = stiffness(length, along[:, 0] / length, along[:, 1] / length)
    in_frame = turn.transpose(0, 2, 1) @ k @ turn
    freedoms = (6 * beams[:, :, None] + np.arange(6)).reshape(len(beams), 12)
    whole = np.zeros((6 * len(nodes), 6 * len(nodes)))
    np.add.at(whole, (freedoms[:, :, None], freedoms[:, None, :]), in_frame)

    n = bays + 1
    loads = np.zeros((6 * len(nodes), 4))
    loads[[2, 6 * n + 2], 0] = 3000
    loads[2, 1], loads[6 * n + 2, 1] = 1000, -1000
    loads[[1, 6 * n + 1], 2] = 2000
    loads[0, 3] = -20_000

    motions = np.zeros_like(loads)
    free_nodes = np.array([i for i in range(2 * n) if i % n != bays])
    for action in ((0, 1, 5), (2, 3, 4)):
        free = (6 * free_nodes[:, None] + np.array(action)).ravel()
        motions[free] = np.linalg.solve(whole[np.ix_(free, free)], loads[free])
    ends = k @ turn @ motions[freedoms]
    return np.abs(ends[:, 5]).sum() + np.abs(ends[:, 10]).sum()


if __name__ == "__main__":
    for bays in (4, 40):
        answer(bays)
        runs = 200 if bays == 4 else 20
        best = min(timeit.repeat(lambda: answer(bays), number=runs, repeat=5)) / runs
        print(f"{bays:3d} bays: {best * 1e6:9.1f} us, sum of forces {answer(bays):.9g}")
