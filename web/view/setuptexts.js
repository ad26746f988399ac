// @ts-check
import { html } from 'lit-html';
import { live } from 'lit-html/directives/live.js';
import { CAUSES, MISSION, lineIn } from '../model/setup.js';
/** @typedef {import('./setup.js').Mine} Mine */
/** @typedef {import('./setup.js').Actions} Actions */
/** @typedef {import('../api/setup.js').SetUp} SetUp */

/** The texts themselves, checked as they are typed. @param {Mine} mine @param {SetUp} now @param {Actions} act */
export function textsView(mine, now, act) {
  const text = now.texts[mine.file] ?? '';
  const problems = [...now.problems, ...now.warnings].filter((p) => lineIn(p, mine.file) > 0);
  return html`
    <section id="setup-texts" class="texts" aria-labelledby="setup-texts-title">
      <div class="heading"><h2 id="setup-texts-title">The text itself</h2>
        <div class="turn"><fieldset class="themes"><legend class="unseen">Which file</legend>
          ${[MISSION, CAUSES].map((file) => html`<label><input type="radio" name="setup-file" value=${file} .checked=${mine.file === file}
            @change=${() => act.file(file)}><span>${file}</span></label>`)}</fieldset>
          <button type="button" @click=${() => act.keep(mine.file)}>keep ${mine.file}</button></div></div>
      <p class="legend">Checked while you type, as the file itself would be.${mine.file === CAUSES ? ' What it does not say of a cause stays as the stock has it.' : ''} Nothing is written to the folder: keep the file and put it there.</p>
      ${problems.length > 0 ? html`<ul class="at-lines">${problems.map((p) => html`<li><button type="button" @click=${() => act.toLine(mine.file, lineIn(p, mine.file))}>line ${lineIn(p, mine.file)}</button> ${p.what}. <span class="soft">${p.mend}</span></li>`)}</ul>` : ''}
      <label class="unseen" for="setup-text">${mine.file}</label>
      <textarea id="setup-text" class="entry" rows="24" spellcheck="false" autocomplete="off" wrap="off" aria-invalid=${problems.length > 0 && now.problems.length > 0 ? 'true' : 'false'}
        .value=${live(text)} @input=${(/** @type {Event} */ e) => act.type(/** @type {HTMLTextAreaElement} */ (e.target).value)}></textarea>
    </section>`;
}
