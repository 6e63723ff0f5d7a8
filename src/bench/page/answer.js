// The answer, always in sight: the band with verdict, lengths or the next thing to measure; then why, what would serve, papers.
import {box_of, hint_of} from './boxes.js';
import {enough, next} from './next.js';
import {button, changed, edited, id, make, on_change, state, t} from './state.js';

/** @typedef {import('./state.js').Change} Change */

/** Puts in what would serve: the server said where.
 * @param {Change[]} changes */
function put_in(changes) {
  for (const {path, value} of changes) {
    state.job.set(path, value);
    const at = path.split('@');
    if (value === null && at.length === 1) state.job.remove(path);
  }
  edited();
}

/** Brings the box to the eye and the hand.
 * @param {string} path */
export function go_to(path) {
  const one = /** @type {HTMLElement | null} */ (document.querySelector(`[data-path="${path}"]`)) || /** @type {HTMLElement | null} */ (document.querySelector('[data-joint].lit, [data-spot].lit'));
  if (!one) return;
  for (let up = one.parentElement; up; up = up.parentElement) if (up instanceof HTMLDetailsElement) up.open = true;
  one.scrollIntoView({block: 'center'});
  const target = one.matches('input, button') ? one : /** @type {HTMLElement | null} */ (one.querySelector('button, input'));
  if (target) target.focus({preventScroll: true});
}

export function go_to_next() {
  const step = next();
  if (step) go_to(step.path);
}

/** The way to the next box, and past it where it may be left out. */
function still() {
  const step = next(), key = step ? step.path + Boolean(state.view) : '';
  if (id('still').dataset.key === key) return;
  id('still').dataset.key = key;
  id('still').replaceChildren(...(step ? [...(enough() ? [make('p', {}, t('still', t(step.word)))] : []), button(t('go'), go_to_next, {id: 'go'}),
    ...(step.must ? [] : [button(t('skip'), () => { state.skipped.add(step.path); changed(); }, {id: 'skip'})])] : []));
}

/** @param {{path: string, word: string, must: boolean}} step */
function next_lines(step) {
  const hint = hint_of(box_of(step.path)?.word || step.word);
  return [make('p', {class: 'small'}, t('next')), make('p', {class: 'big', id: 'next'}, t(step.word)), ...(hint ? [make('p', {class: 'small'}, hint)] : [])];
}

function verdict_lines(/** @type {import('./state.js').View} */ view) {
  const cuts = view.band.lengths.map((one) => make('div', {class: `cut${one.cut ? '' : ' none'}`, 'data-letter': one.letter, 'data-mm': String(one.mm ?? '')},
    make('span', {class: 'disc'}, one.letter), make('span', {class: 'length'}, one.says), make('span', {class: 'what'}, one.what), ...(one.keep_says ? [make('span', {class: 'keep'}, one.keep_says)] : [])));
  return [make('p', {class: 'verdict'}, view.band.says), ...(cuts.length ? [make('div', {class: 'cuts'}, ...cuts)] : [])];
}

let shown = '';
function band() {
  const element = id('band'), view = enough() ? state.view : null, step = next();
  element.dataset.verdict = view ? view.verdict : '';
  const key = JSON.stringify([view && view.band, step && step.path, state.offline, state.faults.length, enough()]);
  if (key === shown) return;
  shown = key;
  const offline = state.offline ? [make('p', {class: 'small', id: 'offline'}, t('offline'))] : [];
  if (view) element.replaceChildren(...offline, ...verdict_lines(view));
  else if (step && !enough()) element.replaceChildren(...offline, ...next_lines(step));
  else element.replaceChildren(...offline, make('p', {class: 'big'}, t(state.faults.length ? 'cannot_be_right' : 'asking')));
}

/** @param {string} word @param {string[]} lines */
const list = (word, lines) => lines.length ? [make('h3', {}, t(word)), make('ul', {class: word}, ...lines.map((line) => make('li', {}, line)))] : [];

function ways_out(/** @type {import('./state.js').View} */ view) {
  if (!view.ways_out.length) return [];
  const items = view.ways_out.map((way) => {
    const choices = way.choices.map((one) => button(one.says || t('put_in'), () => put_in(one.changes), {class: 'way', 'aria-label': `${one.says || t('put_in')}: ${way.says}`}));
    return make('li', {class: way.number ? '' : 'first-of-all'}, way.says, ...choices);
  });
  return [make('h3', {}, t('ways_out')), make('ol', {class: 'ways_out'}, ...items)];
}

let told = '';
function lines() {
  const view = enough() ? state.view : null, key = JSON.stringify(view);
  if (key === told) return;
  told = key;
  id('lines').replaceChildren(...(view ? [...list('warnings', view.warnings), ...list('reasons', view.reasons), ...ways_out(view), ...list('confirm', view.confirm.map((one) => one.why)), ...list('cautions', view.cautions)] : []));
}

function doors() {
  const view = enough() ? state.view : null;
  const show = (/** @type {string} */ name, /** @type {boolean} */ shown) => void (id(name).hidden = !shown);
  show('papers', view !== null);
  show('to-saw', view !== null && view.verdict !== 'refused');
  show('tag', view !== null && view.verdict !== 'refused');
  show('to-choose', view !== null && view.verdict === 'refused');
  show('to-quote', view !== null && Boolean(state.catalogue.prices));
  show('print', Boolean(state.catalogue.printer));
}

export function build_answer() {
  on_change(band);
  on_change(still);
  on_change(lines);
  on_change(doors);
}
