/**
 * The static server behind a walk, as a person would host the built folder.
 *
 * Stopped, it refuses connections: that is what being offline means here. Started again, it listens
 * on the same port, so that a page that is open meets it again under the same origin.
 */
import { type ChildProcess, spawn } from 'node:child_process';
import { dist, repository, xtask } from '../house/settings.ts';
import { freePort } from './port.ts';

/** Milliseconds that a server may take to begin or to end. */
const PATIENCE = 15_000;

const running = new Set<ChildProcess>();
process.on('exit', () => {
  for (const child of running) child.kill('SIGKILL');
});

/** One server on one port. */
export class Host {
  private child: ChildProcess | undefined;

  private constructor(
    private folder: string,
    private readonly port: number,
    private readonly at: string,
  ) {}

  /** Serves a folder under a path that begins and ends with a slash. */
  static async open(at: string, folder: string = dist): Promise<Host> {
    const host = new Host(folder, await freePort(), at);
    await host.start();
    return host;
  }

  /** The address of the front door. */
  get home(): string {
    return `${this.origin}${this.at}`;
  }

  /** Scheme, host and port. */
  get origin(): string {
    return `http://127.0.0.1:${this.port}`;
  }

  /** Whether it answers. */
  get isOpen(): boolean {
    return this.child !== undefined;
  }

  /** Starts on the same port as before. */
  async start(): Promise<void> {
    if (this.child !== undefined) return;
    const child = spawn(xtask, ['host', '--dir', this.folder, '--port', String(this.port), '--at', this.at], {
      cwd: repository,
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    running.add(child);
    this.child = child;
    await new Promise<void>((resolve, reject) => {
      let said = '';
      const timer = setTimeout(() => reject(new Error(`the host did not begin: ${said}`)), PATIENCE);
      const hear = (piece: Buffer): void => {
        said += piece.toString();
        const address = /listening on (\S+)/.exec(said)?.[1];
        if (address === undefined) return;
        clearTimeout(timer);
        if (address === this.home) resolve();
        else reject(new Error(`the host listens on ${address}, not on ${this.home}`));
      };
      child.stdout?.on('data', hear);
      child.stderr?.on('data', hear);
      child.once('exit', (code) => {
        clearTimeout(timer);
        running.delete(child);
        reject(new Error(`the host ended with ${String(code)}: ${said}`));
      });
    });
  }

  /** Ends the server: from now on every connection is refused. */
  async stop(): Promise<void> {
    const child = this.child;
    if (child === undefined) return;
    this.child = undefined;
    const ended = new Promise<void>((resolve) => {
      if (child.exitCode !== null || child.signalCode !== null) resolve();
      else child.once('exit', () => resolve());
    });
    child.kill('SIGTERM');
    const timer = setTimeout(() => child.kill('SIGKILL'), PATIENCE / 5);
    await ended;
    clearTimeout(timer);
    running.delete(child);
  }

  /** Puts another folder behind the same address, as a new deploy does. */
  async deploy(folder: string): Promise<void> {
    await this.stop();
    this.folder = folder;
    await this.start();
  }
}
