// @ts-check
/** Numbers as people read them; no more digits than are known. Figure and unit stay on one line. */
const NB = '\u00a0';

/** 41 %, 0.8 %, under 0.1 % @param {number} p */
export function percent(p) {
  const value = 100 * p;
  if (value > 0 && value < 0.1) return `under 0.1${NB}%`;
  if (value < 1 && value > 0) return `${value.toFixed(1)}${NB}%`;
  if (value >= 99.95 && value < 100) return `over 99.9${NB}%`;
  if (value > 99.5 && value < 100) return `${value.toFixed(1)}${NB}%`;
  return `${Math.round(value)}${NB}%`;
}

/** 41 ± 2 %; the error is left out under half a point, of figures under 1 % under a twentieth. @param {number} p @param {number} error */
export function percentError(p, error) {
  const value = 100 * p;
  const spread = 100 * error;
  if (!(spread >= (value < 1 ? 0.05 : 0.5))) return percent(p);
  const digits = value < 1 ? 1 : 0;
  return `${value.toFixed(digits)}${NB}±${NB}${spread.toFixed(digits)}${NB}%`;
}

/** 12–55 % @param {number} from @param {number} to */
export const percentRange = (from, to) =>
  `${Math.round(100 * from)}–${Math.round(100 * to)}${NB}%`;

/** 0.3 bit, 2.1 bits @param {number} b */
export function bits(b) {
  const size = Math.abs(b).toFixed(1);
  return `${size}${NB}${size === '1.0' ? 'bit' : 'bits'}`;
}

/** +0.3, −1.2 @param {number} b */
export function signedBits(b) {
  const size = Math.abs(b).toFixed(1);
  return `${b < 0 && size !== '0.0' ? '−' : '+'}${size}`;
}

/** 0.7 h @param {number} h */
export const hours = (h) => `${h < 10 ? h.toFixed(1) : Math.round(h)}${NB}h`;

/** 63° @param {number} d */
export const degrees = (d) => `${Math.round(d)}°`;

/** one cause, 3 causes @param {number} n @param {string} one @param {string} many */
export const count = (n, one, many) => (n === 1 ? `one ${one}` : `${n} ${many}`);

/** A title inside a sentence; abbreviations stay as they are. @param {string} text */
export const lower = (text) => (/^[A-Z][a-z ]/.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text);

/** A sentence of the server's, with figures kept beside their units. @param {string} text */
export const kept = (text) => text.replace(/(\d) (?=(%|h|m|s|d|dB|V|W)(\W|$))/g, `$1${NB}`);

/** A title at the head of a sentence. @param {string} text */
export const capital = (text) => text.charAt(0).toUpperCase() + text.slice(1);
