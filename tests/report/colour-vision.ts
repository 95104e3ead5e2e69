/** Colour as three linear-light sRGB channels, 0 to 1. */
export type Linear = readonly [number, number, number]

type Matrix = readonly [Linear, Linear, Linear]

/** sRGB of IEC 61966-2-1: hexadecimal to linear light. */
export function linearOf(colour: string): Linear {
  const channel = (at: number) => {
    const value = parseInt(colour.slice(at, at + 2), 16) / 255
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4
  }
  return [channel(1), channel(3), channel(5)]
}

/** Linear sRGB to CIE XYZ (D65), IEC 61966-2-1. */
const RGB_TO_XYZ: Matrix = [
  [0.4124564, 0.3575761, 0.1804375],
  [0.2126729, 0.7151522, 0.072175],
  [0.0193339, 0.119192, 0.9503041],
]

/** Ottosson 2020, "A perceptual color space for image processing": XYZ to cone-like responses, and on to L, a, b. */
const XYZ_TO_CONES: Matrix = [
  [0.8189330101, 0.3618667424, -0.1288597137],
  [0.0329845436, 0.9293118715, 0.0361456387],
  [0.0482003018, 0.2643662691, 0.633851707],
]
const CONES_TO_LAB: Matrix = [
  [0.2104542553, 0.793617785, -0.0040720468],
  [1.9779984951, -2.428592205, 0.4505937099],
  [0.0259040371, 0.7827717662, -0.808675766],
]

export function oklabOfXyz(xyz: Linear): Linear {
  const [l, m, s] = times(XYZ_TO_CONES, xyz)
  return times(CONES_TO_LAB, [Math.cbrt(l), Math.cbrt(m), Math.cbrt(s)])
}

export function oklabOf(colour: Linear): Linear {
  return oklabOfXyz(times(RGB_TO_XYZ, colour))
}

/** Straight distance in OKLab, times 100. */
export function apart(one: Linear, other: Linear): number {
  const [a, b] = [oklabOf(one), oklabOf(other)]
  return 100 * Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2])
}

/** Machado, Oliveira and Fernandes 2009, table of severity 1.0, on linear light. */
const MACHADO: Readonly<Record<'protan' | 'deutan' | 'tritan', Matrix>> = {
  protan: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deutan: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritan: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
}

/** Viénot, Brettel and Mollon 1999: linear RGB to cones, and the plane that dichromats see. */
const RGB_TO_LMS: Matrix = [
  [17.8824, 43.5161, 4.11935],
  [3.45565, 27.1554, 3.86714],
  [0.0299566, 0.184309, 1.46709],
]

export const sights: Readonly<Record<string, (colour: Linear) => Linear>> = {
  normal: (colour) => colour,
  'deutan, Machado 2009': (colour) => within(times(MACHADO.deutan, colour)),
  'protan, Machado 2009': (colour) => within(times(MACHADO.protan, colour)),
  'tritan, Machado 2009': (colour) => within(times(MACHADO.tritan, colour)),
  'deutan, Viénot 1999': (colour) => {
    const [l, , s] = times(RGB_TO_LMS, colour)
    return within(fromLms([l, 0.494207 * l + 1.24827 * s, s]))
  },
  'protan, Viénot 1999': (colour) => {
    const [, m, s] = times(RGB_TO_LMS, colour)
    return within(fromLms([2.02344 * m - 2.52581 * s, m, s]))
  },
}

/** Solves the three equations of RGB_TO_LMS by Cramer's rule. */
function fromLms(lms: Linear): Linear {
  const [one, two, three] = RGB_TO_LMS
  const whole = determinant(RGB_TO_LMS)
  const red = determinant([
    [lms[0], one[1], one[2]],
    [lms[1], two[1], two[2]],
    [lms[2], three[1], three[2]],
  ])
  const green = determinant([
    [one[0], lms[0], one[2]],
    [two[0], lms[1], two[2]],
    [three[0], lms[2], three[2]],
  ])
  const blue = determinant([
    [one[0], one[1], lms[0]],
    [two[0], two[1], lms[1]],
    [three[0], three[1], lms[2]],
  ])
  return [red / whole, green / whole, blue / whole]
}

function determinant([[a, b, c], [d, e, f], [g, h, i]]: Matrix): number {
  return a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g)
}

function times(matrix: Matrix, [x, y, z]: Linear): Linear {
  const row = ([a, b, c]: Linear) => a * x + b * y + c * z
  return [row(matrix[0]), row(matrix[1]), row(matrix[2])]
}

function within([red, green, blue]: Linear): Linear {
  const clip = (value: number) => Math.min(1, Math.max(0, value))
  return [clip(red), clip(green), clip(blue)]
}
