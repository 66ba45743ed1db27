/** What came of asking the registry: it did not answer, or the faults that count, a line for each. */
export type RegistryAnswer =
  | { readonly asked: false; readonly why: string }
  | { readonly asked: true; readonly faults: string[] };

interface Fault {
  readonly title?: string;
  readonly url?: string;
  readonly severity?: string;
  readonly range?: string;
}

interface Report {
  readonly message?: string;
  readonly vulnerabilities?: Readonly<
    Record<string, { readonly via: readonly (Fault | string)[] }>
  >;
}

const counting = ['high', 'critical'];

const read = (text: string): Report => {
  try {
    return JSON.parse(text) as Report;
  } catch {
    return {};
  }
};

/** What `npm audit --json` wrote: its high and critical faults, without those of accepted advisories. */
export const registryAnswer = (text: string, accepted: readonly string[]): RegistryAnswer => {
  const { message, vulnerabilities } = read(text);
  if (vulnerabilities === undefined) {
    return { asked: false, why: (message ?? 'it gave no answer').split('\n')[0] ?? '' };
  }
  const faults = Object.entries(vulnerabilities).flatMap(([name, { via }]) =>
    via
      // one that is named is the fault of a package that is in the list itself
      .filter((fault) => typeof fault !== 'string')
      .filter(({ severity = '' }) => counting.includes(severity))
      .filter(({ url = '' }) => !accepted.includes(url))
      .map(({ severity, title, range, url }) => `${name} ${range}, ${severity}: ${title} (${url})`),
  );
  return { asked: true, faults: [...new Set(faults)].sort() };
};
