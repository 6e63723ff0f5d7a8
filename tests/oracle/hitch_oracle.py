#!/usr/bin/python3
"""An independent way to the operating lengths of machines: numpy and scipy, written from the method's text alone.

Reads machines from standard input, one a line: words as name=value (mm and degrees). Writes for each machine one line for each
range: its index, the range's name, the shortest and longest telescoping length and the greatest angle at either end; and
one line with the greatest irregularity of the working range, in phase and out of phase.

Ways that differ from the program's: rotations come from scipy; the wide-angle joints are solved by Newton's method on the
tubes' direction as two slopes; the linkage is closed by brentq on the mast's lean; hills are found on a random cloud with
the corners and climbed by L-BFGS-B from several starts; irregularity is the slope of the joints' formulas over a turn.
"""
import itertools
import os
import sys
from multiprocessing import Pool

os.environ["OPENBLAS_NUM_THREADS"] = "1"  # before numpy: its small matrices only wait for each other
import numpy as np
from scipy.optimize import brentq, minimize, minimize_scalar
from scipy.spatial.transform import Rotation

CLOUD = 800
STARTS = 3
LIFT_POINTS = 101


def normalised(a):
    return a / np.linalg.norm(a, axis=-1, keepdims=True)


def defect(slopes, span, v, w_tractor, w_implement):
    """How far t misses being along D - wT m(u,t) - wI m(v,t): zero at the answer. Also that vector."""
    t = normalised(np.concatenate([np.ones(slopes.shape[:-1] + (1,)), slopes], axis=-1))
    u = np.array([1.0, 0.0, 0.0])
    tubes = span - w_tractor * normalised(u + t) - w_implement * normalised(v + t)
    return tubes[..., 1:] - slopes * tubes[..., :1], tubes, t


def bend(span, v, w_tractor, w_implement):
    """Telescoping lengths and tube directions for arrays of outer-cross spans and input axes.

    Newton on the slopes dy/dx and dz/dx of the tubes, valid while the tubes run rearwards, which these machines' do.
    """
    slopes = span[..., 1:] / span[..., :1]
    step = 1e-6
    nudges = step * np.array([[[1.0, 0.0]], [[0.0, 1.0]], [[-1.0, 0.0]], [[0.0, -1.0]]])
    for _ in range(60):
        value, tubes, t = defect(slopes, span, v, w_tractor, w_implement)
        if np.max(np.abs(value)) < 1e-10:
            break
        nudged = defect(slopes + nudges, span, v, w_tractor, w_implement)[0]
        columns = np.moveaxis((nudged[:2] - nudged[2:]) / (2 * step), 0, -1)
        slopes = slopes - np.linalg.solve(columns, value[..., None])[..., 0]
    if not np.max(np.abs(value)) < 1e-7:
        raise ArithmeticError("the wide-angle joints did not settle")
    return np.linalg.norm(tubes, axis=-1), t


def trailed_input(m, postures):
    rotation = Rotation.from_euler("ZYX", postures)
    pin = np.array([m["pin-behind"], 0.0, m["pin-height"]])
    arm = np.array([m["input-behind"], -m["input-left"], m["input-height"] - m["pin-height"]])
    tilt = np.radians(m["input-tilt"])
    return pin + rotation.apply(arm), rotation.apply([np.cos(tilt), 0.0, np.sin(tilt)])


def mast_lean(m, hitch):
    """Angle of the mast from upright, positive forwards, from the closure of the top link."""
    pivot = np.array([m["top-pivot-behind"], m["top-pivot-height"]])

    def miss(lean):
        upper = hitch + m["mast"] * np.array([-np.sin(lean), np.cos(lean)])
        return np.hypot(*(upper - pivot)) - m["top-link"]

    # The distance is greatest with the mast pointing away from the pivot and least pointing at it; the higher point is on
    # the side on which the mast passes over the top.
    towards = np.arctan2(hitch[0] - pivot[0], pivot[1] - hitch[1])
    return brentq(miss, towards - np.pi, towards, xtol=1e-14, rtol=1e-14)


def mounted_input(m, heights):
    grooves, axes = [], []
    for (height, *_), in zip(heights):
        rise = height - m["lower-pivot-height"]
        hitch = np.array([m["lower-pivot-behind"] + np.sqrt(m["lower-link"] ** 2 - rise ** 2), height])
        lean = mast_lean(m, hitch)
        up, rear = np.array([-np.sin(lean), np.cos(lean)]), np.array([np.cos(lean), np.sin(lean)])
        groove = hitch + m["input-behind"] * rear + m["input-above"] * up
        axis_angle = lean + np.radians(m["input-tilt"])
        grooves.append([groove[0], 0.0, groove[1]])
        axes.append([np.cos(axis_angle), 0.0, np.sin(axis_angle)])
    return np.array(grooves), np.array(axes)


def shaft(m, positions):
    """Lengths, angles (radians) and the angle between the joints' planes."""
    groove, v = (trailed_input if m["kind"] == "trailed" else mounted_input)(m, positions)
    u = np.array([1.0, 0.0, 0.0])
    start = np.array([m["tractor-yoke"], 0.0, m["pto-height"]])
    length, t = bend(groove - m["implement-yoke"] * v - start, v, m["tractor-spacing"], m["implement-spacing"])
    first, second = np.cross(u, t), np.cross(t, v)
    between = np.arctan2(np.sum(np.cross(first, second) * t, axis=-1), np.sum(first * second, axis=-1))

    def angle(axis):
        return 2 * np.arcsin(np.clip(np.linalg.norm(axis - t, axis=-1) / 2, 0, 1))

    return length, angle(u), angle(v), between


def ripple(m, positions, out_of_phase):
    _, tractor, implement, between = shaft(m, positions)
    tractor = tractor * (m["tractor-spacing"] == 0)
    implement = implement * (m["implement-spacing"] == 0)
    turn = np.linspace(0, np.pi, 361)[:, None]
    second = np.arctan2(np.sin(turn), np.cos(tractor) * np.cos(turn))
    # d(theta2)/d(theta1) and d(theta3)/d(theta2), from the derivatives of the tangents.
    slope = np.cos(tractor) / (np.cos(tractor) ** 2 * np.cos(turn) ** 2 + np.sin(turn) ** 2)
    angle = second - (between - out_of_phase)
    slope = slope * np.cos(implement) / (np.cos(angle) ** 2 + np.cos(implement) ** 2 * np.sin(angle) ** 2)
    return 100 * (slope.max(axis=0) - slope.min(axis=0))


def greatest_trailed(function, half, generator):
    """The greatest value over the box from -half to half."""
    cloud = generator.uniform(-1, 1, (CLOUD, 3)) * half
    corners = np.array(list(itertools.product((-1, 0, 1), repeat=3))) * half
    cloud = np.concatenate([cloud, corners])
    values = function(cloud)
    if not values.any():
        return 0.0  # two wide-angle joints have no irregularity to climb
    starts = []
    for index in np.argsort(-values):  # the best points that are apart from each other
        if all(np.max(np.abs((cloud[index] - other) / np.maximum(half, 1e-9))) > 0.5 for other in starts):
            starts.append(cloud[index])
        if len(starts) == STARTS:
            break
    bounds = [(-h, h) for h in half]
    scale = max(abs(values).max(), 1e-9)
    nudges = np.concatenate([np.zeros((1, 3)), 1e-5 * np.eye(3), -1e-5 * np.eye(3)])

    def negative_with_slope(x):
        f = function(x + nudges)
        return -f[0] / scale, -(f[1:4] - f[4:7]) / 2e-5 / scale

    best = values.max()
    for start in starts:
        found = minimize(negative_with_slope, start, jac=True, bounds=bounds, method="L-BFGS-B",
                         options={"ftol": 1e-15, "gtol": 1e-10})
        best = max(best, -found.fun * scale)
    return best


def greatest_mounted(function, low, high):
    heights = np.linspace(low, high, LIFT_POINTS)
    values = function(heights[:, None])
    best = values.max()
    top = int(values.argmax())
    around = heights[max(top - 1, 0)], heights[min(top + 1, LIFT_POINTS - 1)]
    found = minimize_scalar(lambda h: -function(np.array([[h]]))[0], bounds=around, method="bounded", options={"xatol": 1e-7})
    return max(best, -found.fun)


def answers(numbered):
    index, m = numbered
    generator = np.random.default_rng(index)

    def greatest(function, name):
        if m["kind"] == "trailed":
            half = np.radians([m[f"{name}-turn"], m[f"{name}-pitch"], m[f"{name}-roll"]])
            return greatest_trailed(function, half, generator)
        return greatest_mounted(function, m[f"{name}-lowest"], m[f"{name}-highest"])

    lines = []
    for name in ("working", "turning", "standing"):
        shortest = -greatest(lambda x: -shaft(m, x)[0], name)
        longest = greatest(lambda x: shaft(m, x)[0], name)
        tractor = np.degrees(greatest(lambda x: shaft(m, x)[1], name))
        implement = np.degrees(greatest(lambda x: shaft(m, x)[2], name))
        lines.append(f"{index} {name} {shortest:.9f} {longest:.9f} {tractor:.9f} {implement:.9f}")
    wrong = np.radians(m["phase-step"])
    in_phase = greatest(lambda x: ripple(m, x, 0.0), "working")
    out_of_phase = max(greatest(lambda x: ripple(m, x, wrong), "working"), greatest(lambda x: ripple(m, x, -wrong), "working"))
    lines.append(f"{index} irregularity {in_phase:.9f} {out_of_phase:.9f}")
    return "\n".join(lines)


def read_machine(line):
    pairs = (word.split("=") for word in line.split())
    return {name: value if name == "kind" else float(value) for name, value in pairs}


def main():
    machines = [read_machine(line) for line in sys.stdin if line.strip()]
    with Pool(2) as pool:
        for block in pool.map(answers, enumerate(machines), chunksize=1):
            print(block)


if __name__ == "__main__":
    main()
