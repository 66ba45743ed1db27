/** Why a worker could not be started, or ended by itself. */
export const lackingParts = 'its parts are not on this device yet, or there is no room';
