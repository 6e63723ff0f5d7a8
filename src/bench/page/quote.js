// What the job costs: minutes, quantities and discount changed here, the totals come from the server.
import {document_out} from './papers.js';
import {post} from './server.js';
import {id, make, state, t} from './state.js';
import {on_open} from './views.js';

/** What the service writer changed, by line.
 * @type {Record<string, string>} */
let changes = {};
let discount = '', timer = 0;

function wishes() {
  const list = Object.entries(changes).filter(([, value]) => value !== '').map(([line, value]) => `&quantity=${encodeURIComponent(`${Number(line) + 1}:${value}`)}`);
  return list.join('') + (discount ? `&discount=${encodeURIComponent(discount)}` : '');
}
const later = () => { clearTimeout(timer); timer = window.setTimeout(ask, 250); };

/** @param {any} line @param {number} number */
function row(line, number) {
  const key = String(number);
  const input = make('input', {inputmode: 'decimal', 'aria-label': `${t('quantity')}: ${line.text}`, 'data-line': key, value: changes[key] || String(line.quantity), oninput: () => { changes[key] = input.value.replace(',', '.'); later(); }});
  return make('tr', {}, make('td', {}, line.text, ...(line.missing ? [make('p', {class: 'fault'}, line.missing)] : [])), make('td', {}, ...(line.unit === 'flat' ? [] : [input, ` ${line.unit || ''}`])), make('td', {class: 'money'}, line.each || ''), make('td', {class: 'money', 'data-amount': key}, line.amount || ''));
}

let shape = '';
/** @param {any} quote */
function show(quote) {
  const now = quote.lines.map((/** @type {any} */ line) => line.text).join('|');
  if (now !== shape) id('quote-lines').replaceChildren(...quote.lines.map(row));
  else quote.lines.forEach((/** @type {any} */ line, /** @type {number} */ n) => { const cell = id('quote-lines').querySelector(`[data-amount="${n}"]`); if (cell) cell.textContent = line.amount || ''; });
  shape = now;
  const total = (/** @type {string} */ word, /** @type {string | null} */ amount) => amount === null ? [] : [make('dt', {}, t(word)), make('dd', {}, `${amount} ${quote.currency}`)];
  id('quote-totals').replaceChildren(...total('net', quote.net), ...quote.tax.flatMap((/** @type {any} */ one) => total('tax', one.amount)), ...total('total', quote.total), ...total('deposit', quote.deposit));
  id('quote-verdict').textContent = t(`quote_${quote.verdict}`);
  id('alternatives').replaceChildren(...quote.alternatives.map((/** @type {any} */ one) => make('li', {}, [one.what, ...(one.total ? [`${one.total} ${quote.currency}`] : []), ...one.missing].join(' · '))));
}

async function ask() {
  const reply = await post(`/quote?units=${state.job.get('@units')}${wishes()}`, state.job.text());
  const quoted = reply.status === 200;
  for (const part of ['#quote table', '#quote-totals', '#quote label', '#quote .row']) /** @type {HTMLElement} */ (document.querySelector(part)).hidden = !quoted;
  if (quoted) return show(reply.json);
  const says = reply.status === 422 ? [...reply.json.faults.map((/** @type {any} */ one) => one.says), reply.json.says || ''].filter(Boolean) : [t(reply.status ? 'not_made' : 'offline')];
  id('alternatives').replaceChildren();
  id('quote-verdict').replaceChildren(...says.map((each) => make('span', {class: 'fault line'}, each)));
}

export function build_quote() {
  on_open('quote', () => { changes = {}; shape = ''; void ask(); });
  const box = /** @type {HTMLInputElement} */ (id('discount'));
  box.addEventListener('input', () => { discount = box.value.trim().replace(',', '.'); later(); });
  id('quote-sheet').addEventListener('click', () => document_out('quote-sheet', 'pdf', state.job.text(), wishes()));
  id('quote-book').addEventListener('click', () => document_out('quote-book', 'xlsx', state.job.text(), wishes()));
}
