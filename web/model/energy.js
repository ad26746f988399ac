// @ts-check
/**
 * The electrical system as the page reads it.
 *
 * @typedef {'off'|'boot'|'safe'|'nominal'} BusState
 * @typedef {import('./types.js').EnergyPoint & {states: Record<BusState, number>}} Point
 * @typedef {{orbitStart: string, orbitEnd: string, arrayWh: number, loadsWh: number, lossesWh: number,
 *   storedWh: number, offeredWh: number, neededWh: number, marginWh: number, margin: number|null,
 *   safeWh: number, nominalWh: number}} Orbit
 * @typedef {{from: string, betaLeastDeg: number, betaMostDeg: number, eclipseFraction: number,
 *   longestShadowMinutes: number}} Month
 * @typedef {{from: string, to: string, fromSpreadDays: number, toSpreadDays: number, sure: boolean}} FullSun
 * @typedef {{key: string, value: string, mean: number, unit: string, least: number, greatest: number,
 *   whole: boolean}} Figure
 * @typedef {{revision: number, now: string, end: string, members: number, simulated: number, cutoffSoc: number,
 *   energy: Point[], balance: Orbit[], year: Month[], fullSun: FullSun[], seasons: string, numbers: Figure[]}} Energy
 * @typedef {{socP50AtHorizon: number, socP05AtHorizon: number, states: Record<BusState, number>,
 *   transmitting: number}} Side
 * @typedef {{whatIf: Point[], whatIfBalance: Orbit[],
 *   whatIfChange: {sentence: string, basis: string, before: Side, after: Side}}} WhatIf
 * @typedef {{title: string, share: number}} Share
 * @typedef {{words: string, share: number, typicalSince: string, member: number, explanations: Share[]}} Reason
 * @typedef {{time: string, states: {state: BusState, share: number, member: number, reasons: Reason[]}[]}} WhyThere
 * @typedef {{time: string, soc: number|null, state: BusState, change: string|null}} Row
 * @typedef {{member: number, members: number, weight: number,
 *   events: {title: string, onset: string, does: string}[], trace: Row[]}} Trace
 */
import { DAY, ms } from './time.js';

/** @type {BusState[]} from the bottom of the band upwards */
export const STATES = ['nominal', 'safe', 'boot', 'off'];

/** How a state is said in a sentence. @type {Record<BusState, string>} */
export const SAID = { off: 'off', boot: 'starting up', safe: 'in safe mode', nominal: 'in nominal mode' };

/** The time shown. @param {Energy} data @param {number} days 0 for all @param {number} from @returns {[number, number]} */
export function shownSpan(data, days, from) {
  const first = ms(data.energy[0].time);
  const last = ms(data.energy[data.energy.length - 1].time);
  if (days === 0 || days * DAY >= last - first) return [first, last];
  const start = Math.max(first, Math.min(last - days * DAY, from));
  return [start, start + days * DAY];
}

/** Index of the point nearest a time; points are evenly spaced or nearly so. @param {Point[]} points @param {number} time */
export function nearestIndex(points, time) {
  let low = 0;
  let high = points.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (ms(points[middle].time) <= time) low = middle; else high = middle;
  }
  return Math.abs(ms(points[high].time) - time) < Math.abs(ms(points[low].time) - time) ? high : low;
}

/** The orbit a time falls in. @param {Orbit[]} orbits @param {number} time */
export const orbitAt = (orbits, time) => orbits.find((o) => ms(o.orbitStart) <= time && time < ms(o.orbitEnd));

/** Where a key leads from a time. @param {Energy} data @param {number} at @param {string} key @returns {number|undefined} */
export function moved(data, at, key) {
  const points = data.energy;
  const i = nearestIndex(points, at);
  const place = (/** @type {number} */ n) => ms(points[Math.max(0, Math.min(points.length - 1, n))].time);
  const starts = data.balance.map((o) => ms(o.orbitStart));
  switch (key) {
    case 'ArrowRight': case 'ArrowUp': return place(i + 1);
    case 'ArrowLeft': case 'ArrowDown': return place(i - 1);
    case 'PageUp': return starts.find((t) => t > at) ?? place(points.length - 1);
    case 'PageDown': return starts.reverse().find((t) => t < at) ?? place(0);
    case 'Home': return place(0);
    case 'End': return place(points.length - 1);
    default: return undefined;
  }
}

/** The number to begin with: the one most often asked about. @param {Figure[]} numbers */
export const firstFigure = (numbers) => numbers.find((n) => n.key.endsWith('capacity_Ah')) ?? numbers[0];

/** A slider's value as a person would type it. @param {number} value @param {Figure} figure */
export function typed(value, figure) {
  if (figure.whole) return String(Math.round(value));
  const digits = Math.max(0, 2 - Math.floor(Math.log10(Math.max(1e-9, figure.greatest - figure.least))));
  return String(Number(value.toFixed(Math.min(9, digits))));
}

/** Changes of state up to a time, latest first. @param {Trace} trace @param {number} time */
export const storyUntil = (trace, time) =>
  trace.trace.filter((r) => r.change !== null && ms(r.time) <= time).reverse();
