// @ts-check
/**
 * What is known of the orbits.
 *
 * @typedef {{object: string, weight?: number, sets: number, state: boolean, lastEpoch: string, ageHours: number,
 *   alongTrackSdS: number, measuredPerDayS?: number, believedPerDayS: number, jumps: number, heightKm: number,
 *   sinksMPerDay: number, soonestYears?: number, latestYears?: number, words: string}} Known
 * @typedef {{object: string, missesHz: number[], seconds: number[], hz: number[]}} Line
 * @typedef {{station: string, from: string, points: {seconds: number, hz: number}[], lines: Line[]}} Pass
 * @typedef {{object: string, prior: number, posterior: number, missesHz: number, lateS: number, lateSdS: number, believedSdS: number}} Suspect
 * @typedef {{file: string, words: string, verdict: 'found'|'cannot tell'|'fits none', likeliest: string, nominalHz: number,
 *   scatterHz: number, candidates: Suspect[], passes: Pass[]}} Curve
 * @typedef {{revision: number, now: string, objects: Known[], curves: Curve[], problems: import('./types.js').Problem[]}} Orbit
 */

const NONE = 'none';

/** The suspects of a curve, heaviest first, at most so many. @param {Curve} curve @param {number} [most] */
export const leading = (curve, most = 4) =>
  [...curve.candidates].sort((a, b) => b.posterior - a.posterior || b.prior - a.prior).slice(0, most);

/** The likeliest before the curve that it all but rules out. @param {Curve} curve */
export function ruledOut(curve) {
  return [...curve.candidates]
    .filter((c) => c.object !== NONE && c.posterior < 0.01)
    .sort((a, b) => b.prior - a.prior)[0];
}

/** Candidates, by weight. @param {Orbit} data */
export const candidates = (data) => data.objects.filter((o) => o.weight !== undefined);

/** @param {Orbit} data */
export const others = (data) => data.objects.filter((o) => o.weight === undefined);

/** Hours up to two days, then days: {@code 13 h}, {@code 5.2 d}. @param {number} hours */
export const age = (hours) => (Math.abs(hours) < 48 ? `${Math.round(hours)} h` : `${(hours / 24).toFixed(1)} d`);

/** When an orbit ends, in the fewest words. @param {Known} known */
export function end(known) {
  const { soonestYears: soon, latestYears: late } = known;
  if (soon === undefined || late === undefined) return 'not foreseen';
  if (soon > 25) return 'in more than 25 years';
  if (late < 2) return `in ${Math.round(soon * 365.25)} to ${Math.round(late * 365.25)} days`;
  return late > 25 ? `in ${soon.toFixed(1)} years or later` : `in ${soon.toFixed(1)} to ${late.toFixed(1)} years`;
}
