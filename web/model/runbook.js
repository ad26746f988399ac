// @ts-check
/** Procedures as the runbook lists them, with what the plan makes of each. */
import { next } from './windows.js';
/** @typedef {import('./types.js').Assessment} Assessment */
/** @typedef {import('../api/runbook.js').Procedure} Procedure */

/** Kinds in the order of how much they dare. @type {[string, string][]} */
export const KINDS = [['listen', 'listening'], ['desk', 'at the desk'], ['wait', 'waiting'], ['command', 'sending']];

/** Windows for which the plan takes a procedure, first come first. @param {Assessment} a @param {string} id */
export const plannedAt = (a, id) => a.windows.filter((w) => w.planned === id);

/** The next window that is planned, with its option. @param {Assessment} a @param {number} now */
export function nextPlanned(a, now) {
  const w = next(a.windows, now);
  const option = w?.options.find((o) => o.procedure === w.planned);
  return w && option ? { window: w, option } : undefined;
}

/** Procedures of a kind, all of them for none, in the order of kinds. @param {Procedure[]} all @param {string} kind */
export const ofKind = (all, kind) => KINDS.filter(([k]) => kind === '' || k === kind).flatMap(([k]) => all.filter((p) => p.kind === k));

/** Causes of some weight that a procedure addresses. @param {Assessment} a @param {string} title */
export const addresses = (a, title) => a.causes.filter((c) => c.detail.procedures.includes(title) && c.posterior >= 0.005);

/** How a tick is remembered. @param {string} id @param {number} part @param {number} step */
export const tickOf = (id, part, step) => `${id} ${part}.${step}`;
