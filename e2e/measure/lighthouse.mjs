// One visit of Lighthouse on a phone: node measure/lighthouse.mjs ADDRESS BROWSER
// Prints one line of JSON: scores from 0 to 100, times in milliseconds, layout shift in thousandths, bytes.
import { launch } from 'chrome-launcher';
import lighthouse from 'lighthouse';

const [address, chromePath] = process.argv.slice(2);
if (address === undefined || chromePath === undefined) {
  console.error('usage: node measure/lighthouse.mjs ADDRESS BROWSER');
  process.exit(2);
}

const chrome = await launch({
  chromePath,
  chromeFlags: [
    '--headless',
    '--no-sandbox',
    '--disable-gpu',
    '--disable-quic',
    '--no-first-run',
    '--disable-background-networking',
    '--disable-component-update',
    '--disable-sync',
  ],
});
try {
  const visit = () => lighthouse(address, {
    port: chrome.port,
    logLevel: 'error',
    onlyCategories: ['performance', 'accessibility', 'best-practices'],
  });
  let result = await visit();
  // A trace without its beginning measures nothing; Lighthouse itself asks to be run again.
  for (let more = 2; more > 0 && result.lhr.runtimeError?.code === 'NO_NAVSTART'; more -= 1) result = await visit();
  const { categories, audits, runtimeError } = result.lhr;
  if (runtimeError) throw new Error(`${runtimeError.code}: ${runtimeError.message}`);
  const score = (name) => Math.round(categories[name].score * 100);
  const value = (name) => audits[name].numericValue;
  for (const category of Object.values(categories)) {
    for (const { id, weight } of category.auditRefs) {
      const audit = audits[id];
      if (weight > 0 && audit.score !== null && audit.score < 0.9) {
        console.error(`${category.title}: ${audit.title} (${audit.displayValue ?? audit.score})`);
      }
    }
  }
  const largest = audits['largest-contentful-paint-element']?.details?.items?.[0]?.items?.[0]?.node;
  if (largest) console.error(`largest paint: ${largest.snippet} ${largest.nodeLabel}`);
  console.log(JSON.stringify({
    performance: score('performance'),
    accessibility: score('accessibility'),
    bestPractices: score('best-practices'),
    firstPaint: value('first-contentful-paint'),
    largestPaint: value('largest-contentful-paint'),
    interactive: value('interactive'),
    blocked: value('total-blocking-time'),
    shift: value('cumulative-layout-shift') * 1000,
    bytes: value('total-byte-weight'),
  }));
} finally {
  chrome.kill();
}
