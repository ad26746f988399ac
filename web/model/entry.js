// @ts-check
import { typedTime } from './time.js';
/** @typedef {import('./windows.js').Loggable} Loggable */

/**
 * A field of the form. `key` is the journal's.
 * @typedef {{key: string, label: string, type: 'text'|'number'|'time'|'choice'|'long',
 *   choices?: [string, string][], hint?: string, more?: boolean}} Field
 * @typedef {{kind: string, label: string, letter: string, place: 'window'|'moment'|'none',
 *   fields: Field[]}} Form
 */

/** @type {Field} */
const WAY = {
  key: 'way', label: 'How we listened', type: 'choice', more: true,
  choices: [['', 'as this station usually does'], ['decoder', 'decoder'], ['ear', 'by ear'],
    ['waterfall', 'watching a waterfall'], ['recording', 'recording, searched afterwards']],
};
/** @type {Field} */
const FREQUENCY = { key: 'frequency_hz', label: 'Frequency, Hz', type: 'number', more: true };
/** @type {Field} */
const OBJECT = { key: 'object', label: 'Object followed', type: 'text', more: true };

/** Every kind the form can log, in the order people need them. @type {Form[]} */
export const FORMS = [
  { kind: 'heard', label: 'heard', letter: 'h', place: 'window', fields: [
    { key: 'level_db', label: 'Level over noise, dB', type: 'number' },
    { key: 'call_sign', label: 'Call sign, if read', type: 'text' },
    { key: 'form', label: 'Form', type: 'choice', more: true,
      choices: [['', 'not said'], ['carrier', 'carrier'], ['morse', 'Morse'], ['frames', 'frames'], ['fragment', 'a fragment']] },
    { ...FREQUENCY }, { ...OBJECT }] },
  { kind: 'nothing-heard', label: 'nothing heard', letter: 'n', place: 'window', fields: [
    { ...WAY },
    { key: 'window_hz', label: 'Half-width listened to, Hz', type: 'number', more: true },
    { key: 'offset_s', label: 'Followed so much later, s', type: 'number', more: true },
    { key: 'noise_db', label: 'Noise above the usual, dB', type: 'number', more: true },
    { ...FREQUENCY }, { ...OBJECT }] },
  { kind: 'not-listened', label: 'could not listen', letter: 'x', place: 'window', fields: [
    { key: 'why', label: 'Why', type: 'text' }] },
  { kind: 'telemetry', label: 'battery voltage', letter: '', place: 'moment', fields: [
    { key: 'volts', label: 'Battery, V', type: 'number' },
    { key: 'volts_sd', label: 'Give or take, V', type: 'number' }] },
  { kind: 'station-check', label: 'station check', letter: '', place: 'moment', fields: [
    { key: 'station', label: 'Station', type: 'choice' },
    { key: 'result', label: 'A satellite known to send was', type: 'choice',
      choices: [['heard', 'heard'], ['missed', 'missed']] },
    { key: 'level_db', label: 'Level, dB', type: 'number', more: true },
    { key: 'expected_db', label: 'Level expected, dB', type: 'number', more: true }] },
  { kind: 'note', label: 'note', letter: '', place: 'moment', fields: [
    { key: 'text', label: 'Words', type: 'long' }] },
  { kind: 'correction', label: 'correction', letter: '', place: 'none', fields: [] },
];

/** @param {string} kind */
export const formOf = (kind) => FORMS.find((f) => f.kind === kind) ?? FORMS[1];

/** What stands in the form. @typedef {{kind: string, window: string, values: Record<string, string>}} Draft */

/**
 * The keys to send for what stands in the form; fields left empty are left out.
 * @param {Draft} draft
 * @param {Loggable|undefined} window the chosen window; undefined for another time
 * @returns {Record<string, string>}
 */
export function keysOf(draft, window) {
  const form = formOf(draft.kind);
  const v = draft.values;
  /** @type {Record<string, string>} */
  const keys = {};
  if (form.place === 'window') {
    keys.station = window?.station ?? v.station ?? '';
    keys.from = window?.from ?? typedTime(v.from ?? '');
    keys.to = window?.to ?? typedTime(v.to ?? '');
  } else if (form.place === 'moment') {
    keys.at = typedTime(v.at ?? '');
  }
  for (const field of form.fields) keys[field.key] = (v[field.key] ?? '').trim();
  if (draft.kind === 'correction') Object.assign(keys, correctionKeys(v));
  keys.who = (v.who ?? '').trim();
  if (draft.kind !== 'note') keys.note = (v.note ?? '').trim();
  return Object.fromEntries(Object.entries(keys).filter(([, value]) => value !== ''));
}

/** Replacement keys are held as `new:KEY`. @param {Record<string, string>} v */
function correctionKeys(v) {
  /** @type {Record<string, string>} */
  const keys = { of: v.of ?? '' };
  if (v.withdrawn === 'yes') return { ...keys, withdrawn: 'yes' };
  for (const [name, value] of Object.entries(v)) {
    if (name.startsWith('new:')) keys[name.slice(4)] = value.trim();
  }
  return keys;
}

/**
 * Which field a problem speaks of, if its place or sentence names a key.
 * @param {import('./types.js').Problem} problem
 * @param {string[]} keys
 */
export function fieldOf(problem, keys) {
  const words = (/** @type {string} */ text) => text.split(/[^a-z_]+/i);
  return keys.find((k) => words(problem.where).includes(k)) ?? keys.find((k) => words(problem.what).includes(k));
}
