// At the saw: the sheet's front and back to touch off, what is confirmed, what the marks read, and what the shaft is after the cut.
import {box} from './boxes.js';
import {Job} from './job.js';
import {keep} from './drafts.js';
import {enough} from './next.js';
import {post} from './server.js';
import {button, changed, closed_reference, edited, id, make, on_change, on_edit, state, t, wide_anywhere} from './state.js';
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
  after_cut_soon();
}});

/** @param {string} key of what was touched off */
function touch_off(key) {
  const touched = () => Boolean((state.saw.done || {})[key]);
  const one = button('', () => {
    state.saw.done = {...state.saw.done, [key]: !touched()};
    keep();
    show();
  }, {class: 'done', 'data-done': key});
  const show = () => {
    one.setAttribute('aria-pressed', String(touched()));
    one.textContent = touched() ? `✓ ${t('done')}` : t('touch_off');
    one.closest('li')?.classList.toggle('past', touched());
  };
  show();
  return {one, show};
}

/** @param {string} side @param {import('./state.js').Step} step */
function step_item(side, step) {
  const done = touch_off(`${side}${step.number}`);
  const lengths = (step.lengths || []).map((each) => make('span', {class: 'length'}, make('span', {class: 'disc'}, each.letter), ` ${each.says}`));
  const item = make('li', {value: step.number}, make('div', {}, ...(step.heading ? [make('h3', {}, step.heading)] : []), ...step.says.map((each) => make('p', {}, each)), ...(lengths.length ? [make('p', {class: 'lengths'}, ...lengths)] : [])), done.one);
  done.show();
  return item;
}

/** @param {{what: string, says: string, expected_mm?: number, plus_minus_mm?: number}} one */
function confirmation(one) {
  const says = make('p', {class: 'judged', role: 'status'});
  const input = make('input', {inputmode: 'decimal', value: (state.saw.confirm || {})[one.what] || '', 'aria-label': one.says, 'data-confirm': one.what});
  const judge = () => {
    const read = millimetres(input.value.replace(',', '.')), expected = one.expected_mm ?? NaN;
    says.replaceChildren();
    if (Number.isNaN(read) || Number.isNaN(expected)) return;
    const within = Math.abs(read - expected) <= (one.plus_minus_mm || 0) + 0.01;
    says.append(t(within ? 'as_expected' : 'not_as_expected'));
    if (!within && one.what in CONFIRMED && !one.what.endsWith('shoulder')) says.append(' ', button(t('put_reading_in'), () => { state.job.set(CONFIRMED[one.what], input.value.replace(',', '.')); edited(); }));
  };
  input.addEventListener('input', () => { state.saw.confirm = {...state.saw.confirm, [one.what]: input.value}; keep(); judge(); });
  judge();
  return make('li', {}, make('p', {}, one.says), input, says);
}

const fill = (/** @type {string} */ name, /** @type {Node[]} */ nodes) => id(name).replaceChildren(...nodes);

let drawn = '';
function draw() {
  const view = enough() ? state.view : null;
  if (id('saw').hidden) return;
  const key = JSON.stringify([view, state.answer && state.answer.confirm, state.job.get('@order')]);
  if (key === drawn) return;
  drawn = key;
  if (!view || view.verdict === 'refused') return fill('saw-steps', [make('p', {class: 'big'}, t(view ? 'do_not_saw' : 'asking'))]);
  const confirm = ((state.answer && state.answer.confirm.length === view.confirm.length && state.answer.confirm) || view.confirm).map(confirmation);
  const side = (/** @type {string} */ name, /** @type {import('./state.js').Step[]} */ steps) => [make('h3', {}, t(name)), make('ol', {class: 'steps'}, ...steps.map((step) => step_item(name, step)))];
  const marks = view.marks.length ? [make('h3', {}, t('marks')), make('ul', {class: 'marks'}, ...view.marks.map((each) => make('li', {}, make('strong', {}, each.says), ' ', each.expected_says)))] : [];
  fill('saw-steps', [...(view.warnings.length ? [make('ul', {class: 'warnings'}, ...view.warnings.map((each) => make('li', {}, each)))] : []),
    ...(confirm.length ? [make('h3', {}, t('confirm')), make('ol', {class: 'confirm'}, ...confirm)] : []), ...side('front', view.front), ...side('back', view.back), ...marks]);
  build_after();
}

/** The boxes for what is measured after the cut. */
function build_after() {
  take_measured();
  const half = (/** @type {string} */ tube) => [box(`half[tube=${tube}]@length`, `${tube}_half`, 'length', source), box(`half[tube=${tube}]@guard`, `${tube}_guard_after`, 'length', source), box(`half[tube=${tube}]@stands-out`, `${tube}_stands_out`, 'length', source)];
  fill('after-boxes', [...half('inner'), ...half('outer'), box('closed@length', 'closed_after', 'length', source), ...MARKS.map((each) => box(`marks@${each}`, `mark_${each.replace('-', '_')}`, 'length', source))]);
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
  const reply = await post(`/after-cut?job-bytes=${job}`, state.job.text() + measured.text());
  if (reply.status === 422) return fill('after-says', [make('ul', {class: 'fault'}, ...reply.json.faults.map((/** @type {any} */ fault) => make('li', {}, fault.says)))]);
  if (reply.status !== 200) return fill('after-says', [make('p', {}, t(reply.status ? 'not_made' : 'offline'))]);
  const parts = reply.json.parts.filter((/** @type {any} */ one) => one.measured_mm !== null).map((/** @type {any} */ one) => make('li', {class: one.result, 'data-part': one.part},
    make('span', {class: 'disc'}, {inner_guard: 'A', outer_guard: 'B', inner_tube: 'C', outer_tube: 'D'}[/** @type {'inner_tube'} */ (one.part)] || ''), ' ', one.says || t(`after_${one.result.replace('-', '_')}`, String(one.saw_more_mm || one.short_mm || ''))));
  const checks = reply.json.checks.filter((/** @type {any} */ one) => one.result === 'fail').map((/** @type {any} */ one) => make('li', {}, one.says));
  fill('after-says', [make('p', {class: `verdict ${reply.json.verdict}`, 'data-after': reply.json.verdict}, t(`verdict_${reply.json.verdict.replace('-', '_')}`)), make('ul', {}, ...parts), ...(checks.length ? [make('ul', {}, ...checks)] : [])]);
}

async function get_answer() {
  const reply = await post('/answer', state.job.text());
  state.answer = reply.status === 200 ? reply.json : null;
  changed();
}

export function build_saw() {
  on_open('saw', () => { void get_answer(); draw(); });
  on_change(draw);
  on_edit(() => { if (!id('saw').hidden) void get_answer(); });
}
