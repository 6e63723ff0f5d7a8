// Puts the page together once the server said what it knows.
import {build_answer, go_on} from './answer.js';
import {make_sixteenths, on_enter} from './boxes.js';
import {build_choose} from './choose.js';
import {build_drafts} from './drafts.js';
import {build_form} from './form.js';
import {build_identify} from './identify.js';
import {enough} from './next.js';
import {build_pair_door, build_pairing} from './pairing.js';
import {build_papers} from './papers.js';
import {build_quote} from './quote.js';
import {build_saw} from './saw.js';
import {ask_soon, drop_asked, get_catalogue} from './server.js';
import {edited, id, on_change, on_edit, state, t} from './state.js';
import {build_views} from './views.js';

function put_words() {
  document.documentElement.lang = state.catalogue.language || 'en';
  document.querySelectorAll('[data-word]').forEach((one) => void (one.textContent = t(/** @type {HTMLElement} */ (one).dataset.word || '')));
  document.querySelectorAll('[data-label]').forEach((one) => one.setAttribute('aria-label', t(/** @type {HTMLElement} */ (one).dataset.label || '')));
  document.title = t('title');
}

function build_settings() {
  const glove = id('glove');
  const set = (/** @type {boolean} */ on) => {
    document.documentElement.classList.toggle('glove', on);
    document.body.classList.toggle('glove', on);
    glove.setAttribute('aria-pressed', String(on));
    localStorage.setItem('glove', on ? 'yes' : '');
    dispatchEvent(new Event('resize'));
  };
  glove.addEventListener('click', () => set(!document.body.classList.contains('glove')));
  set(localStorage.getItem('glove') === 'yes');
  for (const units of ['mm', 'in']) {
    const one = id(`units-${units}`);
    one.addEventListener('click', () => { state.job.set_units(units); edited(); });
    on_change(() => one.setAttribute('aria-pressed', String(state.job.get('@units') === units)));
  }
  on_change(() => void (id('order-now').textContent = state.job.get('@order')));
}

function build() {
  put_words();
  make_sixteenths();
  build_settings();
  build_views();
  build_form();
  build_answer();
  build_papers();
  build_saw();
  build_choose();
  build_quote();
  build_identify();
  build_pair_door();
  id('to-rest').addEventListener('click', () => { id('rest').tabIndex = -1; id('rest').scrollIntoView(); id('rest').focus({preventScroll: true}); });
  on_enter(go_on);
  on_edit(() => { if (enough()) ask_soon(enough); else drop_asked(); });
  build_drafts();
  document.body.classList.remove('loading');
}

/** Asked again until the server answers: a tablet may wake before it. */
async function start() {
  const reply = await get_catalogue();
  if (reply.json) {
    state.catalogue = reply.json;
    build();
  } else if (reply.status === 401 || reply.status === 403) build_pairing(reply.says, start);
  else setTimeout(start, 1000);
}
start();
