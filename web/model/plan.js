// @ts-check
/**
 * The plan as the server proposes it, and what people changed of it.
 *
 * @typedef {{found: number, foundError: number, meanDays: number, meanHours: number, hours: number, hazard: number, commands: number}} Figures
 * @typedef {{from: string, to: string, granted: number, spent: number, planned: number}} Week
 * @typedef {{window: string, station: string, aos: string, culmination: string, los: string, maxElevationDeg: number,
 *   available: boolean, whyNotAvailable: string, taken: string|null, best: string|null, title: string, heard: number,
 *   costHours: number, adds: number, addsDays: number, why: string, cautions: string[], options: string[]}} Row
 * @typedef {{id: string, title: string, before: number, after: number}} Moved
 * @typedef {{sentence: string, next: {window: string, procedure: string}|null, found?: number, hours?: number, again?: number, causes: Moved[]}} After
 * @typedef {{revision: number, now: string, until: string, figures: Figures, upperBound: number, weeks: Week[], windows: Row[],
 *   afterNothing: After, afterHeard: After, oneMoreHour: {sentence: string}}} Plan
 * @typedef {{window: string, procedure: string|null}} Edit
 * @typedef {{proposed: Figures, edited: Figures, difference: Record<string, number>, weeks: Week[], objections: string[],
 *   sentence: string, taken: Record<string, string>}} Trial
 * @typedef {{edits: Map<string, string|null>, agreed: Set<string>}} Wishes
 *
 * `agreed` are windows of the proposal that somebody has accepted; it changes no number.
 */
import { DAY, ms } from './time.js';

/** What is done in a window after the changes; null for nothing. @param {Row} row @param {Wishes} wishes @returns {string|null} */
export const doneIn = (row, wishes) => (wishes.edits.has(row.window) ? wishes.edits.get(row.window) ?? null : row.taken);

/** How a window stands against the proposal. @param {Row} row @param {Wishes} wishes @returns {'added'|'skipped'|'changed'|'accepted'|'proposed'|'open'} */
export function standing(row, wishes) {
  const done = doneIn(row, wishes);
  if (done !== row.taken) return done === null ? 'skipped' : row.taken === null ? 'added' : 'changed';
  if (done === null) return 'open';
  return wishes.agreed.has(row.window) ? 'accepted' : 'proposed';
}

/** The words for that, which never leave it to colour. */
export const STANDING = { added: 'added by you', skipped: 'skipped by you', changed: 'changed by you', accepted: 'accepted', proposed: 'proposed', open: 'left out' };

/** Sets what is done in a window; back to the proposal, the change is gone. @param {Wishes} wishes @param {Row} row @param {string|null} procedure @returns {Wishes} */
export function wish(wishes, row, procedure) {
  const edits = new Map(wishes.edits);
  const agreed = new Set(wishes.agreed);
  if (procedure === row.taken) edits.delete(row.window); else edits.set(row.window, procedure);
  if (procedure !== row.taken) agreed.delete(row.window);
  return { edits, agreed };
}

/** @param {Wishes} wishes @returns {Edit[]} */
export const editsOf = (wishes) => [...wishes.edits].map(([window, procedure]) => ({ window, procedure }));

/** Wishes for windows the plan still knows. @param {Wishes} wishes @param {Plan} plan @returns {Wishes} */
export function stillKnown(wishes, plan) {
  const rows = new Map(plan.windows.map((row) => [row.window, row]));
  /** @param {string} id @param {string|null} procedure */
  const possible = (id, procedure) => {
    const row = rows.get(id);
    return row !== undefined && procedure !== row.taken && (procedure === null || row.options.includes(procedure));
  };
  return {
    edits: new Map([...wishes.edits].filter(([id, procedure]) => possible(id, procedure))),
    agreed: new Set([...wishes.agreed].filter((id) => rows.get(id)?.taken)),
  };
}

/** As text to be kept in the browser, and back; what cannot be read is no wish. @param {Wishes} wishes */
export const written = (wishes) => JSON.stringify({ edits: [...wishes.edits], agreed: [...wishes.agreed] });

/** @param {string|null} text @returns {Wishes} */
export function read(text) {
  try {
    const kept = JSON.parse(text ?? '');
    return { edits: new Map(kept.edits), agreed: new Set(kept.agreed) };
  } catch {
    return { edits: new Map(), agreed: new Set() };
  }
}

/** UTC days from the first to the last window, each with its windows. @param {Plan} plan @returns {{start: number, rows: Row[]}[]} */
export function days(plan) {
  const first = Math.floor(ms(plan.now) / DAY) * DAY;
  const last = Math.max(first, ...plan.windows.map((row) => ms(row.aos)));
  const list = [];
  for (let start = first; start <= last; start += DAY) {
    list.push({ start, rows: plan.windows.filter((row) => ms(row.culmination) >= start && ms(row.culmination) < start + DAY) });
  }
  return list;
}

/** The window a walk through the calendar comes to. @param {Plan} plan @param {string|undefined} from @param {number} steps */
export function stepped(plan, from, steps) {
  const at = plan.windows.findIndex((row) => row.window === from);
  const to = at < 0 ? 0 : Math.max(0, Math.min(plan.windows.length - 1, at + steps));
  return plan.windows[to]?.window;
}

/** The next window in which something is done. @param {Plan} plan @param {Wishes} wishes @param {number} now */
export const nextDone = (plan, wishes, now) => plan.windows.find((row) => ms(row.los) > now && doneIn(row, wishes) !== null);
