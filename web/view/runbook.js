// @ts-check
import { html } from 'lit-html';
import { unsafeHTML } from 'lit-html/directives/unsafe-html.js';
import { DRAFT_FILE } from '../api/runbook.js';
import { KINDS, nextPlanned, ofKind, plannedAt } from '../model/runbook.js';
import { count, hours, kept, lower } from '../model/numbers.js';
import { dayClock } from '../model/time.js';
import { problemList } from './problems.js';
import { sheet } from './sheet.js';
/** @typedef {import('../model/state.js').State} State */
/** @typedef {import('../model/types.js').Problem} Problem */
/** @typedef {import('../api/runbook.js').Procedure} Procedure */
/** @typedef {{procedures: Procedure[]|undefined, draft: import('../api/runbook.js').Draft|undefined, kind: string, ticks: Set<string>,
 *   problems: Problem[], draftProblems: Problem[], slow: Record<string, boolean>, revision: number}} Mine */
/** @typedef {{kind: (kind: string) => void, tick: (name: string, on: boolean) => void, untick: (id: string) => void, print: () => void}} Actions */

/** The runbook. @param {State} s @param {Mine} mine @param {Actions} act */
export function runbookMain(s, mine, act) {
  const all = mine.procedures ?? [];
  const chosen = all.find((p) => p.id === s.rest);
  return html`
    <main class="runbook">
      ${sentence(s, all)}
      <div role="alert">${problemList(mine.problems)}</div>
      <p class="status" role="status">${mine.slow.procedures ? 'Fetching the procedures…' : ''}</p>
      <div class="runbook-columns">
        ${list(s, mine, act, all)}
        <div id="runbook-sheet">${s.rest === 'draft' ? draft(mine, act) : chosen ? sheet(chosen, s, mine, act)
          : s.rest !== '' && mine.procedures ? html`<p>No procedure is called “${s.rest}”.</p>` : unchosen(s)}</div>
      </div>
    </main>`;
}

/** @param {State} s @param {Procedure[]} all */
function sentence(s, all) {
  const next = nextPlanned(s.page.assessment, s.now);
  const h = s.page.assessment.headline;
  return html`<section class="answer">
    <h1>${next ? html`Next: <a href=${`#runbook/${next.option.procedure}`}>${lower(next.option.title)}</a>, ${next.window.station} ${dayClock(next.window.aos)}.`
      : `${count(all.length, 'procedure', 'procedures')}; the plan asks for none.`}</h1>
    <p class="why">${h.caution ? html`<b>${kept(h.caution)}</b> ` : ''}Cautions stand first and are part of each step. Whether to send is for the licence holder to decide.</p></section>`;
}

/** @param {State} s @param {Mine} mine @param {Actions} act @param {Procedure[]} all */
function list(s, mine, act, all) {
  const shown = ofKind(all, mine.kind);
  return html`
    <nav class="procedures" aria-label="Procedures">
      <p class="drafted"><a href="#runbook/draft" aria-current=${s.rest === 'draft' ? 'page' : 'false'}>The entry drafted from now</a>
        <span class="soft">anomaly record, procedure, pass plan, handover</span></p>
      <fieldset class="themes"><legend class="unseen">Which procedures</legend>
        ${[['', 'all'], ...KINDS].map(([kind, label]) => html`<label><input type="radio" name="runbook-kind" value=${kind} .checked=${mine.kind === kind}
          @change=${() => act.kind(kind)}><span>${label}</span></label>`)}</fieldset>
      <ul>${shown.map((p) => item(p, s))}</ul>
    </nav>`;
}

/** @param {Procedure} p @param {State} s */
function item(p, s) {
  const planned = plannedAt(s.page.assessment, p.id);
  return html`<li class=${s.rest === p.id ? 'chosen' : ''}><a href=${`#runbook/${p.id}`} aria-current=${s.rest === p.id ? 'page' : 'false'}>${p.title}</a>
    <span class="soft">${p.kind === 'command' ? html`<b>sends</b>, ` : ''}${p.costHours > 0 ? `${hours(p.costHours)} beside the pass` : 'no time beside the pass'}${planned.length > 0 ? html`, <b class="mark">planned ${planned.length === 1 ? 'once' : `${planned.length} times`}</b>` : ''}</span></li>`;
}

/** @param {State} s */
const unchosen = (s) => html`<p class="soft">Choose a procedure beside${s.keysOn ? html`, or walk through them with <kbd>j</kbd> and <kbd>k</kbd>` : ''}. Steps can be ticked off while they are done; ticks stay on this screen and are written nowhere.</p>`;

/** @param {Mine} mine @param {Actions} act */
const draft = (mine, act) => html`
  <section class="draft" aria-busy=${mine.slow.draft ? 'true' : 'false'}>
    <div class="heading"><h2>${mine.draft?.id ?? 'The drafted entry'}</h2>
      <div class="turn"><a href=${DRAFT_FILE} download>keep as Markdown</a><button type="button" @click=${() => act.print()}>print</button></div></div>
    <p class="legend">Every field that the record and the reckoning can fill is filled; what only people can say is marked <mark>to fill</mark>. Written anew with every entry; nothing is stored here.</p>
    <p class="status" role="status">${mine.slow.draft ? 'Drafting it from the present assessment…' : ''}</p>
    ${problemList(mine.draftProblems)}
    ${mine.draft ? html`<div class="paper">${unsafeHTML(marked(mine.draft.html))}</div>` : ''}
  </section>`;

/** Fields for people stand out in more than weight; headings stand below the page's own. @param {string} text the server's HTML */
const marked = (text) => text.replaceAll('<strong>to fill</strong>', '<mark>to fill</mark>')
  .replace(/<(\/?)h([1-5])>/g, (_, end, level) => `<${end}h${Number(level) + 1}>`);
