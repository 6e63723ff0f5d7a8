// At the saw: the sheet's front and back to touch off, what is confirmed, what the marks read, and what the shaft is after the cut.
import {box, forget} from './boxes.js';
import {Job, written} from './job.js';
import {keep} from './drafts.js';
import {saw_figure} from './figures.js';
import {enough} from './next.js';
import {in_units, post} from './server.js';
import {button, closed_reference, edited, id, make, on_change, state, t, wide_anywhere} from './state.js';
import {on_open} from './views.js';

/** Which attribute of the job is confirmed by what. */
const CONFIRMED = /** @type {Record<string, string>} */ ({closed: 'shaft/closed@length', inner_half: 'shaft/half[tube=inner]@length', outer_half: 'shaft/half[tube=outer]@length',
  inner_shoulder: 'shaft/half[tube=inner]@stop-depth', outer_shoulder: 'shaft/half[tube=outer]@stop-depth', inner_guard: 'shaft/half[tube=inner]@guard', outer_guard: 'shaft/half[tube=outer]@guard'});
const MARKS = ['overall-dry', 'overall', 'closed', 'shortest', 'turning', 'standing'];

/** Millimetres of a length as it is written; NaN where it is none.
 * @param {string} text */
export function millimetres(text) {
  const parts = /^(?:(\d+(?:\.\d+)?)(?:-(\d+)\/(\d+))?|(\d+)\/(\d+))\s*(mm|in)?$/.exec(text.trim());
  if (!parts) return NaN;
  const [, whole, over, under, over_alone, under_alone, unit] = parts;
  const figure = Number(whole || 0) + (over ? Number(over) / Number(under) : 0) + (over_alone ? Number(over_alone) / Number(under_alone) : 0);
  return figure * ((unit || state.job.get('@units')) === 'in' ? 25.4 : 1);
}

/** The readings after the cut, a file of their own, kept with the draft.
 * @type {Job} */
let measured = new Job('<measured/>', 'measured');
let of_order = '';
function take_measured() {
  const order = state.job.get('@order');
  if (of_order === order && state.saw.measured) return;
  of_order = order;
  measured = new Job(state.saw.measured || `<measured order="${order}" units="${state.job.get('@units')}" date="${new Date().toISOString().slice(0, 10)}"/>`, 'measured');
}
const source = () => ({root: measured.root, get: (/** @type {string} */ path) => measured.get(path), set: (/** @type {string} */ path, /** @type {string} */ value) => {
  measured.set(path, value);
  state.saw.measured = measured.text();
  keep();
  draw_marks();
  after_cut_soon();
}});

/** @param {string} key of what was touched off */
function touch_off(key) {
  const touched = () => Boolean((state.saw.done || {})[key]);
  const one = button('', () => {
    state.saw.done = {...state.saw.done, [key]: !touched()};
    keep();
    show();
    after_cut_soon();
  }, {class: 'done', 'data-done': key});
  const show = () => {
    one.setAttribute('aria-pressed', String(touched()));
    one.textContent = touched() ? `✓ ${t('done')}` : t('touch_off');
    one.closest('li')?.classList.toggle('past', touched());
  };
  show();
  return {one, show};
}

/** A sentence whose squares can be touched and whose boxes typed in, each with the last word before it, which names it.
 * @param {string} key @param {string} says @returns {(Node | string)[]} */
function ticks(key, says) {
  const words = says.split(/([☐▭])/);
  return words.flatMap((each, n) => {
    if (n % 2) return [];
    const entry = words[n + 1], cut = entry ? each.trimEnd().lastIndexOf(' ') + 1 : each.length;
    if (!entry) return [each];
    const name = each.trim().replace(/^[.;:·?]+ */, '') || t('touch_off');
    return [each.slice(0, cut), make('span', {class: 'held'}, each.slice(cut).trimEnd(), entry === '☐' ? tick(`${key}.${n}`, name) : reading(`${key}.${n}`, name))];
  });
}
/** @param {string} key @param {string} name */
function reading(key, name) {
  const one = make('input', {class: 'reading', inputmode: 'decimal', 'aria-label': name, value: (state.saw.read || {})[key] || '', oninput: () => { state.saw.read = {...state.saw.read, [key]: one.value}; keep(); }});
  return one;
}
/** @param {string} key @param {string} name */
function tick(key, name) {
  const ticked = () => Boolean((state.saw.done || {})[key]);
  const one = button('', () => { state.saw.done = {...state.saw.done, [key]: !ticked()}; keep(); show_it(); }, {class: 'tick', 'aria-label': name, 'data-done': key});
  const show_it = () => { one.textContent = ticked() ? '✓' : ''; one.setAttribute('aria-pressed', String(ticked())); };
  show_it();
  return one;
}

/** @param {string} side @param {import('./state.js').Step} step @param {import('./state.js').Confirm[]} confirm */
function step_item(side, step, confirm) {
  const done = touch_off(`${side}${step.number}`);
  const lengths = (step.lengths || []).map((each) => make('span', {class: 'length'}, make('span', {class: 'disc'}, each.letter), ` ${boxless(each.says)}`));
  const here = confirm.filter((one) => one.step === step.number);
  const says = step.says.filter((each) => !here.some((one) => one.says === each));
  const item = make('li', {value: step.number}, make('div', {}, ...(step.heading ? [make('h4', {}, step.heading)] : []), ...says.map((each, n) => make('p', {}, ...ticks(`${side}${step.number}.${n}`, each))),
    ...(here.length ? [make('ul', {class: 'confirm'}, ...here.map(confirmation))] : []), ...read_here(step.number), ...(lengths.length ? [make('p', {class: 'lengths'}, ...lengths)] : [])), done.one);
  done.show();
  return item;
}

/** Where rings are read: P, from which the sums are made, and then each position.
 * @param {number} number */
function read_here(number) {
  const positions = (state.view?.marks || []).filter((one) => one.step === number);
  if (!positions.length) return [];
  take_measured();
  return [make('div', {class: 'boxes'}, box('marks@closed', 'read_p', 'length', source)), make('ul', {class: 'marks', 'data-marks': String(number)})];
}

/** A number that the sheet leaves out says so.
 * @param {import('./state.js').Step[]} steps @param {number} from */
function unbroken(steps, from) {
  const last = steps.length ? steps[steps.length - 1].number : 0;
  return [...Array(Math.max(0, last - from + 1)).keys()].map((n) => steps.find((one) => one.number === from + n) || from + n);
}
/** @param {number} number */
const empty_item = (number) => make('li', {value: number}, make('div', {}, make('p', {}, t('step_none'))));

/** The screen has its own boxes.
 * @param {string} says */
const boxless = (says) => says.replace(/ ?[▭☐]/g, '');

/** Of a length a box; of a look two buttons.
 * @param {import('./state.js').Confirm} one */
function confirmation(one) {
  const says = make('p', {class: 'judged', role: 'status'});
  const keep_it = (/** @type {string} */ read) => { state.saw.confirm = {...state.saw.confirm, [one.what]: read}; keep(); judge(); };
  const now = () => (state.saw.confirm || {})[one.what] || '';
  const looks = ['yes', 'no'].map((word) => button(t(`say_${word}`), () => keep_it(word), {'data-confirm': `${one.what} ${word}`}));
  const input = make('input', {inputmode: 'decimal', value: now(), 'aria-label': boxless(one.says), 'data-confirm': one.what, oninput: () => keep_it(input.value)});
  const judge = () => {
    const read = millimetres(written(now())), expected = one.expected_mm;
    looks.forEach((each, n) => each.setAttribute('aria-pressed', String(now() === ['yes', 'no'][n])));
    says.replaceChildren();
    if (!now() || (expected !== null && Number.isNaN(read))) return;
    const within = expected === null ? now() === 'yes' : Math.abs(read - expected) <= (one.plus_minus_mm || 0) + 0.01;
    says.append(within ? t('as_expected') : (state.view && state.view.confirm_outside) || t('not_as_expected'));
    if (!within && expected !== null && one.what in CONFIRMED) says.append(' ', button(t('put_reading_in'), () => { state.job.set(CONFIRMED[one.what], written(now())); edited(); }));
  };
  judge();
  return make('li', {}, make('p', {}, boxless(one.says)), ...(one.expected_mm === null ? [make('div', {class: 'row'}, ...looks)] : [input]), says);
}

/** What the rings must read in a position; the sums are made once P is typed.
 * @param {import('./state.js').Mark} mark */
function mark_item(mark) {
  const closed = millimetres(measured.get('marks@closed'));
  const sum = (/** @type {string} */ says, /** @type {number} */ more) => says.replace('▭', Number.isNaN(closed) ? '…' : shown(closed + more));
  const outside = Array.isArray(mark.outside_says) ? mark.outside_says : [mark.outside_says];
  return make('li', {}, make('strong', {}, mark.name), make('p', {}, sum(mark.expected_says, mark.expected_mm)), make('p', {}, `${sum(mark.from_says, mark.from_mm)} · ${sum(mark.to_says, mark.to_mm)}`),
    make('p', {class: 'never'}, sum(mark.never_says, mark.never_mm)), ...outside.map((each) => make('p', {class: 'small'}, each)));
}
const shown = (/** @type {number} */ mm) => state.job.get('@units') === 'in' ? `${(mm / 25.4).toFixed(2)} in` : `${Math.round(mm * 10) / 10} mm`;
function draw_marks() {
  const marks = state.view ? state.view.marks : [];
  document.querySelectorAll('[data-marks]').forEach((list) => list.replaceChildren(...marks.filter((one) => String(one.step) === /** @type {HTMLElement} */ (list).dataset.marks).map(mark_item)));
}

const fill = (/** @type {string} */ name, /** @type {Node[]} */ nodes) => id(name).replaceChildren(...nodes);

/** What was touched off for other cuts holds no longer.
 * @param {import('./state.js').View} view */
function begin_again(view) {
  const cuts = JSON.stringify(view.band.lengths.map((one) => one.mm)), done = state.saw.done || {};
  const anew = state.saw.cuts !== undefined && state.saw.cuts !== cuts && Object.values(done).some(Boolean);
  if (anew) state.saw = {...state.saw, done: {}, read: {}};
  if (state.saw.cuts !== cuts) { state.saw.cuts = cuts; keep(); }
  return anew;
}

let drawn = '';
function draw() {
  const view = enough() ? state.view : null;
  if (id('saw').hidden) return;
  const key = JSON.stringify([view, state.job.get('@order')]);
  if (key === drawn) return;
  drawn = key;
  id('saw-halves-at').hidden = !view || view.verdict !== 'cut';
  if (!view || view.verdict === 'refused') return fill('saw-steps', [make('p', {class: 'big'}, t(view ? 'do_not_saw' : 'asking'))]);
  const anew = begin_again(view);
  const side = (/** @type {string} */ name, /** @type {import('./state.js').Step[]} */ steps) => [make('h3', {}, t(name)), make('ol', {class: 'steps'},
    ...unbroken(steps, name === 'front' ? 1 : steps.length ? steps[0].number : 1).map((step) => typeof step === 'number' ? empty_item(step) : step_item(name, step, view.confirm)))];
  const lines = (/** @type {string} */ name, /** @type {string[]} */ says) => says.length ? [make('ul', {class: name}, ...says.map((each) => make('li', {}, each)))] : [];
  fill('saw-steps', [...lines('rules danger', view.rules), ...lines('warnings', view.warnings), ...(anew ? [make('p', {class: 'danger', id: 'anew'}, t('begin_again'))] : []), ...side('front', view.front), ...side('back', view.back)]);
  build_after();
  forget();
}

/** The boxes for what is measured after the cut. */
function build_after() {
  take_measured();
  const half = (/** @type {string} */ tube) => [box(`half[tube=${tube}]@length`, `${tube}_half`, 'length', source), box(`half[tube=${tube}]@guard`, `${tube}_guard_after`, 'length', source), box(`half[tube=${tube}]@stands-out`, `${tube}_stands_out`, 'length', source)];
  fill('after-boxes', [...half('inner'), ...half('outer'), box('closed@length', 'closed_after', 'length', source), ...MARKS.map((each) => box(`marks@${each}`, `mark_${each.replace('-', '_')}`, 'length', source))]);
  draw_marks();
  after_cut_soon();
}

let timer = 0;
function after_cut_soon() {
  clearTimeout(timer);
  timer = window.setTimeout(after_cut, 250);
}

async function after_cut() {
  if (!measured.element('half') && !measured.element('closed')) return fill('after-says', []);
  if (wide_anywhere() && measured.element('closed')) measured.set('closed@reference', closed_reference() || null);
  const job = new TextEncoder().encode(state.job.text()).length;
  const reply = await post(`/after-cut?${in_units()}&job-bytes=${job}`, state.job.text() + measured.text());
  if (reply.status === 422) return fill('after-says', [make('ul', {class: 'fault'}, ...reply.json.faults.map((/** @type {any} */ fault) => make('li', {}, fault.says)))]);
  if (reply.status !== 200) return fill('after-says', [make('p', {}, t(reply.status ? 'not_made' : 'offline'))]);
  const parts = reply.json.parts.filter((/** @type {any} */ one) => one.measured_mm !== null || one.result === 'measure').map((/** @type {any} */ one) => make('li', {class: one.result, 'data-part': one.part},
    make('span', {class: 'disc'}, {inner_guard: 'A', outer_guard: 'B', inner_tube: 'C', outer_tube: 'D'}[/** @type {'inner_tube'} */ (one.part)] || ''), ' ', one.says || t(`after_${one.result.replace('-', '_')}`, String(one.saw_more_mm || one.short_mm || ''))));
  const checks = reply.json.checks.filter((/** @type {any} */ one) => one.result === 'fail').map((/** @type {any} */ one) => make('li', {}, one.says));
  fill('after-says', [make('p', {class: `verdict ${reply.json.verdict}`, 'data-after': reply.json.verdict}, t(`verdict_${reply.json.verdict.replace('-', '_')}`)), ...still_open(), make('ul', {}, ...parts), ...(checks.length ? [make('ul', {}, ...checks)] : [])]);
}

/** Right by the tape is not yet done: the steps that were not touched off. */
function still_open() {
  const open = ['front', 'back'].flatMap((side) => (state.view ? state.view[/** @type {'front'} */ (side)] : []).filter((one) => !(state.saw.done || {})[`${side}${one.number}`]).map((one) => one.number));
  return open.length ? [make('p', {class: 'danger', id: 'steps-open'}, t('steps_open', open.join(', ')))] : [];
}

export function build_saw() {
  id('saw-halves-at').append(saw_figure());
  on_open('saw', () => { drawn = ''; draw(); });
  on_change(draw);
}
