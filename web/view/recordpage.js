// @ts-check
import { html } from 'lit-html';
import { FILES } from '../api/record.js';
import { formOf } from '../model/entry.js';
import { movers } from '../model/fits.js';
import { filtered, isFiltered, isUnread, kindsOf, standings, stationsIn, titlesOf } from '../model/record.js';
import { bits, count, kept } from '../model/numbers.js';
import { date, dayClock } from '../model/time.js';
import { log } from './log.js';
import { problemList } from './problems.js';
/** @typedef {import('../model/state.js').State} State */
/** @typedef {import('../model/types.js').JournalEntry} JournalEntry */
/** @typedef {import('../model/types.js').Problem} Problem */
/** @typedef {import('../model/record.js').Standing} Standing */
/** @typedef {import('../model/record.js').Filter} Filter */
/** @typedef {{filter: Filter, opened: Set<number>, chain: import('../api/record.js').Chain|undefined, problems: Problem[],
 *   slow: Record<string, boolean>, asked: number, came: string}} Mine */
/** @typedef {{filter: (key: keyof Filter, value: string) => void, all: () => void, open: (n: number, open: boolean) => void,
 *   correct: (n: number) => void, toForm: () => void}} Actions */

const MOVERS = 3;

/** The record. @param {State} s @param {Mine} mine @param {Actions} act @param {import('../model/state.js').LogActions} logAct */
export const recordMain = (s, mine, act, logAct) => html`
  <main class="record-page">
    ${sentence(s, mine)}
    <div class="columns even">
      ${entries(s, mine, act)}
      <div>${log(s, logAct)}${takeAlong()}</div>
    </div>
  </main>`;

/** @param {State} s @param {Mine} mine */
function sentence(s, mine) {
  const { chain } = mine;
  const n = s.page.journal.length;
  const entries = count(n, 'entry', 'entries');
  const whole = n === 0 ? 'Nothing is written down yet.' : chain?.fault ? 'The record is broken.' : chain ? `The record is whole: ${entries}.` : `${entries} in the record.`;
  const last = s.page.journal[n - 1];
  return html`
    <section class="answer"><h1>${whole}${chain?.fault ? html` <em class="long">${chain.fault.what}</em>` : ''}</h1>
      <p class="why">${last ? html`The last one, ${date(last.recordedAt)} ${dayClock(last.recordedAt).replace(/^\d+ \w+ /, '')}${last.who ? `, ${last.who}` : ''}: ${kept(titlesOf(s.page).get(last.number) ?? formOf(last.kind).label)}.`
        : 'Write down every pass, heard or not, and every one nobody listened to: each moves the odds.'}</p>
      <p class="chain" role="status">${mine.slow.chain ? 'Following the chain of hashes from the first entry…' : chain && n > 0 ? html`
        Head of the chain: entry ${chain.head.number}, <code>${chain.head.hash.slice(0, 12)}</code><span class="unseen">${chain.head.hash.slice(12)}</span>…
        <details><summary>what that is for</summary><p>Every entry carries a hash over itself and the one before it, so a changed or missing entry shows. A tail cut off does not: keep this head elsewhere, after each shift.</p>
          <p class="hash"><code>${chain.head.hash}</code></p></details>` : ''}</p>
      ${chain?.fault ? problemList([chain.fault]) : problemList(mine.problems)}
      <p class="status" role="status">${s.written} ${s.status}</p>
    </section>`;
}

/** @param {State} s @param {Mine} mine @param {Actions} act */
function entries(s, mine, act) {
  const list = filtered(s.page, mine.filter);
  const all = standings(s.page.journal);
  const on = isFiltered(mine.filter);
  return html`
    <section id="record-entries" aria-labelledby="record-entries-title">
      <div class="heading"><h2 id="record-entries-title">${on ? `${list.length} of ${s.page.journal.length} entries` : 'All entries'}</h2>
        <div class="turn"><button type="button" ?disabled=${!on} @click=${() => act.all()}>show all</button>
          <button type="button" @click=${() => act.toForm()}>write an entry</button></div></div>
      ${filterBar(s, mine, act)}
      ${list.length === 0 ? html`<p class="soft">${on ? 'None of the entries is like that; widen the filter.' : 'The first entry comes from the form: choose what happened and write it down.'}</p>` : html`
      <ol class="plain entries" reversed>${list.map((e) => entry(e, s, mine, act, all))}</ol>`}
    </section>`;
}

/** @param {State} s @param {Mine} mine @param {Actions} act */
function filterBar(s, mine, act) {
  const f = mine.filter;
  const set = (/** @type {keyof Filter} */ key) => (/** @type {Event} */ e) => act.filter(key, /** @type {HTMLInputElement} */ (e.target).value);
  return html`
    <form class="filter" role="search" aria-label="Look through the record" @submit=${(/** @type {Event} */ e) => e.preventDefault()}>
      <label>kind <select class="entry" id="record-kind" .value=${f.kind} @change=${set('kind')}><option value="">any</option>
        ${kindsOf(s.page.journal).map((k) => html`<option value=${k} ?selected=${k === f.kind}>${formOf(k).label}</option>`)}</select></label>
      <label>station <select class="entry" id="record-station" .value=${f.station} @change=${set('station')}><option value="">any</option>
        ${stationsIn(s.page.journal).map((t) => html`<option value=${t} ?selected=${t === f.station}>${t}</option>`)}</select></label>
      <label class="wide">words <input class="entry" id="record-text" type="search" autocomplete="off" .value=${f.text} @input=${set('text')}></label>
      <label>from <input class="entry time" id="record-from" autocomplete="off" placeholder="2026-10-07" aria-invalid=${isUnread(f.from) ? 'true' : 'false'} .value=${f.from} @input=${set('from')}></label>
      <label>to <input class="entry time" id="record-to" autocomplete="off" placeholder="2026-10-09 12:00" aria-invalid=${isUnread(f.to) ? 'true' : 'false'} .value=${f.to} @input=${set('to')}></label>
      ${isUnread(f.from) || isUnread(f.to) ? html`<p class="soft">A time is written 2026-10-09 or 2026-10-09 12:00, UTC.</p>` : ''}
    </form>`;
}

/** @param {JournalEntry} e @param {State} s @param {Mine} mine @param {Actions} act @param {Map<number, Standing>} all */
function entry(e, s, mine, act, all) {
  const title = titlesOf(s.page).get(e.number);
  const standing = all.get(e.number);
  const mark = standing?.withdrawn ? 'withdrawn' : standing && standing.changes.length > 0 ? 'corrected' : '';
  return html`
    <li id=${`record-${e.number}`} data-number=${e.number}><details ?open=${mine.opened.has(e.number)}
        @toggle=${(/** @type {Event} */ ev) => act.open(e.number, /** @type {HTMLDetailsElement} */ (ev.target).open)}>
      <summary><span class="number">${e.number}</span>
        <span class="what ${mark === 'withdrawn' ? 'struck' : ''}">${kept(title ?? spoken(e))}${mark ? html` <b class="mark">${mark}</b>` : ''}${e.note ? html` <i>${e.note}</i>` : ''}</span>
        <span class="when">${dayClock(e.at)}${e.who ? html`<span class="soft by">${e.who}</span>` : ''}</span></summary>
      ${mine.opened.has(e.number) ? inside(e, s, act, standing) : ''}
    </details></li>`;
}

/** An entry that carries no evidence, in words. @param {JournalEntry} e */
function spoken(e) {
  if (e.kind === 'correction') return e.keys.withdrawn === 'yes' ? `entry ${e.keys.of} withdrawn` : `entry ${e.keys.of} corrected`;
  return e.kind === 'note' ? e.keys.text ?? 'note' : `${formOf(e.kind).label}${e.keys.station ? `, ${e.keys.station}` : ''}`;
}

/** What was written, what it moved, what became of it. @param {JournalEntry} e @param {State} s @param {Actions} act @param {Standing|undefined} standing */
function inside(e, s, act, standing) {
  const seen = s.page.assessment.evidence.find((one) => one.entry === e.number);
  const moved = seen ? movers(s.page.assessment, seen.bits, MOVERS) : [];
  return html`
    <div class="inside">
      <dl class="written">${Object.entries(e.keys).map(([key, value]) => pair(labelOf(e.kind, key), value))}
        ${pair('written down', `${date(e.recordedAt)} ${dayClock(e.recordedAt).replace(/^\d+ \w+ /, '')}`)}</dl>
      ${standing && standing.changes.length > 0 ? html`<h4>What corrections did</h4><ul class="changes-of-entry">${standing.changes.map((c) => html`
        <li><a href=${`#record/${c.by.number}`}>entry ${c.by.number}</a>${c.by.who ? `, ${c.by.who}` : ''}: ${c.withdraws ? 'withdrew it' : html`${c.restores ? 'took it back in' : ''}
          ${c.keys.map((k) => html`<span class="change">${labelOf(e.kind, k.key)}: <del>${k.was === '' ? 'not said' : k.was}</del> → <ins>${k.is === '' ? 'not said' : k.is}</ins></span>`)}`}</li>`)}</ul>` : ''}
      ${e.kind === 'correction' ? html`<p><a href=${`#record/${e.keys.of}`}>What it corrects: entry ${e.keys.of}</a></p>` : ''}
      ${moved.length > 0 ? html`<ul class="bits">${moved.map((m) => html`<li><span>${m.title}</span> <b>${m.bits < 0 ? 'down' : 'up'} ${bits(m.bits)}</b></li>`)}</ul>`
        : seen ? html`<p class="soft">It moved nothing by as much as 0.1 bit.</p>` : ''}
      ${e.kind === 'correction' ? '' : html`<p><button type="button" @click=${() => act.correct(e.number)}>correct or withdraw it</button></p>`}
    </div>`;
}

/** @param {string} name @param {string} value */
const pair = (name, value) => html`<div><dt>${name}</dt><dd>${value}</dd></div>`;

/** A key as the form calls it. @param {string} kind @param {string} key */
export const labelOf = (kind, key) => formOf(kind).fields.find((f) => f.key === key && formOf(kind).kind === kind)?.label ?? { from: 'from', to: 'to', at: 'at', station: 'station', of: 'corrects entry' }[key] ?? key;

const takeAlong = () => html`
  <section class="take"><h2>Take it along</h2>
    <ul>${FILES.map(([href, name, what]) => html`<li><a href=${href} download>${name}</a> <span class="soft">${what}</span></li>`)}</ul>
    <p class="soft">Every entry as it was written, corrections among them, nothing merged.</p></section>`;
