/**
 * Diffraction loss over a smooth spherical earth. This is where antennas a metre or two above the ground lose what they lose: it
 * already holds the loss of low antennas over open ground, so that no separate two-ray loss or height gain is added.
 *
 * Sources: Recommendations ITU-R P.526-15 §3.1.1 and §3.2; P.1812-8 §4.3.2 and §4.3.3, eqs (22) to (36). The two write the first term with
 * other constants: see {@link DiffractionForm}.
 */

export type Polarization = 'horizontal' | 'vertical';

/**
 * `p1812`: units of km and MHz, the factor beta computed, as P.1812-8 has it. `p526`: metres throughout and beta taken as 1 in horizontal
 * polarisation, as in the published validation examples. They differ by less than 0.005 dB there.
 */
export type DiffractionForm = 'p1812' | 'p526';

export interface SphericalEarth {
  readonly distanceKm: number;
  /** Heights above the smooth surface at the two ends, m. */
  readonly startM: number;
  readonly endM: number;
  readonly frequencyMhz: number;
  readonly wavelengthM: number;
  readonly polarization: Polarization;
  readonly earthRadiusKm: number;
  /** Share of the path over sea, 0 … 1. */
  readonly seaShare: number;
  readonly form: DiffractionForm;
}

/** Relative permittivity and conductivity (S/m); P.1812-8 §4.3.3. */
const land = { permittivity: 22, conductivity: 0.003 };
const sea = { permittivity: 80, conductivity: 5 };

/** Loss, dB, never below 0. */
export function sphericalEarthLossDb(path: SphericalEarth): number {
  const { distanceKm: d, startM: h1, endM: h2, earthRadiusKm: a, wavelengthM: lambda } = path;
  const horizonsKm = Math.sqrt(2 * a) * (Math.sqrt(h1 / 1000) + Math.sqrt(h2 / 1000)); // (22)
  if (d >= horizonsKm) return Math.max(0, firstTermDb(path, a));

  const c = (h1 - h2) / (h1 + h2); // (24d)
  const m = (250 * d * d) / (a * (h1 + h2)); // (24e)
  const root = Math.sqrt((m + 1) / (3 * m));
  const angle = Math.acos(Math.max(-1, Math.min(1, ((3 * c) / 2) * Math.sqrt((3 * m) / (m + 1) ** 3))));
  const b = 2 * root * Math.cos(Math.PI / 3 + angle / 3); // (24c)
  const y1 = (d * (1 + b)) / 2; // (24a)
  const y2 = d - y1; // (24b)
  const clearanceM = ((h1 - (500 * y1 * y1) / a) * y2 + (h2 - (500 * y2 * y2) / a) * y1) / d; // (23)
  const constant = path.form === 'p526' ? 0.552 * Math.sqrt(1000) : 17.456;
  const neededM = constant * Math.sqrt((y1 * y2 * lambda) / d); // (25)
  if (clearanceM > neededM) return 0;
  const grazingRadiusKm = 500 * (d / (Math.sqrt(h1) + Math.sqrt(h2))) ** 2; // (26)
  return (1 - clearanceM / neededM) * Math.max(0, firstTermDb(path, grazingRadiusKm)); // (27)
}

/** The first term of the residue series for a given radius, land and sea weighed by their shares; eq (28). May be negative. */
function firstTermDb(path: SphericalEarth, radiusKm: number): number {
  const { seaShare } = path;
  const overLand = seaShare < 1 ? firstTermOver(path, radiusKm, land) : 0;
  const overSea = seaShare > 0 ? firstTermOver(path, radiusKm, sea) : 0;
  return seaShare * overSea + (1 - seaShare) * overLand;
}

function firstTermOver(path: SphericalEarth, radiusKm: number, ground: typeof land): number {
  const { frequencyMhz: f, wavelengthM: lambda, form } = path;
  const isMetric = form === 'p526';
  const imaginary = isMetric ? 60 * lambda * ground.conductivity : (18_000 * ground.conductivity) / f;
  const scale = isMetric
    ? ((2 * Math.PI * radiusKm * 1000) / lambda) ** (-1 / 3)
    : 0.36 * (radiusKm * f) ** (-1 / 3);
  const horizontal = scale * ((ground.permittivity - 1) ** 2 + imaginary ** 2) ** -0.25; // (29a)
  const k =
    path.polarization === 'horizontal' ? horizontal : horizontal * Math.hypot(ground.permittivity, imaginary); // (29b)
  const k2 = k * k;
  const k4 = k2 * k2;
  const beta =
    isMetric && path.polarization === 'horizontal'
      ? 1
      : (1 + 1.6 * k2 + 0.67 * k4) / (1 + 4.5 * k2 + 1.53 * k4); // (30)
  let x: number;
  let perMetre: number;
  if (isMetric) {
    const radiusM = radiusKm * 1000;
    x = beta * (Math.PI / (lambda * radiusM * radiusM)) ** (1 / 3) * path.distanceKm * 1000;
    perMetre = 2 * beta * ((Math.PI * Math.PI) / (lambda * lambda * radiusM)) ** (1 / 3);
  } else {
    x = 2.188 * beta * f ** (1 / 3) * radiusKm ** (-2 / 3) * path.distanceKm; // (31)
    perMetre = 0.009575 * beta * f ** (2 / 3) * radiusKm ** (-1 / 3); // (32)
  }
  return (
    -distanceTermDb(x) -
    heightTermDb(perMetre * path.startM, beta, k) -
    heightTermDb(perMetre * path.endM, beta, k)
  ); // (36)
}

/** F(X), eq (33). */
function distanceTermDb(x: number): number {
  return x >= 1.6 ? 11 + 10 * Math.log10(x) - 17.6 * x : -20 * Math.log10(x) - 5.6488 * x ** 1.425;
}

/** G(Y), eqs (34) and (35). */
function heightTermDb(y: number, beta: number, k: number): number {
  const b = beta * y;
  const g =
    b > 2 ? 17.6 * Math.sqrt(b - 1.1) - 5 * Math.log10(b - 1.1) - 8 : 20 * Math.log10(b + 0.1 * b ** 3);
  return Math.max(g, 2 + 20 * Math.log10(k));
}
