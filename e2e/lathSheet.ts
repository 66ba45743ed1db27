import { execFileSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { saveSite } from '../src/site/saveSite.ts';
import type { Site } from '../src/site/site.ts';

/** The crew sheet of a site as the command line writes it: the path of the PDF. */
export const lathSheet = (site: Site, stem: string): string => {
  writeFileSync(`${stem}.site.json`, saveSite(site));
  const call = ['run', '-s', 'lath', '--', 'sheet', `${stem}.site.json`, '--out', `${stem}.pdf`];
  execFileSync('npm', call, { cwd: join(import.meta.dirname, '..'), stdio: 'pipe' });
  return `${stem}.pdf`;
};
