/**
 * Nominal outside diameters of hypodermic needle gauges, in mm. A table, not a conversion: no factor leads from gauge to length, and the
 * bore depends on the wall. Source: common medical needle size table, from memory; 18 G and 21 G checked against the check values.
 */
const outsideDiameter: ReadonlyMap<number, number> = new Map([
  [10, 3.404],
  [11, 3.048],
  [12, 2.769],
  [13, 2.413],
  [14, 2.108],
  [15, 1.829],
  [16, 1.651],
  [17, 1.473],
  [18, 1.27],
  [19, 1.067],
  [20, 0.908],
  [21, 0.819],
  [22, 0.718],
  [23, 0.642],
  [24, 0.566],
  [25, 0.515],
  [26, 0.464],
  [27, 0.413],
  [28, 0.362],
  [29, 0.337],
  [30, 0.312],
  [31, 0.261],
  [32, 0.235],
  [33, 0.21],
  [34, 0.184],
]);

/** Nominal outside diameter in mm; undefined for a gauge that is not in the table. Never the bore. */
export function needleOutsideDiameter(gauge: number): number | undefined {
  return outsideDiameter.get(gauge);
}
