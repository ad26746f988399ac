// @ts-check
/**
 * The case for going on, as the server sends it. Weights are shares of all that still fits, 0…1.
 *
 * @typedef {{title: string, weight: number}} Part
 * @typedef {{from: string, until: string|null, spreadDays: number, what: string, weight: number|null,
 *   basis: string, procedure: string|null}} Dated
 * @typedef {{revision: number, mission: string, now: string, until: string, hours: number, found: number, foundError: number,
 *   byListening: number, headline: string, curve: {costHours: number, heard: number}[],
 *   steps: {fromHours: number, toHours: number, adds: number}[],
 *   effort: {gain: number, perHours: number, fromHours: number|null, monthHours: number, monthAtMost: number},
 *   dates: Dated[], orbit: {heightKm: number, early: string, middle: string|null, late: string|null}|null,
 *   unheard: {id: string, sentence: string, weight: number, parts: Part[]}[], notWorkedOut: number,
 *   watch: {station: string, unattended: boolean, windows: number, hoursPerWeek: number, found: number, catches: Part[]}|null,
 *   shifts: {assumption: string, lowWords: string, low: number, highWords: string, high: number}[],
 *   assumptions: string[], goingOn: string[], stopping: string[], defensible: string}} Case
 */

/** Groups from this weight on have a line of their own. */
const LEAST = 0.005;

/** @param {Case} c */
export const groups = (c) => c.unheard.filter((g) => g.weight >= LEAST);

/** The point of the curve at a number of hours: straight between its points, level after them. @param {Case['curve']} curve @param {number} hours */
export function foundAt(curve, hours) {
  let before = { costHours: 0, heard: 0 };
  for (const point of curve) {
    if (point.costHours >= hours) {
      const width = point.costHours - before.costHours;
      return before.heard + (width > 0 ? ((hours - before.costHours) / width) * (point.heard - before.heard) : 0);
    }
    before = point;
  }
  return before.heard;
}
