"""The same formulas in NumPy, vectorised, in pieces that stay in the cache; one thread.

usage: attenuation.py FOLDER COUNT [OUT]: reads tables.json and scenes.bin there, prints the seconds for COUNT scenes, and
writes the losses of the first thousand to OUT.
"""
import json
import sys
import time

import numpy as np

DEPTHS = 30
WIND_M_S = 5.0
# Scenes at a time: a piece of so many stays in the processor's cache.
PIECE = 16

folder, count = sys.argv[1], int(sys.argv[2])
tables = {name: np.array(values) for name, values in json.load(open(f"{folder}/tables.json")).items()}
scenes = np.fromfile(f"{folder}/scenes.bin").reshape(-1, 3)[:count]

nm, a_w, b_w, k_w = (tables[name] for name in ("nm", "a_w", "b_w", "k_w"))
Kw, chi, e = (tables[name] for name in ("Kw", "chi", "e"))
band_nm, ozone, vapour, gas, sun = (tables[n] for n in ("band_nm", "ozone", "vapour", "gas", "extraterrestrial"))
trapezoid = np.full(len(nm), 5.0)
trapezoid[[0, -1]] = 2.5
observers = np.ascontiguousarray((tables["observers"] * trapezoid).T)
photopic = observers[:, 3].copy()
um = band_nm / 1000
after = np.clip(np.searchsorted(band_nm, nm, side="right"), 1, len(band_nm) - 1)
share = (nm - band_nm[after - 1]) / (band_nm[after] - band_nm[after - 1])
beyond = nm > 700
steps = np.arange(1, DEPTHS + 1) / DEPTHS


def rayleigh(mass):
    return np.exp(-mass / (um**4 * (115.6406 - 1.3366 / um**2)))


def vapours(mass):
    return np.exp((-0.2385 * vapour * mass) / (1 + 20.07 * vapour * mass) ** 0.45)


def gases(mass):
    return np.exp((-1.41 * gas * mass) / (1 + 118.3 * gas * mass) ** 0.45)


# What does not depend on the sun, once.
depth_aerosol = 0.1 * (um / 0.5) ** -0.8
albedo = 0.945 * np.exp(-0.095 * np.log(um / 0.4) ** 2)
alg = np.log(1 - 0.65)
afs = alg * (1.459 + alg * (0.1595 + alg * 0.4129))
bfs = alg * (0.0783 + alg * (-0.3824 - alg * 0.5874))
forward_primed = 1 - 0.5 * np.exp((afs + bfs / 1.8) / 1.8)
scatter_primed = np.exp(-albedo * depth_aerosol * 1.8)
absorb_primed = np.exp(-(1 - albedo) * depth_aerosol * 1.8)
sky = gases(1.8) * vapours(3.6) * absorb_primed * (
    0.5 * (1 - rayleigh(1.8)) + (1 - forward_primed) * rayleigh(1.8) * (1 - scatter_primed)
)
short_wave = np.where(um <= 0.45, (um + 0.55) ** 1.8, 1)


def clear_sky(zenith_deg):
    """Bird & Riordan 1986: direct on the horizontal, and diffuse, on the grid."""
    cos = np.cos(np.radians(zenith_deg))
    mass = (1 / (cos + 0.50572 * (96.07995 - zenith_deg) ** -1.6364))[:, None]
    ozone_mass = ((1 + 22 / 6370) / np.sqrt(cos**2 + 2 * 22 / 6370))[:, None]
    forward = (1 - 0.5 * np.exp((afs + bfs * cos) * cos))[:, None]
    cos = cos[:, None]
    passed = np.exp(-ozone * 0.3 * ozone_mass) * vapours(2 * mass) * gases(mass)
    t_rayleigh = rayleigh(mass)
    direct = sun * passed * t_rayleigh * np.exp(-depth_aerosol * mass)
    horizontal = sun * cos * passed * np.exp(-(1 - albedo) * depth_aerosol * mass)
    from_rayleigh = horizontal * (1 - t_rayleigh**0.95) * 0.5
    from_aerosol = horizontal * t_rayleigh**1.5 * (1 - np.exp(-albedo * depth_aerosol * mass)) * forward
    from_ground = (direct * cos + from_rayleigh + from_aerosol) * 0.06 * sky / (1 - 0.06 * sky)
    diffuse = (from_rayleigh + from_aerosol + from_ground) * short_wave
    on_grid = lambda bands: bands[:, after - 1] + (bands[:, after] - bands[:, after - 1]) * share
    return on_grid(direct) * cos, on_grid(diffuse)


def below_surface(sun_deg):
    """Gregg & Carder 1990 and Snell: light below the surface and the cosine of its path."""
    zenith = 90 - sun_deg
    direct, diffuse = clear_sky(zenith)
    w = WIND_M_S
    foam = 1.2e3 * (6.2e-4 + 1.56e-3 / w) * 2.2e-5 * w * w - 4e-4
    air = np.radians(zenith)
    water = np.arcsin(np.sin(air) / 1.34)
    with np.errstate(invalid="ignore", divide="ignore"):
        flat = ((np.sin(air - water) / np.sin(air + water)) ** 2 + (np.tan(air - water) / np.tan(air + water)) ** 2) / 2
    rough = 0.0253 * np.exp((-7.14e-4 * w + 0.0618) * (zenith - 40))
    reflected = np.minimum(1, np.where(zenith < 40, flat, rough) + foam)
    down = (1 - reflected)[:, None] * direct + (1 - 0.057 - foam) * diffuse
    share_direct = (1 - reflected) * (direct @ photopic) / (down @ photopic)
    return down, 1 / (share_direct / np.cos(water) + (1 - share_direct) / 0.85)


def attenuation(chlorophyll, mu0):
    """Morel & Maritorena 2001, attenuation and scattering of case 1 water, and Kirk 1984."""
    k = np.maximum(a_w, np.where(beyond, k_w, Kw + chi * chlorophyll[:, None] ** e))
    particles = 0.416 * chlorophyll**0.766
    b = b_w + particles[:, None] * (550 / nm)
    half = (0.425 * 0.9 - 0.19) * b / 2
    a = np.maximum(a_w, np.sqrt(half**2 + 0.81 * k**2) - half)
    weight = (0.425 * mu0 - 0.19)[:, None]
    kirk = lambda weight, mu: np.sqrt(a * a + weight * a * b) / mu
    return np.maximum(a_w, k * kirk(weight, mu0[:, None]) / kirk(0.425 * 0.9 - 0.19, 0.9))


def losses_of(piece):
    down, mu0 = below_surface(piece[:, 1])
    k = attenuation(piece[:, 0], mu0)
    left = np.exp(-k[:, None, :] * (piece[:, 2, None] * steps)[:, :, None])
    left *= down[:, None, :]
    seen = (left.reshape(-1, len(nm)) @ observers).reshape(len(piece), DEPTHS, -1)
    return np.log2((down @ observers)[:, None, :] / seen)


def run(some):
    out = np.empty((1000, DEPTHS, 5))
    for start in range(0, len(some), PIECE):
        piece = some[start : start + PIECE]
        place = start % 960
        out[place : place + len(piece)] = losses_of(piece)


run(scenes[:2000])
begun = time.perf_counter()
run(scenes)
seconds = time.perf_counter() - begun
if len(sys.argv) > 3:
    np.concatenate([losses_of(scenes[at : at + PIECE]) for at in range(0, min(count, 1000), PIECE)])[:1000].tofile(sys.argv[3])
print(json.dumps({"seconds": seconds, "scenes": count, "version": np.__version__}))
