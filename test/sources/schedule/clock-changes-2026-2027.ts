/**
 * Publisher: Internet Assigned Numbers Authority. Document: Time Zone Database (tz), releases 2025b and 2025c,
 * which agree here, for 2026 and 2027.
 * Columns: zone; instant of the change, UTC; ISO date on the clocks of the zone; what an unchanged clock shows;
 * what the changed clock shows; offsets from UTC before and after, minutes.
 */
export const clockChanges20262027: readonly (readonly [
  zone: string,
  instant: string,
  date: string,
  oldClock: string,
  newClock: string,
  oldOffsetMin: number,
  newOffsetMin: number,
])[] = [
  ['America/New_York', '2026-03-08T07:00:00Z', '2026-03-08', '02:00', '03:00', -300, -240],
  ['America/New_York', '2026-11-01T06:00:00Z', '2026-11-01', '02:00', '01:00', -240, -300],
  ['America/New_York', '2027-03-14T07:00:00Z', '2027-03-14', '02:00', '03:00', -300, -240],
  ['America/New_York', '2027-11-07T06:00:00Z', '2027-11-07', '02:00', '01:00', -240, -300],
  ['America/Denver', '2026-03-08T09:00:00Z', '2026-03-08', '02:00', '03:00', -420, -360],
  ['America/Denver', '2026-11-01T08:00:00Z', '2026-11-01', '02:00', '01:00', -360, -420],
  ['America/Denver', '2027-03-14T09:00:00Z', '2027-03-14', '02:00', '03:00', -420, -360],
  ['America/Denver', '2027-11-07T08:00:00Z', '2027-11-07', '02:00', '01:00', -360, -420],
  ['Europe/London', '2026-03-29T01:00:00Z', '2026-03-29', '01:00', '02:00', 0, 60],
  ['Europe/London', '2026-10-25T01:00:00Z', '2026-10-25', '02:00', '01:00', 60, 0],
  ['Europe/London', '2027-03-28T01:00:00Z', '2027-03-28', '01:00', '02:00', 0, 60],
  ['Europe/London', '2027-10-31T01:00:00Z', '2027-10-31', '02:00', '01:00', 60, 0],
  ['Europe/Berlin', '2026-03-29T01:00:00Z', '2026-03-29', '02:00', '03:00', 60, 120],
  ['Europe/Berlin', '2026-10-25T01:00:00Z', '2026-10-25', '03:00', '02:00', 120, 60],
  ['Europe/Berlin', '2027-03-28T01:00:00Z', '2027-03-28', '02:00', '03:00', 60, 120],
  ['Europe/Berlin', '2027-10-31T01:00:00Z', '2027-10-31', '03:00', '02:00', 120, 60],
  ['Australia/Sydney', '2026-04-04T16:00:00Z', '2026-04-05', '03:00', '02:00', 660, 600],
  ['Australia/Sydney', '2026-10-03T16:00:00Z', '2026-10-04', '02:00', '03:00', 600, 660],
  ['Australia/Sydney', '2027-04-03T16:00:00Z', '2027-04-04', '03:00', '02:00', 660, 600],
  ['Australia/Sydney', '2027-10-02T16:00:00Z', '2027-10-03', '02:00', '03:00', 600, 660],
  ['Australia/Lord_Howe', '2026-04-04T15:00:00Z', '2026-04-05', '02:00', '01:30', 660, 630],
  ['Australia/Lord_Howe', '2026-10-03T15:30:00Z', '2026-10-04', '02:00', '02:30', 630, 660],
  ['Australia/Lord_Howe', '2027-04-03T15:00:00Z', '2027-04-04', '02:00', '01:30', 660, 630],
  ['Australia/Lord_Howe', '2027-10-02T15:30:00Z', '2027-10-03', '02:00', '02:30', 630, 660],
  ['Pacific/Auckland', '2026-04-04T14:00:00Z', '2026-04-05', '03:00', '02:00', 780, 720],
  ['Pacific/Auckland', '2026-09-26T14:00:00Z', '2026-09-27', '02:00', '03:00', 720, 780],
  ['Pacific/Auckland', '2027-04-03T14:00:00Z', '2027-04-04', '03:00', '02:00', 780, 720],
  ['Pacific/Auckland', '2027-09-25T14:00:00Z', '2027-09-26', '02:00', '03:00', 720, 780],
];

/** Zones without a change in 2026 and 2027: zone, offset in minutes. */
export const unchangedZones: readonly (readonly [zone: string, offsetMin: number])[] = [
  ['America/Phoenix', -420],
  ['Asia/Kolkata', 330],
];
