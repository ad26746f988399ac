// @ts-check
import { html } from 'lit-html';
import { answerOf } from '../model/causes.js';
import { capital, count, lower, percent, percentError } from '../model/numbers.js';
import { date } from '../model/time.js';
import { fact } from './causes.js';
import { compared } from './compared.js';
import { problemList } from './problems.js';
import { keysView } from './setupkeys.js';
import { textsView } from './setuptexts.js';
import { tryView } from './setuptry.js';
/** @typedef {import('../model/state.js').State} State */
/** @typedef {import('../model/types.js').Problem} Problem */
/** @typedef {import('../api/setup.js').SetUp} SetUp */
/** @typedef {import('../api/setup.js').Edit} Edit */
/** @typedef {import('../api/setup.js').Texts} Texts */
/**
 * `asIs`: the files as they are. `base`: texts that edits are laid over; changed by hand alone. `now`: the result.
 *
 * @typedef {{asIs: SetUp|undefined, base: Texts, edits: Edit[], now: SetUp|undefined, problems: Problem[], editProblems: Problem[],
 *   tree: Problem[]|undefined, slow: Record<string, boolean>, key: string, value: string, words: string, file: string,
 *   job: {number: number, seconds: number, usual: number, problems: Problem[]}|undefined,
 *   result: {after: import('../model/types.js').Assessment, texts: Texts, revision: number, seconds: number}|undefined}} Mine
 * @typedef {{prior: (id: string, percent: string) => void, pick: (key: string, value?: string) => void, value: (value: string) => void,
 *   setKey: () => void, takeBack: (edit: Edit) => void, asItIs: () => void, words: (words: string) => void, file: (file: string) => void,
 *   type: (text: string) => void, toLine: (file: string, line: number) => void, keep: (file: string) => void,
 *   workOut: () => void, stop: () => void}} Actions
 */

/** The set-up. @param {State} s @param {Mine} mine @param {Actions} act */
export function setUpMain(s, mine, act) {
  const { asIs, now } = mine;
  if (!asIs || !now) {
    return html`<main class="setup"><section class="answer"><h1>The mission’s files</h1></section>
      <p class="why" role="status">${mine.slow.whole ? 'Reading them…' : ''}</p>${problemList(mine.problems)}</main>`;
  }
  return html`
    <main class="setup">
      ${sentence(mine, now)}
      ${figures(asIs, mine.tree?.length ?? -1)}
      ${tryView(s, mine, act)}
      ${compared(s, mine)}
      ${found(mine, now)}
      ${keysView(mine, now, act)}
      ${textsView(mine, now, act)}
    </main>`;
}

/** @param {Mine} mine @param {SetUp} now */
function sentence(mine, now) {
  const n = now.problems.length;
  const changed = isChanged(mine);
  const first = mine.result && changed && n === 0 && !isStale(mine) ? answerOf(mine.result.after).first : undefined;
  return html`<section class="answer" aria-live="polite"><h1>${n > 0 ? `${capital(count(n, 'problem stands', 'problems stand'))} in the way.` : first ? `With these numbers ${first.members.length > 1 ? `one of ${first.members.length} causes that look alike` : lower(first.title)} would fit best: ${percentError(first.now, first.error)}.` : changed ? 'The changed files are in order.' : 'The files are in order.'}</h1>
    <p class="why">${changed ? 'What is changed here is a copy in this page: nothing is written to the mission’s folder. Keep the files to take it over.'
      : 'Change a prior or any number on a copy and see everything follow; the folder is never written to.'}</p></section>`;
}

/** Whether what was worked out is for other texts than those that stand here. @param {Mine} mine */
export const isStale = (mine) => JSON.stringify(mine.result?.texts) !== JSON.stringify(mine.now?.texts);

/** @param {Mine} mine */
export const isChanged = (mine) => mine.asIs !== undefined && mine.now !== undefined && JSON.stringify(mine.asIs.texts) !== JSON.stringify(mine.now.texts);

/** @param {SetUp} asIs @param {number} ofTree warnings; −1 while they are not known */
function figures(asIs, ofTree) {
  const warnings = asIs.warnings.length + ofTree;
  const defaults = asIs.keys.filter((k) => k.line === 0).length;
  const m = asIs.mission;
  return html`<dl class="facts">
    ${fact(String(asIs.keys.length - defaults), 'keys written')}
    ${fact(String(defaults), 'taken by default')}
    ${ofTree < 0 ? '' : fact(String(warnings), warnings === 1 ? 'warning' : 'warnings')}
    ${m ? fact(date(m.separation), 'separation') : ''}
    ${m ? fact(percent(m.hazardLimit), 'most hazard of a plan’s command') : ''}
  </dl>`;
}

/** Problems, warnings and notes, as the check prints them. @param {Mine} mine @param {SetUp} now */
const found = (mine, now) => html`
  <section id="setup-found" class="found" aria-labelledby="setup-found-title"><h2 id="setup-found-title">What the check finds</h2>
    ${now.problems.length > 0 ? html`<div role="alert"><h3>Problems</h3>${problemList(now.problems)}</div>` : html`<p>No problem.</p>`}
    ${now.warnings.length > 0 || (mine.tree?.length ?? 0) > 0 ? html`<h3>Warnings, worth a look</h3>${problemList([...now.warnings, ...(mine.tree ?? [])])}` : mine.tree ? html`<p>No warning.</p>` : ''}
    <p class="status" role="status">${mine.tree === undefined ? 'Setting the fault tree against the simulation…' : ''}</p>
    ${now.notes.length > 0 ? html`<h3>Notes</h3><ul class="notes">${now.notes.map((p) => html`<li>${p.what}. <span class="soft">${p.mend}</span></li>`)}</ul>` : ''}
  </section>`;
