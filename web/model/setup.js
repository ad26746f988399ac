// @ts-check
/** The mission's files as a person reads and tries them. */
/** @typedef {import('./types.js').Assessment} Assessment */
/** @typedef {import('../api/setup.js').Key} Key */
/** @typedef {import('../api/setup.js').Edit} Edit */

export const MISSION = 'mission.yaml';
export const CAUSES = 'causes.yaml';

/** The key of a cause's prior. @param {string} id */
export const priorKey = (id) => `events.${id}.probability`;

/** What is typed as per cent, as the file writes it; what is no number stays as typed, for the server to refuse. @param {string} percent */
export function shareOf(percent) {
  const plain = percent.trim().replace('%', '').trim();
  const value = Number(plain);
  return plain === '' || !Number.isFinite(value) ? percent.trim() : String(Number((value / 100).toPrecision(8)));
}

/** A share as a person types it. @param {number} share */
export const perCent = (share) => String(Number((100 * share).toPrecision(6)));

/** A list of edits with one more, or with another value for the same key. @param {Edit[]} edits @param {Edit} edit */
export const withEdit = (edits, edit) => [...edits.filter((e) => e.file !== edit.file || e.key !== edit.key), edit];

/** Keys in groups, in the order written: what stands before the second dot, or the item of a list. @param {Key[]} keys @param {string} words */
export function groupsOf(keys, words) {
  const wanted = words.toLowerCase().split(/\s+/).filter((w) => w !== '');
  /** @type {Map<string, Key[]>} */
  const groups = new Map();
  for (const k of keys) {
    if (!wanted.every((w) => `${k.key} ${k.value} ${k.line ? '' : 'default'}`.toLowerCase().includes(w))) continue;
    const group = groupOf(k.key);
    groups.set(group, [...(groups.get(group) ?? []), k]);
  }
  return groups;
}

/** spacecraft.battery, stations[Saltmere], crew @param {string} key */
function groupOf(key) {
  const parts = key.split('.');
  if (parts[0] === 'spacecraft') return parts.length > 2 ? `${parts[0]}.${parts[1].replace(/\[.*/, '')}` : parts[0];
  return parts[0];
}

/** A group's name for people. @param {string} group */
export function groupName(group) {
  const item = /^(\w+)\[(.+)\]$/.exec(group);
  if (item && item[1] === 'stations') return `Station ${item[2]}`;
  const last = group.split('.').pop() ?? group;
  return (last.charAt(0).toUpperCase() + last.slice(1)).replaceAll('_', ' ');
}

/** What of a key stands after its group's name. @param {string} key @param {string} group */
export const within = (key, group) => (key.startsWith(`${group}.`) ? key.slice(group.length + 1) : key).replace(new RegExp(`^${group.split('.').pop()}\\[(.+?)\\]\\.?`), '$1 ');

/** { mean: 0.8, sd: 0.06 } as 0.8 ± 0.06; { min, max } as a span; { median, factor } as times and over. @param {string} value */
export function spoken(value) {
  const pair = /^\{ (mean|min|median): ([^,]+), (sd|max|factor): (.+) \}$/.exec(value);
  if (!pair) return value;
  const [, kind, a, , b] = pair;
  return kind === 'mean' ? `${a} ± ${b}` : kind === 'min' ? `${a} to ${b}` : `${a}, times or over ${b}`;
}

/** The line that a problem names in a file; 0 for none. @param {{where: string}} problem @param {string} file */
export function lineIn(problem, file) {
  const found = new RegExp(`(?:^|[\\s/])${file.replace('.', '\\.')}:(\\d+)`).exec(problem.where);
  return found ? Number(found[1]) : 0;
}

/** Where a line begins and ends in a text. @param {string} text @param {number} line @returns {[number, number]} */
export function spanOf(text, line) {
  const lines = text.split('\n');
  const from = lines.slice(0, line - 1).reduce((sum, l) => sum + l.length + 1, 0);
  return [from, from + (lines[line - 1] ?? '').length];
}

const LEAST = 0.01;

/**
 * Causes before and after, heaviest after first: those of some weight, and those whose prior was changed.
 * @param {Assessment} before @param {Assessment} after
 */
export function causesCompared(before, after) {
  const was = new Map(before.causes.map((c) => [c.id, c]));
  return after.causes.flatMap((is) => {
    const old = was.get(is.id);
    if (!old) return [];
    const changed = Math.abs(old.prior - is.prior) > 1e-9;
    return changed || Math.max(old.posterior, is.posterior) >= LEAST ? [{ was: old, is, changed }] : [];
  }).sort((x, y) => y.is.posterior - x.is.posterior);
}

/** What becomes of the plan. @param {Assessment} before @param {Assessment} after */
export function planCompared(before, after) {
  const words = (/** @type {Assessment} */ a) => new Map(a.plan.choices.map((c) => [`${c.window}|${c.procedure}`, c]));
  const [old, fresh] = [words(before), words(after)];
  return {
    kept: [...fresh.keys()].filter((k) => old.has(k)).length,
    added: [...fresh.keys()].filter((k) => !old.has(k)).map((k) => /** @type {NonNullable<ReturnType<typeof fresh.get>>} */ (fresh.get(k))),
    dropped: [...old.keys()].filter((k) => !fresh.has(k)).map((k) => /** @type {NonNullable<ReturnType<typeof old.get>>} */ (old.get(k))),
  };
}
