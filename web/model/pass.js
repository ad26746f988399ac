// @ts-check
/**
 * A pass second by second, read between the samples the server sent.
 *
 * @typedef {{object: string, from: string, stepSeconds: number, rows: [number, number, number, number][]}} PassTrack
 * @typedef {{name: string, frequencyHz: number, intervalSeconds: number, durationSeconds: number, states: string[]}} Beacon
 * @typedef {{skyline: [number, number][], tracks: PassTrack[], beacons: Beacon[], receiverHz: number|null}} PassData
 * @typedef {{azimuthDeg: number, elevationDeg: number, rangeKm: number, hzPerGhz: number}} Moment
 * @typedef {'before'|'soon'|'running'|'over'} Phase
 *
 * Rows are azimuth, elevation, range in km and the shift of a carrier of 1 GHz in Hz.
 */
import { MINUTE, ms } from './time.js';

/** From here on the page counts seconds, ms. */
const SOON = 10 * MINUTE;
const HZ_A_GHZ = 1e9;

/** Where it stands at a time; before the first sample and after the last, as at them. @param {PassTrack} track @param {number} time @returns {Moment|undefined} */
export function momentAt(track, time) {
  const last = track.rows.length - 1;
  if (last < 0) return undefined;
  const place = Math.max(0, Math.min(last, (time - ms(track.from)) / 1000 / track.stepSeconds));
  const i = Math.min(Math.floor(place), Math.max(0, last - 1));
  const a = track.rows[i];
  const b = track.rows[Math.min(i + 1, last)];
  const part = place - i;
  const mix = (/** @type {number} */ k) => a[k] + (b[k] - a[k]) * part;
  const turn = ((b[0] - a[0] + 540) % 360) - 180;
  return { azimuthDeg: (a[0] + turn * part + 360) % 360, elevationDeg: mix(1), rangeKm: mix(2), hzPerGhz: mix(3) };
}

/** The track to follow: of the object that weighs most. @param {PassData} data @param {Map<string, number>} weights */
export const heaviest = (data, weights) =>
  [...data.tracks].sort((a, b) => (weights.get(b.object) ?? 0) - (weights.get(a.object) ?? 0))[0];

/** Where to tune to hear what is sent on a frequency, Hz. @param {number} hz @param {number} hzPerGhz */
export const receivedHz = (hz, hzPerGhz) => hz * (1 + hzPerGhz / HZ_A_GHZ);

/** What to send so that it arrives on a frequency, Hz. @param {number} hz @param {number} hzPerGhz */
export const sentHz = (hz, hzPerGhz) => hz / (1 + hzPerGhz / HZ_A_GHZ);

/** @param {{aos: string, los: string}} w @param {number} now @returns {Phase} */
export function phaseOf(w, now) {
  if (now > ms(w.los)) return 'over';
  if (now >= ms(w.aos)) return 'running';
  return ms(w.aos) - now <= SOON ? 'soon' : 'before';
}

/** When bursts are due, from one heard before or after. @param {number} from @param {number} to @param {number} interval ms @param {number} one ms, any burst */
export function dueTimes(from, to, interval, one) {
  const due = [];
  for (let t = one + Math.ceil((from - one) / interval) * interval; t <= to; t += interval) due.push(t);
  return due;
}

/** 437.258 410 MHz @param {number} hz */
export function megahertz(hz) {
  const [whole, part] = (Math.round(hz / 10) / 1e5).toFixed(5).split('.');
  return `${whole}.${part.slice(0, 3)}\u202f${part.slice(3)}\u00a0MHz`;
}

/** +9.4 kHz, −310 Hz @param {number} hz */
export function shiftWords(hz) {
  const sign = hz < 0 ? '−' : '+';
  const size = Math.abs(hz);
  return size >= 1000 ? `${sign}${(size / 1000).toFixed(2)}\u00a0kHz` : `${sign}${Math.round(size)}\u00a0Hz`;
}
