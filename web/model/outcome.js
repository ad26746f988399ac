// @ts-check
/**
 * What a person says of a pass while sitting through it.
 *
 * @typedef {'heard'|'nothing-heard'|'not-listened'} Outcome
 * @typedef {{outcome: Outcome|'', level: string, frequency: string, why: string, note: string, who: string}} Said
 */
import { iso, ms } from './time.js';

/** @type {{outcome: Outcome, letter: string, label: string}[]} */
export const OUTCOMES = [
  { outcome: 'heard', letter: 'h', label: 'heard' },
  { outcome: 'nothing-heard', letter: 'n', label: 'nothing' },
  { outcome: 'not-listened', letter: 'x', label: 'could not listen' },
];

/** @returns {Said} */
export const nothingSaid = () => ({ outcome: '', level: '', frequency: '', why: '', note: '', who: localStorage.getItem('hark.who') ?? '' });

/** The span it speaks of: the window, but not past now. @param {{aos: string, los: string}} w @param {number} now @param {boolean} clockStands a mission's own clock lets an outcome be told beforehand */
export function spanOf(w, now, clockStands) {
  const early = now < ms(w.aos) && !clockStands;
  const to = clockStands ? ms(w.los) : Math.min(now, ms(w.los));
  return { from: ms(w.aos), to, early };
}

/** Keys of the journal for it. @param {Said} said @param {{station: string, aos: string, los: string}} w @param {{from: number, to: number}} span @returns {Record<string, string>} */
export function keysOfOutcome(said, w, span) {
  /** @type {Record<string, string>} */
  const keys = { station: w.station, from: iso(span.from), to: iso(span.to), who: said.who.trim(), note: said.note.trim() };
  if (said.outcome === 'heard') {
    keys.level_db = said.level.trim();
    keys.frequency_hz = hertz(said.frequency);
  }
  if (said.outcome === 'not-listened') keys.why = said.why.trim();
  return Object.fromEntries(Object.entries(keys).filter(([, v]) => v !== ''));
}

/** What a person types as MHz or Hz, in Hz; anything else as it is, for the server to refuse in words. @param {string} text */
export function hertz(text) {
  const plain = text.replace(/[\s\u00a0\u202f]/g, '').replace(/(mhz|hz)$/i, '').replace(',', '.');
  const value = Number(plain);
  if (plain === '' || !Number.isFinite(value)) return text.trim();
  return String(Math.round(value < 1e5 ? value * 1e6 : value));
}
