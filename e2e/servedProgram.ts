import { spawn } from 'node:child_process';
import { join } from 'node:path';

const top = join(import.meta.dirname, '..');

/** Waits until the server answers, ten seconds at most. */
const answered = async (port: number): Promise<void> => {
  for (let tries = 0; tries < 50; tries += 1) {
    const up = await fetch(`http://localhost:${port}/`).then(
      () => true,
      () => false,
    );
    if (up) return;
    await new Promise((done) => {
      setTimeout(done, 200);
    });
  }
  throw new Error(`the served program: expected an answer at port ${port} within 10 s`);
};

/** Serves the last build at a port while something is done with it. */
export const withProgram = async (
  port: number,
  deed: (address: string) => Promise<void>,
): Promise<void> => {
  const server = spawn('npx', ['vite', 'preview', '--port', `${port}`, '--strictPort'], {
    cwd: top,
    detached: true,
  });
  try {
    await answered(port);
    await deed(`http://localhost:${port}`);
  } finally {
    if (server.pid !== undefined) process.kill(-server.pid);
  }
};
