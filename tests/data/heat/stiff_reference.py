"""Slab temperatures by a stiff integrator of general-purpose science software (scipy.integrate.solve_ivp), from the equations alone.

Reads a case as JSON from the file named first, writes temperatures of all cells at the times asked for to the file named second.
Written apart from the program it judges: same cells and physics (docs/steps/concrete-heat.md), other language, other integrator.
Cells lie column after column, depth running fastest. SI; temperatures in degrees Celsius.
"""
import json
import sys
import time

import numpy as np
from scipy.integrate import solve_ivp
from scipy.sparse import lil_matrix

SIGMA = 5.670374419e-8
R = 8.314
KELVIN = 273.15


def dew_point(air, humidity):
    g = np.log(max(humidity, 0.01)) + 17.625 * air / (243.04 + air)
    return 243.04 * g / (17.625 - g)


class Slab:
    def __init__(self, case):
        self.case = case
        self.dx, self.dz = np.array(case["widths"]), np.array(case["heights"])
        self.nx, self.nz = len(self.dx), len(self.dz)
        shape = (self.nx, self.nz)
        self.k0 = np.array(case["conductivity"]).reshape(shape)
        self.c = np.array(case["capacity"]).reshape(shape)
        self.fresh = np.array(case["fresh"], dtype=bool).reshape(shape)
        self.count = int(self.fresh.sum())
        self.surface = np.array(case["surface"])
        self.hyd = case.get("hydration")
        self.hours = np.array(case["weather"])
        self.outer = None

    def weather(self, t):
        s = (self.case["start"] + t) / 3600.0
        i = min(max(int(np.floor(s + 1e-12)), 0), len(self.hours) - 2)
        f = s - i
        w = self.hours[i] * (1 - f) + self.hours[i + 1] * f
        return w[0], w[1], w[2], self.hours[self.hour][3], w[4]

    def degree(self, age):
        a = np.zeros_like(age)
        m = age > 0
        a[m] = self.hyd["degree"] * np.exp(-(self.hyd["time"] / age[m]) ** self.hyd["slope"])
        return a

    def conductivity(self, age):
        k = self.k0.copy()
        if self.count and self.case["follows"]:
            k[self.fresh] = self.case["ku"] * (1.33 - 0.33 * self.degree(age))
        return k

    def flux(self, top, k_top, t):
        """Heat into each column: Newton on the outer face, all columns at once."""
        air, humidity, wind, sun, cloud = self.weather(t)
        settings = self.case["settings"]
        covers = [self.cover(s) for s in self.case["covers"]]
        pick = np.array([[c["resistance"], c["absorptivity"], c["emissivity"], c["wet"]] for c in covers])[self.surface]
        resistance, absorptivity, emissivity, wet = pick.T
        v = wind * settings["wind"]
        h = 5.6 + 4 * v if v <= 5 else 7.2 * v ** 0.78
        n = 10 * cloud
        sky = (0.787 + 0.764 * np.log((dew_point(air, humidity) + KELVIN) / 273)) * (1 + 0.0224 * n - 0.0035 * n * n + 0.00028 * n ** 3)
        fixed = absorptivity * sun + emissivity * sky * SIGMA * (air + KELVIN) ** 4
        breeze = wind * settings["evaporation"] * 3.6 + 4.02336
        link = 2 * k_top / self.dz[0]
        joined = link / (1 + link * resistance)

        def gain(o):
            e = 5.275 * ((o + 17.778) ** 2.5 - humidity * (air + 17.778) ** 2.5) * breeze * 1e-6
            return h * (air - o) + fixed - emissivity * SIGMA * (o + KELVIN) ** 4 - wet * np.maximum(e, 0) * settings["latent"] / 3600

        o = top.copy() if self.outer is None else self.outer
        for _ in range(40):
            f = gain(o) - joined * (o - top)
            step = f / ((gain(o + 1e-4) - gain(o)) / 1e-4 - joined)
            o = o - step
            if np.max(np.abs(step)) < 1e-9:
                break
        self.outer = o
        return joined * (o - top)

    def cover(self, schedule):
        found = schedule[0]
        for c in schedule:
            if c["from"] <= self.segment + 1e-6:
                found = c
        return found

    def rhs(self, t, y):
        temperature = y[: self.nx * self.nz].reshape(self.nx, self.nz)
        age = y[self.nx * self.nz:]
        k = self.conductivity(age)
        net = np.zeros_like(temperature)
        down = 2 / (self.dz[:-1] / k[:, :-1] + self.dz[1:] / k[:, 1:]) * (temperature[:, :-1] - temperature[:, 1:])
        net[:, :-1] -= down
        net[:, 1:] += down
        net[:, 0] += self.flux(temperature[:, 0], k[:, 0], t)
        net[:, -1] += 2 * k[:, -1] / self.dz[-1] * (self.case["deep"] - temperature[:, -1])
        net /= self.dz
        if self.nx > 1:
            along = 2 / (self.dx[:-1, None] / k[:-1] + self.dx[1:, None] / k[1:]) * (temperature[:-1] - temperature[1:])
            net[:-1] -= along / self.dx[:-1, None]
            net[1:] += along / self.dx[1:, None]
        if not self.count:
            return (net / self.c).ravel()
        rate = np.exp(-self.hyd["energy"] / R * (1 / (temperature[self.fresh] + KELVIN) - 1 / (self.hyd["reference"] + KELVIN)))
        safe = np.maximum(age, 1e-3)
        slope = np.where(age > 0, self.degree(safe) * (self.hyd["time"] / safe) ** self.hyd["slope"] * self.hyd["slope"] / safe, 0)
        net[self.fresh] += self.hyd["heat"] * slope * rate
        return np.concatenate([(net / self.c).ravel(), rate])

    def sparsity(self):
        cells = self.nx * self.nz
        pattern = lil_matrix((cells + self.count, cells + self.count), dtype=int)
        index = -np.ones((self.nx, self.nz), dtype=int)
        index[self.fresh] = cells + np.arange(self.count)
        for i in range(self.nx):
            for j in range(self.nz):
                for a, b in ((i, j), (i - 1, j), (i + 1, j), (i, j - 1), (i, j + 1)):
                    if 0 <= a < self.nx and 0 <= b < self.nz:
                        pattern[i * self.nz + j, a * self.nz + b] = 1
                        if index[a, b] >= 0:
                            pattern[i * self.nz + j, index[a, b]] = 1
                if index[i, j] >= 0:
                    pattern[index[i, j], i * self.nz + j] = 1
        return pattern.tocsr()

    def run(self):
        """Piece by piece between full hours and changes of cover, where the weather jumps."""
        end = self.case["times"][-1]
        first = np.ceil(self.case["start"] / 3600 + 1e-9) * 3600 - self.case["start"]
        stops = set(np.arange(first, end, 3600)) | {0.0, float(end)} | {float(c["from"]) for s in self.case["covers"] for c in s if 0 < c["from"] < end}
        stops |= {float(x) for x in self.case["times"]}
        stops = sorted(stops)
        y = np.concatenate([np.array(self.case["temperatures"]), np.zeros(self.count)])
        pattern, answers = self.sparsity(), {}
        if 0.0 in self.case["times"]:
            answers[0.0] = y[: self.nx * self.nz].tolist()
        began = time.perf_counter()
        for a, b in zip(stops[:-1], stops[1:]):
            self.segment, self.hour = a, min(int((self.case["start"] + (a + b) / 2) // 3600), len(self.hours) - 1)
            # hydration begins with an infinitely slow start that a step-size choice can jump over: the first pieces keep it short
            most = max((b - a) / 8, 30.0) if a < 6 * 3600 else b - a
            answer = solve_ivp(self.rhs, (a, b), y, method="BDF", rtol=1e-6, atol=1e-5, max_step=most, jac_sparsity=pattern)
            if not answer.success:
                raise SystemExit(answer.message)
            y = answer.y[:, -1]
            if b in self.case["times"]:
                answers[b] = y[: self.nx * self.nz].tolist()
        return {"seconds": time.perf_counter() - began, "temperatures": [answers[float(x)] for x in self.case["times"]]}


if __name__ == "__main__":
    with open(sys.argv[1], encoding="utf-8") as source:
        result = Slab(json.load(source)).run()
    with open(sys.argv[2], "w", encoding="utf-8") as target:
        json.dump(result, target)
