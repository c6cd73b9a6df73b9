/** A reporter that names each walk as it ends and closes with plain counts, for the build tool's table. */
import type { FullConfig, FullResult, Reporter, Suite, TestCase, TestResult } from '@playwright/test/reporter';

/** Lines of an error that are worth reading; a browser's own log is in the results. */
const LINES = 40;

/** An error without colours and without the browser's log. */
function plain(text: string): string {
  const told = text.replace(/\u001b\[[0-9;]*m/g, '').split('\n');
  const log = told.findIndex((line) => line.startsWith('Browser logs:'));
  const kept = log < 0 ? told : told.slice(0, log);
  return kept.length > LINES ? [...kept.slice(0, LINES), `(${kept.length - LINES} lines more in the results)`].join('\n') : kept.join('\n');
}

/** Prints one line a walk, the whole error of a red one, and the counts. */
export default class Counts implements Reporter {
  private readonly tally = { passed: 0, failed: 0, skipped: 0 };
  private planned = 0;
  private done = 0;

  onBegin(_config: FullConfig, suite: Suite): void {
    this.planned = suite.allTests().length;
  }

  onTestEnd(test: TestCase, result: TestResult): void {
    this.done += 1;
    const outcome = result.status === 'passed' ? 'passed' : result.status === 'skipped' ? 'skipped' : 'failed';
    this.tally[outcome] += 1;
    const seconds = (result.duration / 1000).toFixed(1).padStart(5);
    const name = test.titlePath().slice(1).filter((part) => part !== '').join(' > ');
    console.log(`${String(this.done).padStart(3)}/${this.planned} ${outcome.padEnd(7)} ${seconds} s  ${name}`);
    if (outcome === 'failed') {
      for (const error of result.errors) console.log(plain(error.stack ?? error.message ?? 'no message'));
    }
  }

  onError(error: { message?: string; stack?: string }): void {
    console.log(plain(error.stack ?? error.message ?? 'no message'));
  }

  onEnd(result: FullResult): void {
    const { passed, failed, skipped } = this.tally;
    const seconds = (result.duration / 1000).toFixed(0);
    console.log(`browser walks: ${passed} passed, ${failed} failed, ${skipped} skipped, ${seconds} s`);
  }

  printsToStdio(): boolean {
    return true;
  }
}
