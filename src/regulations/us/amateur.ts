import type { ServiceRow } from '../country.ts';

/* Amateur service, 47 CFR part 97. Privileges go by the class of the control operator (97.105(b)). */
export const amateurService: ServiceRow = {
  id: 'amateur',
  name: 'Amateur Radio Service',
  licence: 'personal',
  classes: [
    { id: 'novice', name: 'Novice' },
    { id: 'technician', name: 'Technician' },
    { id: 'general', name: 'General' },
    { id: 'advanced', name: 'Advanced' },
    { id: 'extra', name: 'Amateur Extra' },
  ],
  certifiedEquipment: false,
  callSigns: true,
  repeaters: true,
  storeAndForward: true,
  mustHold: 'an amateur licence',
  identification: {
    everyMin: 10,
    atStart: false,
    atEnd: true,
    how: 'Say your call sign at the end of each communication and at least every 10 minutes during it, in English. A tactical name may stand beside it, never in its place.',
    source: 'cfr-97.119',
  },
  source: 'cfr-97.7',
};
