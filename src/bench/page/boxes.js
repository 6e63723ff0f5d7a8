// Boxes to type in and buttons to choose by, each bound to an attribute of a file that is edited.
import {written} from './job.js';
import {again, edited, id, make, measured_again, state, t} from './state.js';

/** @typedef {{path: string, word: string, element: HTMLElement, target: HTMLElement, sync: () => void, source: () => any}} Box */

/** @type {Box[]} */ let boxes = [];
let number = 0;

/** @param {string} path */
export const box_of = (path) => boxes.find((one) => one.path === path) || boxes.find((one) => one.source() === state.job && state.job.same(one.path, path)) || null;
export const all_boxes = () => boxes;
/** Forgets the boxes that are no longer on the page. */
export const forget = () => void (boxes = boxes.filter((one) => document.contains(one.element)));

const MARK = {length: () => state.job.root.getAttribute('units') || 'mm', angle: () => '°', power: () => 'kW', speed: () => 'min⁻¹'};

/** @param {any} source @param {string} path @param {string} value */
function store(source, path, value) {
  source().set(path, value);
  if (source() === state.job) measured_again(path);
  edited();
}

/** A box for a figure or a text. `source` gives the file: the job, if nothing else is said.
 * @param {string} path @param {string} word key of its caption; word_hint, where there is one, says how to hold the tape
 * @param {string} [kind] length, angle, power, speed, text, date @param {() => any} [source] */
export function box(path, word, kind = 'length', source = () => state.job) {
  const name = `box${++number}`;
  const figure = kind !== 'text' && kind !== 'date';
  const input = make('input', {id: name, type: kind === 'date' ? 'date' : 'text', inputmode: figure ? 'decimal' : null, autocomplete: 'off', 'data-path': path,
    'data-kind': kind, 'aria-describedby': `${name}h`});
  const mark = make('span', {class: 'unit', 'aria-hidden': 'true'});
  const element = make('label', {class: `box ${kind}`, for: name}, make('span', {class: 'caption'}, t(word)), make('span', {class: 'entry'}, input, mark),
    make('span', {id: `${name}h`, class: 'unseen'}, hint_of(word)));
  input.addEventListener('input', () => store(source, path, figure ? written(input.value) : input.value));
  input.addEventListener('focus', () => focused(one));
  if (path === '@order') input.addEventListener('click', () => input.select()); // what is proposed is typed over
  input.addEventListener('keydown', (/** @type {KeyboardEvent} */ e) => { if (e.key === 'Enter') { e.preventDefault(); go_on(one); } });
  const sync = () => {
    const value = source().get(path);
    if (written(input.value) !== value && (document.activeElement !== input || !figure)) input.value = value;
    mark.textContent = kind in MARK && !/(mm|in)$/.test(value) ? MARK[/** @type {keyof MARK} */ (kind)]() : '';
  };
  const one = {path, word, element, target: input, sync, source};
  boxes.push(one);
  sync();
  return element;
}

/** @param {string} word */
export const hint_of = (word) => (state.catalogue.words || {})[`${word}_hint`] || '';

/** Buttons, one of which holds; touched again it no longer does, unless an answer is needed. Written as `data-path` on the group.
 * @param {string} path @param {string} word @param {{word: string, says: string, picture?: string}[]} options @param {{source?: () => any, touched?: (value: string) => void, needed?: boolean}} [more] */
export function choice(path, word, options, more = {}) {
  const source = more.source || (() => state.job), touched = more.touched || (() => {});
  const buttons = options.map((option) => {
    const one = make('button', {type: 'button', class: 'tile', 'data-value': option.word, 'aria-pressed': 'false'});
    if (option.picture) one.innerHTML = option.picture;
    one.append(make('span', {}, option.says));
    one.addEventListener('click', () => {
      const value = source().get(path) === option.word && !more.needed ? '' : option.word;
      store(source, path, value);
      touched(value);
    });
    return one;
  });
  const element = make('div', {class: 'choice', role: 'group', 'aria-label': t(word), 'data-path': path}, make('span', {class: 'caption'}, t(word)), make('div', {class: 'tiles'}, ...buttons));
  const sync = () => buttons.forEach((one) => one.setAttribute('aria-pressed', String(source().get(path) === one.dataset.value)));
  boxes.push({path, word, element, target: buttons[0], sync, source});
  sync();
  return element;
}

/** @type {Box | null} */ let last = null;
/** @param {Box} one */
function focused(one) {
  last = one;
  show_tape();
}

/** The line on how to hold the tape, and the sixteenths where lengths are in inches: at the screen's foot, so that no box moves. */
function show_tape() {
  const tape = id('tape');
  if (!last || !document.contains(last.element)) return void (tape.hidden = true);
  const inches = last.element.classList.contains('length') && state.job.root.getAttribute('units') === 'in';
  id('tape-says').textContent = hint_of(last.word);
  id('sixteenths').hidden = !inches;
  tape.hidden = !inches && !hint_of(last.word);
}

/** The line goes with the hand. */
addEventListener('focusin', (event) => { if (!(/** @type {HTMLElement} */ (event.target)).closest('#tape, input[data-path]')) id('tape').hidden = true; });

export function make_sixteenths() {
  const shortest = (/** @type {number} */ n) => { let d = 16; while (n % 2 === 0) { n /= 2; d /= 2; } return `${n}/${d}`; };
  for (let n = 1; n < 16; ++n) {
    const one = make('button', {type: 'button'}, shortest(n));
    one.addEventListener('pointerdown', (/** @type {Event} */ e) => e.preventDefault()); // the box keeps the keypad
    one.addEventListener('click', () => {
      if (!last) return;
      const input = /** @type {HTMLInputElement} */ (last.target);
      const whole = /^\d+(?!\d*\/)/.exec(written(input.value));
      input.value = whole ? `${whole[0]}-${shortest(n)}` : shortest(n);
      store(last.source, last.path, input.value);
    });
    id('sixteenths').append(one);
  }
}

/** @type {(one: Box) => void} */ let go_on = () => {};
/** What the key Enter does in a box.
 * @param {(one: Box) => void} act */
export const on_enter = (act) => void (go_on = act);

/** @param {string} path the box to measure next, or '' */
export function light(path) {
  for (const one of boxes) {
    one.element.classList.toggle('lit', one.path === path);
    const to_confirm = one.source() === state.job && again().includes(one.path);
    if (to_confirm) one.element.dataset.again = t('again');
    else delete one.element.dataset.again;
  }
}

/** Shows each fault at its box; gives those that have none. */
export function show_faults() {
  /** @type {any[]} */ const homeless = [];
  for (const one of boxes) if (one.source() === state.job) clear_fault(one);
  for (const fault of state.faults) {
    const one = boxes.find((each) => each.source() === state.job && document.contains(each.element) && (each.path === fault.path || state.job.same(each.path, fault.path)));
    if (one) add_fault(one, fault.says);
    else homeless.push(fault);
  }
  return homeless;
}
/** @param {Box} one */
function clear_fault(one) {
  one.element.classList.remove('wrong');
  one.target.removeAttribute('aria-invalid');
  const place = one.element.closest('.figure, .boxes') || one.element;
  place.parentElement?.querySelectorAll(':scope > .fault').forEach((each) => each.remove());
}
/** @param {Box} one @param {string} says */
function add_fault(one, says) {
  one.element.classList.add('wrong');
  one.target.setAttribute('aria-invalid', 'true');
  const place = one.element.closest('.figure, .boxes') || one.element;
  place.after(make('p', {class: 'fault'}, `${t(one.word)}: ${says}`));
}
