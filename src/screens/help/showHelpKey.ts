/** The element id of the key that opens the help. */
export const helpKeyId = 'help-key';

/** Leads back to the key that opens the help, once what lay over it is gone. */
export const showHelpKey = (): void => {
  requestAnimationFrame(() => document.getElementById(helpKeyId)?.focus());
};
