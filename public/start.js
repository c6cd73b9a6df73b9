// Starts the app and looks after its updates. Loaded as a module by index.html; exposes no globals.
//
// Events on window, all named by their first word:
//   tussock-panic         sent by the app's panic hook, or here when the app does not load. detail: text.
//                         shell.js stops the page and shows the recovery panel.
//   tussock-update        sent here when a newer build is downloaded and waits, once for each build.
//                         detail: { build }. <html data-update> holds the same build, for an app that listens later.
//                         The app decides whether and when to offer it, never over a draft in any tab.
//   tussock-apply-update  sent by the app when the person took the offer. The waiting worker takes over and this tab,
//                         and only this tab, reloads once. Not taken, the build starts by itself at the next cold start.
const BUILD = '@@build@@';
const HOUR = 3_600_000;

const tell = (name, detail) => dispatchEvent(new CustomEvent(name, { detail }));

try {
  const app = await import('./@@app.js@@');
  await app.default({ module_or_path: new URL('@@app.wasm@@', document.baseURI) });
} catch (problem) {
  tell('tussock-panic', `${problem} (${BUILD})`);
}

// The worker is asked for after the app has started, so that its downloads do not stand in the way of the first screen.
if ('serviceWorker' in navigator) {
  const container = navigator.serviceWorker;
  let asked = false;
  container.addEventListener('controllerchange', () => {
    if (!asked) return; // the first claim, or another tab's choice: this page stays as it is
    asked = false;
    location.reload();
  });
  try {
    watch(await container.register('sw.js', { scope: './', updateViaCache: 'none' }));
  } catch {
    // No worker (a private window, a file that did not arrive): the app works on, only not without signal.
  }

  function watch(registration) {
    const announced = new Set();
    const announce = async () => {
      const waiting = registration.waiting;
      if (!waiting || !registration.active) return;
      const build = await buildOf(waiting);
      if (build === BUILD || announced.has(build)) return;
      announced.add(build);
      document.documentElement.dataset.update = build;
      tell('tussock-update', { build });
    };
    const follow = (worker) => worker?.addEventListener('statechange', () => {
      if (worker.state === 'installed') announce();
    });
    follow(registration.installing);
    registration.addEventListener('updatefound', () => follow(registration.installing));
    announce();

    addEventListener('tussock-apply-update', () => {
      if (!registration.waiting) {
        location.reload(); // another tab has let it in already
        return;
      }
      asked = true;
      registration.waiting.postMessage({ type: 'SKIP_WAITING' });
    });

    let looked = Date.now();
    document.addEventListener('visibilitychange', () => {
      if (document.visibilityState !== 'visible' || Date.now() - looked < HOUR) return;
      looked = Date.now();
      registration.update().catch(() => {}); // no signal: the next look will do
    });
  }

  function buildOf(worker) {
    return new Promise((resolve) => {
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = ({ data }) => resolve(data.build);
      worker.postMessage({ type: 'BUILD' }, [port2]);
    });
  }
}
