// More, for more checks: each group says which check it feeds.
import {box, choice} from './boxes.js';
import {lock} from './drawing.js';
import {make, on_change, put, state, t} from './state.js';

const SIDES = ['tractor', 'implement'], RANGES = ['working', 'turning', 'standing'];

/** @param {string} check key of what it feeds @param {...Node} inside */
const group = (check, ...inside) => make('details', {class: 'group', id: `more-${check}`}, make('summary', {}, make('strong', {}, t(`more_${check}`)), ' ', make('span', {}, t(`feeds_${check}`))), make('div', {class: 'boxes'}, ...inside));
/** @param {string} word @param {...Node} inside */
const named = (word, ...inside) => make('fieldset', {}, make('legend', {}, t(word)), ...inside);
/** @param {string[]} words @param {string} prefix */
const options = (words, prefix) => words.map((word) => ({word, says: t(`${prefix}_${word.replace(/-/g, '_')}`)}));

/** @param {string} attribute @param {string} word */
function connections(attribute, word) {
  return SIDES.map((side) => choice(`shaft/end[side=${side}]@${attribute}`, `${side}_${word}`, state.catalogue.connections.map((/** @type {any} */ one) => ({word: one.name, says: one.name}))));
}

/** Several may hold: words with blanks between.
 * @param {string} path @param {string} word @param {string[]} words */
function several(path, word, words) {
  const now = () => state.job.get(path).split(' ').filter(Boolean);
  const buttons = words.map((each) => make('button', {type: 'button', class: 'tile', 'data-value': each, onclick: () => {
    const kept = now().filter((other) => other !== each);
    put(path, (now().includes(each) ? kept : [...kept, each]).join(' '));
  }}, t(`feature_${each.replace(/-/g, '_')}`)));
  on_change(() => buttons.forEach((one, n) => one.setAttribute('aria-pressed', String(now().includes(words[n])))));
  return make('div', {class: 'choice', role: 'group', 'aria-label': t(word), 'data-path': path}, make('span', {class: 'caption'}, t(word)), make('div', {class: 'tiles'}, ...buttons));
}

const whose = () => group('whose', box('@order', 'order', 'text'), box('@date', 'date', 'date'),
  ...['customer', 'phone', 'machine', 'tractor', 'hitch'].map((a) => box(`for@${a}`, a, 'text')), box('shaft@number', 'shaft_number', 'text'),
  choice('for@machine-here', 'machine_here', options(['yes', 'no'], 'say')),
  box('measured-by@name', 'measured_by', 'text'), box('measured-by@date', 'measured_on', 'date'), box('measured-by@with', 'measured_with', 'text'));

const angles = () => group('angles', ...SIDES.flatMap((side) => [named(side, ...RANGES.map((when) => box(`fit[1]/angle[side=${side}]@${when}`, `angle_${when}`, 'angle')),
  box(`fit[1]/angle[side=${side}]@side-view`, 'side_view', 'angle'), box(`fit[1]/angle[side=${side}]@plan`, 'plan', 'angle'),
  choice(`fit[1]/angle[side=${side}]@when`, 'views_when', options(RANGES, 'range')))]));

/** The angles of the tractors after the first. */
function later_angles() {
  const place = make('div');
  let drawn = 1;
  on_change(() => {
    const count = Math.max(1, state.job.count('', 'fit'));
    if (count === drawn) return;
    drawn = count;
    place.replaceChildren(...[...Array(count - 1).keys()].flatMap((n) => SIDES.map((side) =>
      named(side, make('p', {}, t('fit_number', String(n + 2))), ...RANGES.map((when) => box(`fit[${n + 2}]/angle[side=${side}]@${when}`, `angle_${when}`, 'angle'))))));
  });
  return place;
}

function condition() {
  const asked = Object.entries(state.catalogue.conditions || {});
  return group('condition', ...asked.map(([name, words]) => choice(`shaft/condition@${name}`, `condition_${name}`, /** @type {any} */ (words))));
}

/** @param {string} tube */
const half = (tube) => named(`${tube}_half_heading`, several(`shaft/half[tube=${tube}]@features`, 'features', ['coated', 'end-stop', 'one-chain-guard']),
  ...['lubrication-hole', 'shoulder', 'cut-to', 'plus-minus'].map((a) => box(`shaft/half[tube=${tube}]@${a}`, a.replace(/-/g, '_'))), box(`shaft/half[tube=${tube}]@series`, 'half_series', 'text'));

const accuracy = () => group('accuracy', box('shaft/closed@plus-minus', 'plus_minus_closed'), ...[['shortest', 'shortest'], ['longest[when=working]', 'longest_working'], ['longest[when=turning]', 'longest_turning'], ['longest[when=standing]', 'longest_standing']]
  .map(([path, word]) => named(word, box(`fit[1]/${path}@plus-minus`, 'plus_minus'))));

const limits = () => group('limits', box('limits@closing-clearance', 'closing_clearance'), box('limits@why', 'limit_why', 'text'), box('limits@by', 'limit_by', 'text'));

export function more_part() {
  const by_end = (/** @type {string} */ word, /** @type {(side: string) => Node[]} */ inside) => SIDES.map((side) => named(side, ...inside(side)));
  return make('section', {id: 'more', 'aria-labelledby': 'more-h'}, make('h2', {id: 'more-h'}, t('more')), whose(), condition(), angles(), later_angles(),
    group('locking', ...by_end('lock', (side) => [choice(`shaft/end[side=${side}]@lock`, `${side}_lock`, state.catalogue.locks.map((/** @type {any} */ one) => ({word: one.word, says: t(`lock_${one.word.replace(/-/g, '_')}`), picture: lock(one.word)})))]), box('shaft@built', 'built', 'year')),
    group('connection', ...connections('connection', 'connection'), ...connections('onto', 'onto'), choice('fit[1]@between', 'between', options(['crosses', 'grooves'], 'between'))),
    group('device', choice('shaft@role', 'role', options(['primary', 'secondary'], 'role')), ...by_end('device', (side) => [choice(`shaft/end[side=${side}]@device`, `${side}_device`, state.catalogue.devices)])),
    group('rating', box('for@power', 'power', 'power'), box('shaft@speed', 'speed', 'speed')),
    group('halves', half('inner'), half('outer'), ...SIDES.map((side) => named(side, box(`shaft/end[side=${side}]@spacing`, 'spacing'), box(`shaft/end[side=${side}]@cross-to-groove`, 'cross_to_groove')))),
    accuracy(), limits());
}
