// Inlined into index.html and run before the first paint: chooses theme, hand and which frame the shell shows,
// asks for the app once that is painted, and owns the recovery panel, so that it works when no other file has arrived.
(() => {
  const root = document.documentElement;
  const setting = (name) => {
    // Storage may be closed to us; a setting written as JSON stands in quotes.
    try { return (localStorage.getItem(name) ?? '').replaceAll('"', ''); } catch { return ''; }
  };
  const dress = () => {
    const theme = setting('tussock-theme');
    if (theme === 'paper' || theme === 'slate') root.dataset.theme = theme; else delete root.dataset.theme;
    if (setting('tussock-hand') === 'left') root.dataset.hand = 'left'; else delete root.dataset.hand;
    const slate = theme === 'slate' || (theme !== 'paper' && matchMedia('(prefers-color-scheme: dark)').matches);
    document.querySelector('meta[name=theme-color]').content = slate ? '#161B1E' : '#F8F8F3';
  };
  // Somebody who has been here, or who comes by a link into the app, gets the quiet frame and no flash of the first screen.
  const frame = () => {
    if (root.dataset.shell === 'gone' || root.dataset.shell === 'stopped' || root.dataset.app) return;
    const inside = location.hash.length > 2; // more than "#/"
    root.dataset.shell = inside || setting('tussock-known') === '1' ? 'opening' : 'first';
  };
  const stop = (why) => {
    if (root.dataset.shell === 'stopped') return;
    root.dataset.shell = 'stopped';
    document.getElementById('app').inert = true;
    document.getElementById('recovery-why').textContent = why || '';
    document.getElementById('recovery-said').focus();
  };
  const begin = () => document.head.append(document.getElementById('app-files').content);
  // The frame after the first one; a page in the background has no frames and does not wait for them.
  const painted = (then) => {
    let due = true;
    const once = () => {
      if (due) then();
      due = false;
    };
    requestAnimationFrame(() => requestAnimationFrame(once));
    setTimeout(once, 200);
  };
  dress();
  frame();
  addEventListener('DOMContentLoaded', () => painted(begin));
  matchMedia('(prefers-color-scheme: dark)').addEventListener('change', dress);
  addEventListener('tussock-theme', dress);
  addEventListener('storage', dress);
  addEventListener('hashchange', frame);
  addEventListener('tussock-panic', (event) => stop(event.detail && String(event.detail)));
  // A script that does not arrive reports itself only to a capturing listener.
  addEventListener('error', (event) => {
    if (event.target instanceof HTMLScriptElement) stop(`could not load ${event.target.src}`);
  }, true);
  addEventListener('click', (event) => {
    if (event.target instanceof Element && event.target.closest('#recovery-reload')) location.reload();
  });
})();
