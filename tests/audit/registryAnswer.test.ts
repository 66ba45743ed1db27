import { expect, it } from 'vitest';
import { registryAnswer } from './registryAnswer.ts';

/** As npm 10 and 11 write it with `audit --json`: from memory. */
const report = (severity: string) =>
  JSON.stringify({
    auditReportVersion: 2,
    vulnerabilities: {
      thing: {
        name: 'thing',
        severity,
        via: [{ title: 'Runs away', url: 'https://advisory.example/1', severity, range: '<2.0.0' }],
      },
      user: { name: 'user', severity, via: ['thing'] },
    },
  });

it('high and critical faults count once, others and accepted ones do not', () => {
  const said = 'thing <2.0.0, high: Runs away (https://advisory.example/1)';
  expect(registryAnswer(report('high'), [])).toEqual({ asked: true, faults: [said] });
  const critical = said.replace('high', 'critical');
  expect(registryAnswer(report('critical'), [])).toEqual({ asked: true, faults: [critical] });
  expect(registryAnswer(report('moderate'), [])).toEqual({ asked: true, faults: [] });
  const accepted = ['https://advisory.example/1'];
  expect(registryAnswer(report('high'), accepted)).toEqual({ asked: true, faults: [] });
});

it('a registry that was not asked is no registry that found nothing', () => {
  const refused = JSON.stringify({ message: 'Method Not Allowed\nmore', error: { code: 'E405' } });
  expect(registryAnswer(refused, [])).toEqual({ asked: false, why: 'Method Not Allowed' });
  expect(registryAnswer('', [])).toEqual({ asked: false, why: 'it gave no answer' });
});
