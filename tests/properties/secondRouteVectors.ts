/** Vectors and elementary matrices of the second route. */

export type Vector = readonly [number, number, number];
export type Matrix = readonly [Vector, Vector, Vector];

export function radians(degrees: number): number {
  return (degrees / 180) * Math.PI;
}

export function cross(a: Vector, b: Vector): Vector {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

export function inner(a: Vector, b: Vector): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

export function plus(a: Vector, b: Vector, factor = 1): Vector {
  return [a[0] + factor * b[0], a[1] + factor * b[1], a[2] + factor * b[2]];
}

export function times(a: Vector, factor: number): Vector {
  return [a[0] * factor, a[1] * factor, a[2] * factor];
}

export function length(a: Vector): number {
  return Math.sqrt(inner(a, a));
}

/** Components along new axes that are turned by `angle` about z, and about x. */
export function axesTurnedAboutZ(angle: number): Matrix {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return [
    [c, s, 0],
    [-s, c, 0],
    [0, 0, 1],
  ];
}

export function axesTurnedAboutX(angle: number): Matrix {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return [
    [1, 0, 0],
    [0, c, s],
    [0, -s, c],
  ];
}

function column(m: Matrix, i: 0 | 1 | 2): Vector {
  return [m[0][i], m[1][i], m[2][i]];
}

export function transposed(m: Matrix): Matrix {
  return [column(m, 0), column(m, 1), column(m, 2)];
}

export function apply(m: Matrix, v: Vector): Vector {
  return [inner(m[0], v), inner(m[1], v), inner(m[2], v)];
}

export function product(a: Matrix, b: Matrix): Matrix {
  const rows = a.map((row) => [inner(row, column(b, 0)), inner(row, column(b, 1)), inner(row, column(b, 2))]);
  return rows as unknown as Matrix;
}
