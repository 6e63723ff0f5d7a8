// Which series this shaft can be: touch the part, type the figure, see the list shrink.
import {box, choice, forget} from './boxes.js';
import {frame, joint, picture, section, tube, axis} from './drawing.js';
import {Job} from './job.js';
import {document_out} from './papers.js';
import {post} from './server.js';
import {button, edited, escaped, id, inner_side, make, on_edit, state, t} from './state.js';
import {on_open, show_view} from './views.js';

const LOOKS = [['circlip', 'inside', 'outside'], ['nipple', 'cross', 'cap']];
const PARTS = ['tractor', 'tubes', 'implement'];
let measures = new Job('<measures/>', 'measures');
let part = 'tubes', timer = 0, asked = 0;

const source = () => ({root: measures.root, get: (/** @type {string} */ path) => measures.get(path), set: (/** @type {string} */ path, /** @type {string} */ value) => {
  measures.set(path, value);
  const kind = path.endsWith('@joint');
  if (kind) forget_joint(path.split('@')[0], value);
  if (kind || path.endsWith('@measured-in')) draw();
  clearTimeout(timer);
  timer = window.setTimeout(ask, 150);
}});
/** What was read of a joint of the other kind says nothing of this one.
 * @param {string} end @param {string} value */
function forget_joint(end, value) {
  for (const what of ['cross', 'spacing']) while (measures.element(`${end}/${what}`)) measures.remove(`${end}/${what}`);
  if (!value) measures.remove(end);
}
const length = (/** @type {string} */ path, /** @type {string} */ word) => box(path, word, 'length', source);

/** @param {string} cross path of the cross @param {string} word */
function cross_boxes(cross, word) {
  return make('fieldset', {}, make('legend', {}, t(word)), length(`${cross}/span@length`, 'span'), length(`${cross}/cap@diameter`, 'cap'),
    ...LOOKS.map(([look, ...words]) => choice(`${cross}@${look}`, `measure_${look}`, words.map((each) => ({word: each, says: t(`${look}_${each}`)})), {source})),
    measures.get(`${cross}/cap@diameter`) ? choice(`${cross}/cap@measured-in`, 'cap_where', [{word: 'bore', says: t('cap_bore')}], {source}) : make('span'));
}

/** @param {string} side */
function end_boxes(side) {
  const end = `end[side=${side}]`, kind = measures.get(`${end}@joint`);
  const kinds = choice(`${end}@joint`, `${side}_joint`, ['standard', 'wide-angle'].map((word) => ({word, says: t(word), picture: picture(150, 40, joint(frame(150, 20, side === 'implement'), word), '')})), {source});
  if (kind === 'wide-angle') return [kinds, cross_boxes(`${end}/cross[at=outer]`, 'outer-cross'), cross_boxes(`${end}/cross[at=inner]`, 'inner-cross'), length(`${end}/spacing@length`, 'spacing')];
  return kind ? [kinds, cross_boxes(`${end}/cross`, 'its_cross')] : [kinds];
}

function tube_boxes() {
  const shapes = choice('tubes@shape', 'shape', state.catalogue.shapes.filter((/** @type {any} */ one) => one.word !== 'other').map((/** @type {any} */ one) => ({...one, picture: section(one.word)})), {source});
  return [shapes, ...['inner', 'outer'].map((which) => make('fieldset', {}, make('legend', {}, t(`${which}_tube_of`)), length(`tubes/tube[tube=${which}]/width@length`, 'width'), length(`tubes/tube[tube=${which}]/wall@length`, 'wall'))),
    box('guard@writing', 'writing', 'text', source)];
}

/** @param {string} now */
function draw_parts(now) {
  const width = id('identify-parts').clientWidth || 340, left = frame(width, 36, false), right = frame(width, 36, true);
  const kind = (/** @type {string} */ side) => measures.get(`end[side=${side}]@joint`);
  const places = /** @type {Record<string, number[]>} */ ({tractor: [0, 146], tubes: [146, width - 146], implement: [width - 146, width]});
  const frames = PARTS.map((each) => `<rect x="${places[each][0] + 2}" y="2" width="${places[each][1] - places[each][0] - 4}" height="68" fill="none" stroke="#000" stroke-width="${each === now ? 5 : 1}"/>`);
  id('identify-parts').innerHTML = picture(width, 72, tube(right, 142, width / 2, 10) + tube(left, 142, width / 2, 14) + axis(left, 0, width) + joint(left, kind('tractor')) + joint(right, kind('implement')) + frames.join(''), escaped(t('identify_drawing')));
  for (const each of PARTS) {
    const one = button(t(each), () => { part = each; draw(); }, {class: 'spot part', 'aria-pressed': String(each === now), 'data-part': each});
    one.style.left = `${places[each][0]}px`;
    one.style.width = `${places[each][1] - places[each][0]}px`;
    id('identify-parts').append(one);
  }
}

function draw() {
  draw_parts(part);
  id('identify-boxes').replaceChildren(...(part === 'tubes' ? tube_boxes() : end_boxes(part)));
  forget();
}

/** What to measure: the part, which cross or tube of it, the figure; again, where it was read before.
 * @param {any} next */
function named(next) {
  const words = next.measure.split(' '), again = words[words.length - 1] === 'again' ? words.pop() : '';
  const kind = words.pop() || '', tube = next.part === 'tubes';
  const which = words.map((/** @type {string} */ word) => word === 'inner' || word === 'outer' ? t(tube ? `${word}_tube_of` : `${word}-cross`) : t(`measure_${word}`));
  return [...(next.part ? [t(next.part)] : []), ...which, t(`measure_${kind.replace(/-/g, '_')}`), ...(again ? [t('measure_again')] : [])].join(' · ');
}

/** Said as everywhere, by the server: the page rounds nothing.
 * @param {any} answer */
function show(answer) {
  const says = answer.says, next = answer.stop ? undefined : answer.next[0];
  const sure = says.sure.map((/** @type {any} */ row, /** @type {number} */ n) => make('li', n < answer.series.length ? {'data-series': row.of} : {}, make('strong', {}, row.of), ` ${row.percent}`));
  const paragraph = (/** @type {string} */ text) => make('p', {}, text);
  id('identify-says').replaceChildren(make('p', {class: 'verdict', 'data-identified': answer.verdict}, says.verdict), ...says.reasons.map(paragraph),
    ...(next ? [make('p', {class: 'small'}, t('next')), make('p', {class: 'big', 'data-next': `${next.part} ${next.measure}`}, named(next)), make('p', {class: 'small'}, next.takes)] : says.next.map(paragraph)),
    make('ul', {class: 'series'}, ...sure),
    ...(answer.verdict === 'one' || answer.verdict === 'mixed' ? [paragraph(t('identify_stops')), button(t('to_the_cut'), () => void to_cut(), {id: 'to-cut'})] : []));
  if (next && next.part !== part && PARTS.includes(next.part)) id('identify-parts').querySelector(`[data-part="${next.part}"]`)?.classList.add('lit');
}

async function ask() {
  const mine = ++asked, reply = await post('/identify', measures.text());
  if (mine !== asked) return;
  if (reply.status === 200) show(reply.json);
  else id('identify-says').replaceChildren(...(reply.status === 422 ? reply.json.faults.map((/** @type {any} */ fault) => make('p', {class: 'fault'}, fault.says)) : [make('p', {}, t(reply.status ? 'not_made' : 'offline'))]));
}

/** Which end carries the inner tube as the halves' series went into that job; whoever says later that it is the other one has them follow their ends.
 * @type {{job: Job, inner: string} | null} */
let placed = null;
const half_series = (/** @type {string} */ tube) => `shaft/half[tube=${tube}]@series`;

function follow_ends() {
  if (!placed || placed.job !== state.job || placed.inner === inner_side()) return;
  const [inner, outer] = ['inner', 'outer'].map((tube) => state.job.get(half_series(tube)));
  state.job.set(half_series('inner'), outer);
  state.job.set(half_series('outer'), inner);
  placed.inner = inner_side();
}

/** The job that the server begins; nothing where it does not.
 * @returns {Promise<Job | null>} */
async function begun() {
  const mine = asked, reply = await post('/identify-job', measures.text());
  if (mine !== asked) return null;
  const job = reply.status === 200 && reply.blob ? new Job(await reply.blob.text()) : null;
  if (job && job.readable) return job;
  id('identify-says').prepend(make('p', {class: 'fault'}, t(reply.status ? 'not_made' : 'identify_offline')));
  return null;
}

/** The identified series goes into the job, with what it was identified by. Where both halves' differ their tubes are not known, and they stand by their ends: the
 * tractor's first. What an earlier answer said of halves goes. */
async function to_cut() {
  const from = await begun();
  if (!from) return;
  from.set_units(state.job.get('@units'));
  const known = (/** @type {string} */ path) => from.get(path) === '?' ? '' : from.get(path);
  for (const path of ['shaft@series', 'shaft@shape', 'shaft@spacing']) state.job.set(path, known(path));
  if (!state.job.get('shaft@series')) state.job.set('shaft@shape', measures.get('tubes@shape'));
  state.unknown = !state.job.get('shaft@series');
  const by_tube = from.element('shaft/half[tube=inner]') !== null, inner = inner_side();
  for (const [n, side] of ['tractor', 'implement'].entries()) {
    const end = `shaft/end[side=${side}]`, tube = side === inner ? 'inner' : 'outer', series = known(by_tube ? half_series(tube) : `shaft/half[${n + 1}]@series`);
    state.job.set(`${end}@joint`, measures.get(`end[side=${side}]@joint`) || state.job.get(`${end}@joint`));
    state.job.set(half_series(tube), series);
    if (series === 'none') state.job.set(`${end}@spacing`, known(`${end}@spacing`));
  }
  placed = {job: state.job, inner};
  state.job.remove('shaft/measures');
  const kept = from.element('shaft/measures');
  if (kept) state.job.element('shaft')?.append(state.job.doc.importNode(kept, true));
  edited();
  show_view('form');
}

export function build_identify() {
  on_edit(follow_ends);
  id('identify-sheet').addEventListener('click', () => document_out('identify-sheet', 'pdf', measures.text()));
  addEventListener('resize', () => { if (!id('identify').hidden) draw_parts(part); });
  on_open('identify', () => {
    if (!measures.get('@shaft')) measures = new Job(`<measures shaft="${state.job.get('@order')}" date="${state.job.get('@date')}" units="${state.job.get('@units')}"/>`, 'measures');
    draw();
    void ask();
  });
}
