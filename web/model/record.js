// @ts-check
/** The record as a person looks through it: filters, what corrections did, how an entry stands. */
import { formOf } from './entry.js';
import { ms, typedTime } from './time.js';
/** @typedef {import('./types.js').JournalEntry} JournalEntry */
/** @typedef {import('./types.js').PageData} PageData */

/** @typedef {{kind: string, station: string, text: string, from: string, to: string}} Filter */
/** @returns {Filter} */
export const noFilter = () => ({ kind: '', station: '', text: '', from: '', to: '' });

/** @param {Filter} f */
export const isFiltered = (f) => Object.values(f).some((v) => v.trim() !== '');

/**
 * An entry as the corrections after it leave it.
 * @typedef {{entry: JournalEntry, keys: Record<string, string>, withdrawn: boolean,
 *   changes: {by: JournalEntry, withdraws: boolean, restores: boolean, keys: {key: string, was: string, is: string}[]}[]}} Standing
 */

/**
 * Corrections of corrections count as corrections of the entry they end at, as they do when the record is weighed;
 * what a later correction did to an earlier one is told with the entry.
 * @param {JournalEntry[]} journal in the order of the numbers
 * @returns {Map<number, Standing>}
 */
export function standings(journal) {
  /** @type {Map<number, Standing>} */
  const all = new Map();
  const roots = new Map();
  for (const e of journal) {
    if (e.kind !== 'correction') {
      roots.set(e.number, e.number);
      all.set(e.number, { entry: e, keys: { ...e.keys }, withdrawn: false, changes: [] });
      continue;
    }
    const root = roots.get(Number(e.keys.of));
    const standing = all.get(root);
    if (!standing) continue;
    roots.set(e.number, root);
    const { of: _, withdrawn, ...keys } = e.keys;
    const withdraws = withdrawn === 'yes';
    const restores = withdrawn === 'no';
    const changed = Object.entries(keys).map(([key, is]) => ({ key, was: standing.keys[key] ?? '', is }));
    for (const { key, is } of changed) {
      if (is === '') delete standing.keys[key]; else standing.keys[key] = is;
    }
    standing.withdrawn = withdraws || (standing.withdrawn && !restores);
    standing.changes.push({ by: e, withdraws, restores, keys: changed });
  }
  return all;
}

/** The words a person may look for in an entry. @param {JournalEntry} e @param {string} title */
const wordsOf = (e, title) => [e.kind, formOf(e.kind).label, title, e.who, e.note, String(e.number), ...Object.entries(e.keys).flat()].join(' ').toLowerCase();

/**
 * Entries that a filter lets through, latest number first.
 * @param {PageData} page @param {Filter} f
 */
export function filtered(page, f) {
  const titles = titlesOf(page);
  const from = bound(f.from);
  const to = bound(f.to);
  const words = f.text.toLowerCase().split(/\s+/).filter((w) => w !== '');
  return [...page.journal].reverse().filter((e) => (f.kind === '' || e.kind === f.kind)
    && (f.station === '' || stationOf(e, page) === f.station)
    && (from === undefined || ms(e.at) >= from) && (to === undefined || ms(e.at) <= to)
    && words.every((w) => wordsOf(e, titles.get(e.number) ?? '').includes(w)));
}

/** A correction belongs to the station of what it corrects. @param {JournalEntry} e @param {PageData} page @returns {string} */
function stationOf(e, page) {
  if (e.keys.station || e.kind !== 'correction') return e.keys.station ?? '';
  const of = page.journal.find((j) => String(j.number) === e.keys.of);
  return of ? stationOf(of, page) : '';
}

/** A day stands for its beginning. @param {string} text */
function bound(text) {
  if (text.trim() === '') return undefined;
  const day = /^\d{4}-\d\d-\d\d$/.test(text.trim()) ? `${text.trim()}T00:00:00Z` : typedTime(text);
  const time = Date.parse(day);
  return Number.isNaN(time) ? undefined : time;
}

/** Whether a bound that is typed cannot be read. @param {string} text */
export const isUnread = (text) => text.trim() !== '' && bound(text) === undefined;

/** @param {PageData} page */
export const titlesOf = (page) => new Map(page.assessment.evidence.map((e) => [e.entry, e.title]));

/** Kinds that the record has, in the form's order. @param {JournalEntry[]} journal */
export const kindsOf = (journal) => [...new Set(journal.map((e) => e.kind))];

/** @param {JournalEntry[]} journal */
export const stationsIn = (journal) => [...new Set(journal.flatMap((e) => e.keys.station ?? []))].sort();
