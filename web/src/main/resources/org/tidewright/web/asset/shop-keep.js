// Fetches the list of species, says how old it is, and has page and list kept for where there is no network.
const STALE_MS = 10 * 60 * 1000;

/** “14:05 today”, “14:05 yesterday”, “14:05 on 28 November”. */
function since(written) {
  const then = new Date(written), midnight = new Date().setHours(0, 0, 0, 0);
  const time = then.toLocaleTimeString('en-GB', { hour: '2-digit', minute: '2-digit' });
  if (then >= midnight) return `${time} today`;
  if (then >= new Date(midnight).setDate(new Date(midnight).getDate() - 1)) return `${time} yesterday`;
  return `${time} on ${then.toLocaleDateString('en-GB', { day: 'numeric', month: 'long' })}`;
}

function say(form, which) {
  for (const words of form.querySelectorAll('[data-say]')) words.hidden = words.dataset.say !== which;
}

/** Gives every list that comes to somebody, now and whenever a newer one may be had; done when the first try is over. */
export function list(form, taken) {
  const offline = form.querySelector('[data-offline]');
  let at = 0;

  function is(gone) {
    offline.hidden = !gone;
    form.classList.toggle('is-offline', gone);
  }

  async function ask() {
    try {
      const answer = await fetch(`${form.dataset.shop}.json`, { headers: { Accept: 'application/json' } });
      if (!answer.ok) throw new Error(answer.status);
      const document = await answer.json();
      for (const words of form.querySelectorAll('[data-as-of]')) words.textContent = since(document.as_of);
      at = Date.now();
      is(answer.headers.get('Tidewright-Kept') === 'yes');
      taken(document);
    } catch {
      // With no list there is nothing that could be old.
      if (at) is(true); else say(form, 'none');
    }
  }

  addEventListener('online', ask);
  addEventListener('offline', () => { if (at) is(true); });
  document.addEventListener('visibilitychange', () => {
    if (!document.hidden && (!offline.hidden || Date.now() - at > STALE_MS)) ask();
  });
  return ask().then(() => at > 0);
}

/** Has this page, its list and its files kept by the worker, and says whether they are. */
export async function keep(form, fetched) {
  const there = await fetched;
  if (!window.isSecureContext || !navigator.serviceWorker) {
    if (there) say(form, window.isSecureContext ? 'refused' : 'open');
    return;
  }
  const { shop, worker, files } = form.dataset;
  try {
    const registration = await navigator.serviceWorker.register(worker, { scope: shop });
    const held = await answered(await active(registration), [shop, `${shop}.json`, ...files.split(' ')]);
    if (there) say(form, held ? 'kept' : 'refused');
  } catch {
    if (there) say(form, 'refused');
  }
}

/** The worker of this build, once it is at work. */
function active(registration) {
  const worker = registration.installing ?? registration.waiting ?? registration.active;
  return new Promise((resolve, reject) => {
    const look = () => {
      if (worker.state === 'activated') resolve(worker);
      if (worker.state === 'redundant') reject(new Error('given up'));
    };
    worker.addEventListener('statechange', look);
    look();
  });
}

function answered(worker, addresses) {
  return new Promise((resolve) => {
    const channel = new MessageChannel();
    channel.port1.onmessage = ({ data }) => resolve(data.held);
    worker.postMessage({ keep: addresses }, [channel.port2]);
  });
}
