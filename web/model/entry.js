// @ts-check
import { typedTime } from './time.js';
/** @typedef {import('./windows.js').Loggable} Loggable */

/**
 * A field of the form. `key` is the journal's.
 * @typedef {{key: string, label: string, type: 'text'|'number'|'time'|'choice'|'long',
 *   choices?: [string, string][], hint?: string, more?: boolean}} Field
 * @typedef {{kind: string, label: string, letter: string, place: 'window'|'span'|'moment'|'none',
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

/** @type {[string, string][]} */
const YES_NO = [['', 'not said'], ['yes', 'yes'], ['no', 'no']];

/** A telemetered number with what it may be wrong by. @param {string} key @param {string} label @param {string} unit @returns {Field[]} */
const withSpread = (key, label, unit) => [
  { key, label, type: 'number', more: true }, { key: `${key}_sd`, label: `Give or take, ${unit}`, type: 'number', more: true }];

/** Every kind the form can log, in the order people need them. @type {Form[]} */
export const FORMS = [
  { kind: 'heard', label: 'heard', letter: 'h', place: 'window', fields: [
    { key: 'level_db', label: 'Level over noise, dB', type: 'number' },
    { key: 'call_sign', label: 'Call sign, if read', type: 'text' },
    { key: 'form', label: 'Form', type: 'choice', more: true,
      choices: [['', 'not said'], ['carrier', 'carrier'], ['morse', 'Morse'], ['frames', 'frames'], ['fragment', 'a fragment']] },
    { ...FREQUENCY },
    { key: 'frequency_sd_hz', label: 'Frequency, give or take, Hz', type: 'number', more: true },
    { ...OBJECT }] },
  { kind: 'nothing-heard', label: 'nothing heard', letter: 'n', place: 'window', fields: [
    { ...WAY },
    { key: 'window_hz', label: 'Half-width listened to, Hz', type: 'number', more: true },
    { key: 'offset_s', label: 'Followed so much later, s', type: 'number', more: true },
    { key: 'noise_db', label: 'Noise above the usual, dB', type: 'number', more: true },
    { ...FREQUENCY }, { ...OBJECT }] },
  { kind: 'not-listened', label: 'could not listen', letter: 'x', place: 'window', fields: [
    { key: 'why', label: 'Why', type: 'text' }] },
  { kind: 'telemetry', label: 'telemetry', letter: '', place: 'moment', fields: [
    { key: 'volts', label: 'Battery, V', type: 'number' },
    { key: 'volts_sd', label: 'Give or take, V', type: 'number' },
    ...withSpread('amps', 'Current into the battery, A', 'A'), ...withSpread('battery_c', 'Battery, °C', '°C'),
    ...withSpread('resets', 'Restarts since separation', 'restarts'), ...withSpread('uptime_s', 'Since the last restart, s', 's'),
    ...withSpread('beacon_counter', 'Beacon counter', 'counts'),
    { key: 'mode', label: 'Mode', type: 'choice', more: true,
      choices: [['', 'not said'], ['boot', 'boot'], ['safe', 'safe'], ['nominal', 'nominal']] }] },
  { kind: 'station-check', label: 'station check', letter: '', place: 'moment', fields: [
    { key: 'station', label: 'Station', type: 'choice' },
    { key: 'result', label: 'A satellite known to send was', type: 'choice',
      choices: [['heard', 'heard'], ['missed', 'missed']] },
    { key: 'level_db', label: 'Level over noise, dB', type: 'number' },
    { key: 'expected_db', label: 'Level expected, dB', type: 'number' },
    { key: 'same_band', label: 'In our band', type: 'choice', more: true, choices: YES_NO },
    { key: 'same_hand', label: 'With our hand of polarisation', type: 'choice', more: true, choices: YES_NO }] },
  { kind: 'outside-report', label: 'others report', letter: '', place: 'span', fields: [
    { key: 'place', label: 'Where, degrees north and east', type: 'text', hint: '51.4,-0.2' },
    { key: 'station', label: 'Who or which station', type: 'text' },
    { key: 'heard', label: 'They heard it', type: 'choice', choices: [['yes', 'yes'], ['no', 'no']] },
    { key: 'sensitivity_db', label: 'Better than our first station, dB', type: 'number', more: true },
    { key: 'clock_sd_s', label: 'Their clock, give or take, s', type: 'number', more: true },
    { key: 'trust', label: 'Trust, 0 to 1', type: 'number', more: true }] },
  { kind: 'object', label: 'object', letter: '', place: 'moment', fields: [
    { key: 'object', label: 'Object', type: 'text' },
    { key: 'verdict', label: 'It is', type: 'choice',
      choices: [['confirmed', 'confirmed as ours'], ['excluded', 'not ours']] },
    { key: 'source', label: 'Who says so', type: 'text', hint: 'catalogue, neighbour, operator' }] },
  { kind: 'doppler', label: 'Doppler fit', letter: '', place: 'moment', fields: [
    { key: 'object', label: 'Object that fits', type: 'text' },
    { key: 'file', label: 'Curve', type: 'text' },
    { key: 'station', label: 'Measured at', type: 'text', more: true }] },
  { kind: 'search-result', label: 'recording searched', letter: '', place: 'window', fields: [
    { key: 'file', label: 'Recording', type: 'text' },
    { key: 'detected', label: 'A beacon was found', type: 'choice', choices: [['no', 'no'], ['yes', 'yes']] },
    { key: 'level_db_hz', label: 'Level found, dB·Hz', type: 'number', more: true },
    { key: 'upper_limit_db_hz', label: 'Would have found, dB·Hz', type: 'number', more: true },
    { key: 'offset_s', label: 'Searched so much later, s', type: 'number', more: true },
    { ...OBJECT }] },
  { kind: 'motion', label: 'motion seen', letter: '', place: 'moment', fields: [
    { key: 'tumble_s', label: 'Time of one turn, s', type: 'number' },
    { key: 'tumble_sd_s', label: 'Give or take, s', type: 'number', more: true },
    { key: 'decay', label: 'Sinks against its neighbours', type: 'choice',
      choices: [['', 'not said'], ['faster', 'faster'], ['slower', 'slower'], ['same', 'the same']] },
    { key: 'source', label: 'Seen by', type: 'text', more: true }] },
  { kind: 'separation', label: 'separation', letter: '', place: 'moment', fields: [
    { key: 'state', label: 'It is', type: 'choice', choices: [['confirmed', 'confirmed'], ['unknown', 'unknown']] },
    { key: 'file', label: 'State vector or report', type: 'text' }] },
  { kind: 'command-sent', label: 'command sent', letter: '', place: 'moment', fields: [
    { key: 'station', label: 'Station', type: 'choice' },
    { key: 'command', label: 'Command', type: 'text' },
    { key: 'acknowledged', label: 'It answered', type: 'choice', choices: YES_NO },
    { key: 'power_w', label: 'Power, W', type: 'number', more: true },
    { key: 'repeats', label: 'Sent how often', type: 'number', more: true }] },
  { kind: 'note', label: 'note', letter: '', place: 'moment', fields: [
    { key: 'text', label: 'Words', type: 'long' }] },
  { kind: 'correction', label: 'correction', letter: '', place: 'none', fields: [] },
];

/** @param {string} kind */
export const formOf = (kind) => FORMS.find((f) => f.kind === kind) ?? FORMS[1];

/**
 * What stands in the form. `was`: the keys of an entry that is corrected, before the correction.
 * @typedef {{kind: string, window: string, values: Record<string, string>, was?: Record<string, string>}} Draft
 */

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
  } else if (form.place === 'span') {
    keys.from = typedTime(v.from ?? '');
    keys.to = typedTime(v.to ?? '');
  } else if (form.place === 'moment') {
    keys.at = typedTime(v.at ?? '');
  }
  for (const field of form.fields) keys[field.key] = (v[field.key] ?? '').trim();
  const replacing = draft.kind === 'correction' ? correctionKeys(v, draft.was ?? {}) : {};
  keys.who = (v.who ?? '').trim();
  if (draft.kind !== 'note') keys.note = (v.note ?? '').trim();
  return { ...Object.fromEntries(Object.entries(keys).filter(([, value]) => value !== '')), ...replacing };
}

const TIMES = ['from', 'to', 'at'];

/**
 * Replacement keys are held as `new:KEY`; only those that differ are sent, an emptied one empty: it takes the key away.
 * @param {Record<string, string>} v @param {Record<string, string>} was
 */
function correctionKeys(v, was) {
  /** @type {Record<string, string>} */
  const keys = { of: v.of ?? '' };
  if (v.withdrawn === 'yes') return { ...keys, withdrawn: 'yes' };
  if (v.withdrawn === 'no') keys.withdrawn = 'no';
  for (const [name, value] of Object.entries(v)) {
    if (!name.startsWith('new:')) continue;
    const key = name.slice(4);
    const is = TIMES.includes(key) ? typedTime(value) : value.trim();
    if (is !== (was[key] ?? '')) keys[key] = is;
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
