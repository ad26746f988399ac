// @ts-check
/** Times are UTC everywhere and say so with a Z. */

const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];
export const MINUTE = 60_000;
export const HOUR = 60 * MINUTE;
export const DAY = 24 * HOUR;

/** @param {number} n */
const two = (n) => String(n).padStart(2, '0');

/** Milliseconds of an ISO time or of milliseconds. @param {string|number} time */
export const ms = (time) => (typeof time === 'number' ? time : Date.parse(time));

/** 14:03Z @param {string|number} time */
export function clock(time) {
  const d = new Date(Math.floor(ms(time) / MINUTE) * MINUTE);
  return `${two(d.getUTCHours())}:${two(d.getUTCMinutes())}Z`;
}

/** 14:03:20Z @param {string|number} time */
export function clockSeconds(time) {
  const d = new Date(ms(time));
  return `${two(d.getUTCHours())}:${two(d.getUTCMinutes())}:${two(d.getUTCSeconds())}Z`;
}

/** 17 Oct @param {string|number} time */
export function day(time) {
  const d = new Date(ms(time));
  return `${d.getUTCDate()} ${MONTHS[d.getUTCMonth()]}`;
}

/** 17 Oct 2026 @param {string|number} time */
export const date = (time) => `${day(time)} ${new Date(ms(time)).getUTCFullYear()}`;

/** Oct 2026 @param {string|number} time */
export const month = (time) => date(time).replace(/^\d+ /, '');

/** 17 Oct 14:03Z @param {string|number} time */
export const dayClock = (time) => `${day(time)} ${clock(time)}`;

/** Full seconds, as the journal writes them. @param {string|number} time */
export const iso = (time) => new Date(ms(time)).toISOString().replace(/\.000Z$/, 'Z');

/** 6 d 4 h, 1 h 12 m, 9 min @param {number} span milliseconds, at least 0 */
export function span(span) {
  const minutes = Math.round(Math.max(0, span) / MINUTE);
  if (minutes < 60) return `${minutes} min`;
  const hours = Math.floor(minutes / 60);
  if (hours < 48) return `${hours} h ${two(minutes % 60)} m`;
  const wholeHours = Math.round(minutes / 60);
  return `${Math.floor(wholeHours / 24)} d ${wholeHours % 24} h`;
}

/** 4:12, 1:04:12 @param {number} span milliseconds, at least 0 */
export function countdown(span) {
  const all = Math.max(0, Math.ceil(span / 1000));
  const hours = Math.floor(all / 3600);
  const rest = `${two(Math.floor(all / 60) % 60)}:${two(all % 60)}`;
  return hours > 0 ? `${hours}:${rest}` : rest.replace(/^0/, '');
}

/**
 * What a person types for a time, made ISO: a blank for the T, seconds and Z may be left out.
 * Anything else passes unchanged, for the server to refuse in words.
 *
 * @param {string} text
 */
export function typedTime(text) {
  const found = /^(\d{4}-\d\d-\d\d)[ T](\d\d:\d\d)(:\d\d(?:\.\d{1,9})?)?\s*Z?$/i.exec(text.trim());
  return found ? `${found[1]}T${found[2]}${found[3] ?? ':00'}Z` : text.trim();
}
