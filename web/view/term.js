// @ts-check
import { html } from 'lit-html';
import { GLOSSARY } from '../model/glossary.js';

/** A word that explains itself on hover and on focus. @param {string} key of the glossary @param {unknown} [words] what stands there, when it is another form of the word */
export const term = (key, words) => html`<span class="term" tabindex="0" data-term=${key}
  aria-describedby=${`word-${key}`}>${words ?? GLOSSARY[key].word}</span>`;
