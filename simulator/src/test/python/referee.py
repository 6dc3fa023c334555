#!/usr/bin/env python3
"""Independent reference solutions of line circuits, for the tests of the line engine.

    python3 referee.py [DIRECTORY [NAME ...]]      writes a file for each circuit, or those named (numpy 2, mpmath)

Nothing here shares a formula with the engine beyond the definitions:

* Reflection coefficients come from chain (ABCD) matrices, V1 = A V2 + B I2, I1 = C V2 + D I2, from the load up, with 40
  digits (mpmath). The engine carries reflection coefficients instead, in double precision.
* Voltages of circuits without loss, coils or capacitors come from power series in z = exp(-s d), where all delays are
  multiples of d: the exact sum of delayed copies of the stimulus, a bounce diagram to its last bounce.
* Other voltages come from numerical inversion of the Laplace transform with odd frequencies c + j(2k + 1)pi/T, a period of
  four records, chain matrices in 80-bit numbers, and far more frequencies than the engine takes; the error is bounded by
  exp(-cT) = 1e-7 of what comes later, and by what lies above the last frequency, which the script prints.

Stimuli are those of the engine, as their documentation states them.
"""

import math
import sys
from pathlib import Path

import mpmath as mp
import numpy as np

mp.mp.dps = 40
LD = np.longdouble
CLD = np.clongdouble


# ---- circuits -------------------------------------------------------------------------------------------------------

def line(length, l=0.25e-6, c=100e-12, r=0.0, k=0.0, g=0.0, debye=()):
    return ("line", dict(r=r, l=l, k=k, g=g, c=c, debye=tuple(debye), length=length))


def ideal(ohms, length, v=2e8):
    return line(length, l=ohms / v, c=1 / (ohms * v))


def part(joined, r=None, l=None, c=None):
    return dict(joined=joined, r=r, l=l, c=c)


def series(**kw):
    return ("series", part(kw.pop("joined", "series"), **kw))


def shunt(**kw):
    return ("shunt", part(kw.pop("joined", "series"), **kw))


def branch(elements, load):
    return ("branch", dict(elements=elements, load=load))


OPEN = ("open", None)
SHORT = ("short", None)


def closed(**kw):
    return ("part", part(kw.pop("joined", "series"), **kw))


def endless(**kw):
    return ("endless", line(1.0, **kw)[1])


# ---- chain matrices, for any kind of number ---------------------------------------------------------------------------

class Mp:
    """Arithmetic with 40 digits."""

    sqrt = staticmethod(mp.sqrt)
    num = staticmethod(mp.mpf)

    @staticmethod
    def hyperbolic(x):
        return mp.cosh(x), mp.sinh(x)


class Np:
    """Arithmetic with 80-bit numbers, many frequencies at once."""

    sqrt = staticmethod(np.sqrt)
    num = staticmethod(LD)

    @staticmethod
    def hyperbolic(x):
        # Divided by exp(x), which scales voltage and current alike and so leaves their ratio as it is.
        e = np.exp(-2 * x)
        return (1 + e) / 2, (1 - e) / 2


def constants(p, s, k):
    z = k.num(p["r"]) + s * k.num(p["l"]) + k.num(p["k"]) * k.sqrt(s)
    y = k.num(p["g"]) + s * k.num(p["c"])
    for dc, tau in p["debye"]:
        y = y + s * k.num(dc) / (1 + s * k.num(tau))
    return z, y


def impedance(p, s, k):
    """Impedance of a lumped part as numerator and denominator."""
    r, l, c = p["r"], p["l"], p["c"]
    if p["joined"] == "series":
        n = (k.num(r) if r is not None else 0) + (s * k.num(l) if l is not None else 0)
        if c is None:
            return n, 1
        return n * s * k.num(c) + 1, s * k.num(c)
    y = s * k.num(c) if c is not None else 0
    if r is not None:
        y = y + 1 / k.num(r)
    if l is not None:
        return s * k.num(l), 1 + y * s * k.num(l)
    return 1, y


def at_port(elements, load, s, k):
    """Voltage and current at the port, up to a common factor."""
    kind, p = load
    one = s / s
    if kind == "open":
        v, i = one, 0 * one
    elif kind == "short":
        v, i = 0 * one, one
    elif kind == "part":
        n, d = impedance(p, s, k)
        v, i = n * one, d * one
    else:
        z, y = constants(p, s, k)
        v, i = k.sqrt(z / y), one
    for kind, p in reversed(elements):
        if kind == "line":
            z, y = constants(p, s, k)
            gamma, zc = k.sqrt(z) * k.sqrt(y), k.sqrt(z) / k.sqrt(y)
            ch, sh = k.hyperbolic(gamma * k.num(p["length"]))
            v, i = ch * v + zc * sh * i, sh / zc * v + ch * i
        elif kind == "series":
            n, d = impedance(p, s, k)
            v, i = v * d + n * i, i * d
        elif kind == "shunt":
            n, d = impedance(p, s, k)
            v, i = v * n, i * n + d * v
        else:
            vb, ib = at_port(p["elements"], p["load"], s, k)
            v, i = v * vb, i * vb + ib * v
    return v, i


def reflection(circuit, s, k):
    v, i = at_port(circuit["elements"], circuit["load"], s, k)
    r = k.num(circuit["source"])
    return (v - r * i) / (v + r * i)


# ---- stimuli ----------------------------------------------------------------------------------------------------------

def stimulus(kind, width):
    """Height at a time (80-bit array) and transform (80-bit complex array)."""
    pi = LD("3.14159265358979323846264338327950288")
    if kind == "half-sine":
        d = LD(1.5) * LD(width)
        w = pi / d
        return (lambda t: np.where((t > 0) & (t < d), np.sin(w * t), 0),
                lambda s: w * (1 + np.exp(-s * d)) / (s * s + w * w))
    if kind == "raised-cosine-step":
        tau = LD(width) * pi / (np.arccos(LD(-0.8)) - np.arccos(LD(0.8)))
        w = pi / tau
        return (lambda t: np.where(t <= 0, 0, np.where(t >= tau, 1, (1 - np.cos(w * t)) / 2)),
                lambda s: w * w / 2 * (1 + np.exp(-s * tau)) / (s * (s * s + w * w)))
    if kind == "gaussian-step":
        sigma = LD(width) / LD("2.5631031310892009")
        t0 = 8 * sigma
        erfc = np.vectorize(math.erfc)
        return (lambda t: np.where(t <= 0, 0, erfc(((t0 - t) / (sigma * np.sqrt(LD(2)))).astype(float)) / 2),
                lambda s: np.exp((s * sigma) ** 2 / 2 - s * t0) / s)
    if kind == "gaussian-pulse":
        sigma = LD(width) / (2 * np.sqrt(2 * np.log(LD(2))))
        t0 = 8 * sigma
        return (lambda t: np.where(t <= 0, 0, np.exp(-((t - t0) / sigma) ** 2 / 2)),
                lambda s: sigma * np.sqrt(2 * pi) * np.exp((s * sigma) ** 2 / 2 - s * t0))
    raise ValueError(kind)


# ---- voltage by power series -------------------------------------------------------------------------------------------

class Series:
    """Power series in z, cut after a number of terms."""

    def __init__(self, terms):
        self.n = terms

    def of(self, x):
        a = np.zeros(self.n, dtype=LD)
        a[0] = x
        return a

    def mul(self, a, b):
        out = np.zeros(self.n, dtype=LD)
        for j in np.nonzero(a)[0]:
            out[j:] += a[j] * b[: self.n - j]
        return out

    def div(self, a, b):
        out = np.zeros(self.n, dtype=LD)
        rest = a.copy()
        for j in range(self.n):
            out[j] = rest[j] / b[0]
            if out[j] != 0:
                rest[j:] -= out[j] * b[: self.n - j]
        return out


def lattice(elements, load, step_metres, terms):
    """Reflection coefficient as a series in z = exp(-2 s d) and the impedance on which it is told."""
    q = Series(terms)
    lines = [p for kind, p in elements if kind == "line"]
    zr = ohms(lines[-1]) if lines else LD(1)
    kind, p = load
    if kind == "part":
        g = q.of((LD(p["r"]) - zr) / (LD(p["r"]) + zr))
    elif kind == "endless":
        g = q.of((ohms(p) - zr) / (ohms(p) + zr))
    else:
        g = q.of({"open": 1, "short": -1}[kind])
    for kind, p in reversed(elements):
        if kind == "line":
            g = onto(q, g, zr, ohms(p))
            zr = ohms(p)
            m = round(p["length"] / step_metres)
            assert abs(m * step_metres - p["length"]) < 1e-9
            g = np.concatenate([np.zeros(m, dtype=LD), g[: terms - m]])
        elif kind == "series":
            x = LD(p["r"]) / zr * (q.of(1) - g)
            g = q.div(2 * g + x, q.of(2) + x)
        elif kind == "shunt":
            x = zr / LD(p["r"]) * (q.of(1) + g)
            g = q.div(2 * g - x, q.of(2) + x)
        else:
            gb, zb = lattice(p["elements"], p["load"], step_metres, terms)
            x = zr / zb * q.mul(q.div(q.of(1) - gb, q.of(1) + gb), q.of(1) + g)
            g = q.div(2 * g - x, q.of(2) + x)
    return g, zr


def ohms(p):
    return np.sqrt(LD(p["l"]) / LD(p["c"]))


def onto(q, g, old, new):
    r = (old - new) / (old + new)
    return q.div(q.of(r) + g, q.of(1) + r * g)


def bounced(circuit, times):
    p = next(p for kind, p in circuit["elements"] if kind == "line")
    v = 1 / np.sqrt(LD(p["l"]) * LD(p["c"]))
    there_and_back = 2 * LD(circuit["step"]) / v
    terms = int(times[-1] / there_and_back) + 2
    g, zr = lattice(circuit["elements"], circuit["load"], circuit["step"], terms)
    g = onto(Series(terms), g, zr, LD(circuit["source"]))
    at, _ = stimulus(*circuit["stimulus"])
    out = np.zeros(len(times), dtype=LD)
    for j in np.nonzero(g)[0]:
        out += g[j] * at(times - j * there_and_back)
    return out


# ---- voltage by inversion ----------------------------------------------------------------------------------------------

def inverted(circuit, times):
    period = 4 * LD(times[-1])
    c = LD(16) / period
    _, transform = stimulus(*circuit["stimulus"])
    width = circuit["stimulus"][1]
    smooth = circuit["stimulus"][0].startswith("gaussian")
    at, _ = stimulus(*circuit["stimulus"])
    # What comes back at once is added in closed form, so that the corners of the launch stay corners.
    launch = reflection(circuit, np.array([CLD(1e4 / width)]), Np)[0].real
    per_width = 6 if smooth else 700
    n = 1 << int(math.ceil(math.log2(float(period) / width * per_width)))
    f = np.zeros(n, dtype=CLD)
    pi = LD("3.14159265358979323846264338327950288")
    last = 0
    for start in range(0, n // 2, 1 << 15):
        k = np.arange(start, min(n // 2, start + (1 << 15)))
        s = c + 1j * (2 * k + 1).astype(LD) * pi / period
        sent = transform(s)
        if smooth and np.abs(sent).max() < 1e-22 * width:
            break
        taper = np.ones(len(k), dtype=LD)
        if not smooth:
            x = 2 * k / LD(n)
            taper = np.where(x < 0.5, 1, np.cos(pi * (x - 0.5)) ** 2)
        f[start : start + len(k)] = sent * (reflection(circuit, s, Np) - launch) * taper
        last = float(abs(sent[-1] / sent[0])) if start == 0 else last
    step = period / n
    wave = np.fft.ifft(f) * n
    m = np.arange(n)
    t = m * step
    values = 2 * (np.exp(c * t) / period) * (wave * np.exp(1j * pi * m / LD(n))).real
    places = times / step
    low = np.floor(places).astype(int)
    share = places - low
    if smooth or np.max(np.minimum(share, 1 - share)) > 1e-6:
        # Between samples: through the eight nearest.
        out = np.zeros(len(times), dtype=LD)
        padded = np.concatenate([np.zeros(4, dtype=LD), values])
        for a in range(-3, 5):
            weight = np.ones(len(times), dtype=LD)
            for b in range(-3, 5):
                if b != a:
                    weight *= (share - b) / LD(a - b)
            out += weight * padded[low + 4 + a]
        return out + launch * at(times)
    return values[np.rint(places).astype(int)] + launch * at(times)


# ---- the circuits ------------------------------------------------------------------------------------------------------

class Chance:
    """A generator that is the same everywhere: x <- 6364136223846793005 x + 1442695040888963407 mod 2^64."""

    def __init__(self, seed):
        self.x = seed

    def next(self):
        self.x = (6364136223846793005 * self.x + 1442695040888963407) % (1 << 64)
        return (self.x >> 11) / float(1 << 53)

    def between(self, low, high):
        return float("%.6g" % (low + (high - low) * self.next()))

    def log(self, low, high):
        return float("%.6g" % (low * (high / low) ** self.next()))


def random_circuit(count, seed):
    chance = Chance(seed)
    elements = []
    for i in range(count):
        if i % 2 == 0:
            z, v = chance.between(40, 120), chance.between(1.6e8, 2.7e8)
            elements.append(line(chance.between(0.2, 3), l=z / v, c=1 / (z * v), r=chance.between(0, 0.1),
                                 k=chance.log(1e-7, 1e-5), g=chance.log(1e-9, 1e-7)))
            continue
        which = int(chance.next() * 6)
        elements.append([
            lambda: series(r=chance.log(0.05, 5)),
            lambda: shunt(c=chance.log(0.1e-12, 5e-12)),
            lambda: series(l=chance.log(1e-9, 30e-9)),
            lambda: shunt(r=chance.log(500, 1e5)),
            lambda: series(joined="parallel", r=chance.log(0.1, 20), c=chance.log(1e-12, 1e-9)),
            lambda: shunt(r=chance.log(50, 1e3), l=chance.log(1e-8, 1e-6), c=chance.log(0.1e-12, 5e-12)),
        ][which]())
    return elements


PAIR = dict(r=0.1725, l=0.617e-6, c=51.6e-12, g=1e-10)  # about 24 AWG, per metre, invented to three digits
COAX = dict(l=2.99e-7, c=5.14e-11)


def circuits():
    # With loss, coils or capacitors: by inversion.
    yield dict(name="periodic", source=75.0, stimulus=("gaussian-pulse", 2e-9), record=600e-9, top=1e9,
               elements=[e for _ in range(60)
                         for e in (line(1.0, r=0.02, k=2e-6, **COAX), shunt(c=0.4e-12))],
               load=closed(r=75.0))
    yield dict(name="random-200", source=75.0, stimulus=("raised-cosine-step", 3e-9), record=900e-9, top=1e9,
               elements=random_circuit(200, 20240229), load=closed(r=100.0))
    yield dict(name="random-60-open", source=50.0, stimulus=("raised-cosine-step", 5e-9), record=500e-9, top=5e8,
               elements=random_circuit(60, 77), load=OPEN)
    yield dict(name="ringing", source=5.0, stimulus=("gaussian-step", 4e-9), record=1500e-9, top=3e8,
               elements=[ideal(75, 5), shunt(joined="parallel", l=200e-9, c=150e-12), ideal(300, 4),
                         series(joined="parallel", l=100e-9, c=80e-12), line(7, r=0.001, **COAX)],
               load=SHORT)
    yield dict(name="loaded-pair-88mH", source=900.0, stimulus=("raised-cosine-step", 60e-6), record=6e-3, top=2e5,
               elements=[line(914.4, **PAIR)]
               + [e for i in range(8)
                  for e in (series(r=4.5), series(joined="parallel", l=88e-3, c=50e-12), series(r=4.5),
                            line(1828.8 if i < 7 else 914.4, **PAIR))],
               load=closed(joined="parallel", r=900.0, c=2.2e-9))
    yield dict(name="lossy-300-m", source=75.0, stimulus=("half-sine", 20e-9), record=6e-6, top=1e9,
               elements=[line(300.0, r=0.03, k=1.3e-5, g=1e-9, **COAX)], load=OPEN)
    yield dict(name="taper-64-steps", source=75.0, stimulus=("raised-cosine-step", 2e-9), record=300e-9, top=2e9,
               elements=[line(5.0, r=0.01, k=1e-6, l=75 / 2.5e8, c=1 / (75 * 2.5e8))]
               + [line(0.1, r=0.01, k=1e-6, l=z / 2.5e8, c=1 / (z * 2.5e8))
                  for z in (75 * (100 / 75) ** ((i + 0.5) / 64) for i in range(64))],
               load=closed(r=100.0))
    yield dict(name="branches-lossy", source=100.0, stimulus=("gaussian-step", 3e-9), record=700e-9, top=5e8,
               elements=[line(12.0, r=0.1, k=5e-6, **COAX),
                         branch([line(5.0, r=0.1, **COAX),
                                 branch([line(2.0, r=0.1, **COAX), series(c=30e-12)], SHORT),
                                 line(3.0, **COAX)], OPEN),
                         line(9.0, r=0.1, k=5e-6, **COAX),
                         branch([line(4.0, r=0.2, **COAX)], closed(r=50.0, l=50e-9)),
                         line(8.0, r=0.1, k=5e-6, **COAX)],
               load=SHORT)
    yield dict(name="resistor-and-capacitor", source=75.0, stimulus=("half-sine", 4e-9), record=400e-9, top=1e9,
               elements=[line(15.0, r=0.02, k=3e-6, **COAX), series(joined="parallel", r=30.0, c=20e-12),
                         line(10.0, r=0.02, k=3e-6, **COAX)],
               load=closed(joined="parallel", r=120.0, c=47e-12))
    yield dict(name="relaxing-dielectric", source=50.0, stimulus=("raised-cosine-step", 1e-9), record=300e-9, top=3e9,
               elements=[line(8.0, l=2.5e-7, c=9e-11, r=0.05, k=2e-6, g=1e-8,
                              debye=((1e-11, 2e-9), (5e-12, 1e-10))),
                         line(6.0, l=2.5e-7, c=9e-11, debye=((2e-11, 5e-9),))],
               load=closed(r=75.0))
    yield dict(name="endless-lossy", source=75.0, stimulus=("raised-cosine-step", 2e-9), record=500e-9, top=1e9,
               elements=[line(20.0, r=0.02, k=3e-6, **COAX), shunt(l=2e-6), line(6.0, **COAX), series(c=1e-9)],
               load=endless(r=0.3, k=2e-5, l=2.5e-7, c=1e-10))
    # Without: exact.
    yield dict(name="sections-exact", source=60.0, stimulus=("half-sine", 7e-9), record=500e-9, top=1e9, step=0.1,
               elements=[ideal(75, 5), ideal(50, 2.3), ideal(110, 3.1), ideal(40, 1.7), ideal(75, 4)],
               load=closed(r=90.0))
    yield dict(name="periodic-exact", source=50.0, stimulus=("raised-cosine-step", 2e-9), record=900e-9, top=1e9,
               step=0.5, elements=[e for _ in range(80) for e in (ideal(75, 0.5), shunt(r=3000.0))], load=OPEN)
    yield dict(name="branches-exact", source=75.0, stimulus=("raised-cosine-step", 3e-9), record=700e-9, top=1e9,
               step=0.1,
               elements=[ideal(75, 10), branch([ideal(75, 4), branch([ideal(50, 1.2)], SHORT), ideal(75, 2)], OPEN),
                         ideal(75, 9), series(r=12.0), branch([ideal(100, 3)], closed(r=33.0)), ideal(75, 7)],
               load=closed(r=75.0))


# ---- writing -----------------------------------------------------------------------------------------------------------

def told(p):
    return p["joined"] + "".join(" %s %r" % (x, p[x]) for x in "rlc" if p[x] is not None)


def told_line(p):
    return " ".join(repr(p[x]) for x in ("r", "l", "k", "g", "c")) + "".join(" debye %r %r" % d for d in p["debye"])


def told_load(load):
    kind, p = load
    return "load " + kind + ("" if p is None else " " + (told(p) if kind == "part" else told_line(p)))


def told_elements(elements, load, indent=""):
    for kind, p in elements:
        if kind == "line":
            yield indent + "line %r %s" % (p["length"], told_line(p))
        elif kind == "branch":
            yield indent + "branch"
            yield from told_elements(p["elements"], p["load"], indent + "  ")
            yield indent + "end"
        else:
            yield indent + kind + " " + told(p)
    yield indent + told_load(load)


def check(circuit):
    """The 80-bit chain against the one with 40 digits, on the contour."""
    worst = 0
    c = 4 / circuit["record"]
    for f in np.geomspace(1 / circuit["record"], circuit["top"], 25):
        s = CLD(c + 2j * math.pi * f)
        exact = reflection(circuit, mp.mpc(c, 2 * math.pi * f), Mp)
        worst = max(worst, abs(complex(reflection(circuit, np.array([s]), Np)[0]) - complex(exact)))
    return worst


def main():
    folder = Path(sys.argv[1] if len(sys.argv) > 1 else ".")
    for circuit in circuits():
        if len(sys.argv) > 2 and circuit["name"] not in sys.argv[2:]:
            continue
        lines = ["# Reference solution of an invented circuit, computed by simulator/src/test/python/referee.py: chain",
                 "# matrices with 40 digits; voltages " + ("exact, by power series" if "step" in circuit else
                                                           "by inversion of the Laplace transform, 80-bit numbers"),
                 "# line: length [m], R [ohm/m], L [H/m], k [ohm/m s^0.5], G [S/m], C [F/m], debye dC [F/m] tau [s]",
                 "# series, shunt: how joined, r [ohm], l [H], c [F]; gamma: f [Hz], real, imaginary part",
                 "# volts: voltage that comes back to a source of the given resistance, at even times from 0 to the last",
                 "source %r" % circuit["source"], "stimulus %s %r" % circuit["stimulus"]]
        lines += told_elements(circuit["elements"], circuit["load"])
        for f in np.geomspace(circuit["top"] * 1e-6, circuit["top"], 49):
            g = reflection(circuit, mp.mpc(0, 2 * mp.pi * mp.mpf(float(f))), Mp)
            lines.append("gamma %r %s %s" % (float(f), mp.nstr(g.real, 17), mp.nstr(g.imag, 17)))
        count = 701
        times = np.linspace(LD(0), LD(circuit["record"]), count)
        volts = bounced(circuit, times) if "step" in circuit else inverted(circuit, times)
        lines.append("volts %d %r" % (count, circuit["record"]))
        lines += ["%.11g" % x for x in volts]
        (folder / (circuit["name"] + ".txt")).write_text("\n".join(lines) + "\n")
        note = "%.1e" % check(circuit)
        if "step" in circuit:
            note += ", inversion against the exact voltage %.1e" % np.abs(inverted(circuit, times) - volts).max()
        print("%-24s chain in 80 bits against 40 digits %s" % (circuit["name"], note), flush=True)


if __name__ == "__main__":
    main()
