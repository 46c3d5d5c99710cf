/**
 * The booklet: the whole plan and all that follows from it, for the shelf and the desk. A section without data
 * is an empty list or null, and the template leaves it out.
 */
import type { Revision } from '../../audit/compare-revisions.ts';
import type { Departure } from '../../checks/acceptance.ts';
import type { Consequences } from '../../consequences/consequences.ts';
import type { RadioPath } from '../../consequences/paths.ts';
import type { Finding } from '../../findings/finding.ts';
import type { Plan } from '../../plan/model.ts';
import type { Law } from '../../regulations/law.ts';
import { addDays } from '../../schedule/calendar-date.ts';
import { type CheckInData, checkInOf, rungOf } from '../cards.ts';
import { type ChannelListRow, gatherChannelList } from '../channel-list.ts';
import { span } from '../figures.ts';
import { heldTogether } from '../held-together.ts';
import type { Scene } from '../print/content.ts';
import type { Measure } from '../print/measure.ts';
import type { Words } from '../words.ts';
import { isEnglish } from '../words-file.ts';
import { bandChart } from './band-chart.ts';
import { type ChangeList, changeList } from './change-list.ts';
import { dayStrip } from './day-strip.ts';
import { type ExposureTable, exposureTable } from './exposure-table.ts';
import { netDiagram } from './net-diagram.ts';
import { type OutageRow, outageRows } from './outage-table.ts';
import { type PathGroup, type ProfilePicture, pathGroups, profilePictures } from './path-table.ts';
import { type RollCall, rollCalls, type TurnRow, turnRows } from './roll-calls.ts';
import { type RosterRow, roster } from './roster.ts';
import { type PacketRow, packetRows, type RepeaterRow, repeaterRows } from './stations.ts';

export interface BookletData {
  readonly title: string;
  readonly language: string;
  readonly paper: 'Letter' | 'A4';
  readonly revision: number;
  readonly effective: string;
  readonly reviewBy: string;
  readonly timezone: string;
  readonly check: string;
  readonly checkWords: string;
  readonly coordinator: string;
  readonly caution: string;
  /** Empty where the caution is in the language of the booklet. */
  readonly cautionLanguage: string;
  readonly notes: readonly string[];
  readonly members: readonly RosterRow[];
  /** Whether anybody shares a contact. */
  readonly contacts: boolean;
  readonly channels: readonly ChannelListRow[];
  readonly bands: boolean;
  readonly repeaters: readonly RepeaterRow[];
  readonly packet: readonly PacketRow[];
  readonly checkIns: readonly CheckInData[];
  readonly turns: readonly TurnRow[];
  readonly silences: readonly {
    readonly name: string;
    readonly gap: string;
    readonly total: string;
    /** The ladder started for them; empty where none is. */
    readonly ladder: string;
  }[];
  readonly ladders: readonly {
    readonly id: string;
    readonly name: string;
    readonly who: string;
    readonly reach: string;
    readonly rungs: readonly ReturnType<typeof rungOf>[];
  }[];
  readonly day: boolean;
  readonly net: boolean;
  readonly paths: readonly PathGroup[];
  /** Pictures of the ground, two side by side. */
  readonly profiles: readonly { readonly pair: readonly (ProfilePicture | { readonly figure: null })[] }[];
  readonly outages: readonly OutageRow[];
  readonly doubleOutages: readonly OutageRow[];
  readonly exposures: ExposureTable;
  readonly findings: readonly {
    readonly severity: string;
    readonly rule: string;
    readonly message: string;
    readonly line: number;
    readonly suggestion: string;
  }[];
  /** Since the older revision that was asked for; null where none was. */
  readonly changes: ChangeList | null;
  /** In which the findings are written; empty where it is that of the booklet. */
  readonly findingsLanguage: string;
  readonly departures: readonly {
    readonly rule: string;
    readonly message: string;
    readonly because: string;
    readonly until: string;
  }[];
  readonly rollCalls: readonly RollCall[];
  /** As many as a form has rows to write on. */
  readonly lines: readonly number[];
  /** Words written when each row of the message form is full. */
  readonly messageRows: readonly number[];
}

export interface BookletSubject {
  readonly plan: Plan;
  readonly law: Law;
  readonly consequences: Consequences;
  readonly check: string;
  readonly findings: readonly Finding[];
  readonly departures: readonly Departure[];
  readonly paths?: readonly RadioPath[];
  /** The revision whose cards the group holds until now: what changed since stands in the booklet. */
  readonly since?: Revision;
}

/** Rows of a form: a page holds them, and the hand has room. */
const formRows = 21;
/** Of five words each: a message of fifty is as long as voice carries well (common practice). */
const messageRows = 10;
const wordsInARow = 5;
/** What a page of either paper has for a picture with its heading and caption. */
const tallestMm = 220;
/** Turns are listed for so many days from the day on which the plan takes effect. */
const turnDays = 14;

export async function gatherBooklet(
  subject: BookletSubject,
  words: Words,
  measure: Measure,
): Promise<{ readonly data: BookletData; readonly figures: ReadonlyMap<string, Scene> }> {
  const { plan, law, consequences, check, paths = [] } = subject;
  const figures = new Map<string, Scene>();
  const coming = await consequences.occurrences(plan.effective, addDays(plan.effective, turnDays - 1));
  const checkIns = [...plan.checkIns.values()];
  const day = onAPage(
    checkIns.length > 0 ? dayStrip(checkIns, coming, words.figure.day, measure) : undefined,
  );
  const net = onAPage(netDiagram(plan, consequences, words.figure.net, measure));
  const channels = gatherChannelList(plan, consequences, words);
  const bands = onAPage(
    channels.length > 0
      ? bandChart([...consequences.channels.values()], words.figure.bands, measure)
      : undefined,
  );
  for (const [figure, scene] of Object.entries({ day, net, bands }))
    if (scene !== undefined) figures.set(figure, scene);
  const { pictures, figures: profiles } = profilePictures(plan, consequences, paths, words, measure);
  for (const [name, scene] of profiles) figures.set(name, scene);
  const members = roster(plan, law, words);
  const outages = outageRows(plan, consequences, words);
  const name = (id: string) => plan.members.get(id)?.name ?? id;
  const silences = await consequences.silences(plan.effective);
  const data: BookletData = {
    title: plan.title,
    language: words.language,
    paper: plan.cards.sheet === 'letter' ? 'Letter' : 'A4',
    revision: plan.revision,
    effective: plan.effective,
    reviewBy: plan.reviewBy ?? '',
    timezone: plan.timezone,
    check,
    checkWords: words.spelled(check),
    coordinator: plan.coordinator === undefined ? '' : name(plan.coordinator),
    ...cautionOf(law, words),
    notes: plan.notes,
    members,
    contacts: members.some(({ contact }) => contact !== ''),
    channels,
    bands: bands !== undefined,
    repeaters: repeaterRows(plan, words),
    packet: packetRows(plan, words),
    checkIns: checkIns.map((checkIn) => checkInOf(plan, checkIn, false, words)),
    turns: turnRows(plan, coming, words),
    silences: silences.flatMap(({ member, longest }) =>
      longest === undefined
        ? []
        : [
            {
              name: name(member),
              gap: span(longest.gapMin),
              total: span(longest.totalMin),
              ladder: longest.ladder === undefined ? '' : (plan.ladders.get(longest.ladder)?.name ?? ''),
            },
          ],
    ),
    ladders: [...plan.ladders.values()].map((ladder) => ({
      id: ladder.id,
      name: ladder.name,
      who: consequences.membersOf(ladder.who).map(name).join(', '),
      reach: consequences.membersOf(ladder.reach).map(name).join(', '),
      rungs: ladder.rungs.map((rung) => rungOf(plan, rung, words)),
    })),
    day: day !== undefined,
    net: net !== undefined,
    paths: pathGroups(plan, paths, words),
    profiles: inPairs(pictures),
    outages: outages.single,
    doubleOutages: outages.double,
    exposures: exposureTable(plan, consequences, law, words),
    findings: subject.findings.map(({ severity, rule, message, place, suggestion }) => ({
      severity: words.severity[severity],
      rule,
      message: heldTogether(message),
      line: place.line,
      suggestion: suggestion ?? '',
    })),
    changes: subject.since === undefined ? null : changeList(subject.since, subject, words),
    findingsLanguage: isEnglish(words.language) ? '' : 'en',
    departures: subject.departures.map(({ finding, acceptance }) => ({
      rule: finding.rule,
      message: heldTogether(finding.message),
      because: acceptance.because,
      until: acceptance.until,
    })),
    rollCalls: rollCalls(plan, law, consequences, words),
    lines: rows(formRows),
    messageRows: rows(messageRows).map((row) => row * wordsInARow),
  };
  return { data, figures };
}

/** The caution of the country's rules, as pages place it. */
export function cautionOf({ country }: Law, words: Words): Pick<BookletData, 'caution' | 'cautionLanguage'> {
  const { text, language } = words.caution(country);
  return { caution: text, cautionLanguage: language };
}

/** A picture that no page holds is left out; the tables say the same. */
function onAPage(scene: Scene | undefined): Scene | undefined {
  return scene !== undefined && scene.heightMm <= tallestMm ? scene : undefined;
}

function rows(count: number): number[] {
  return Array.from({ length: count }, (_, index) => index + 1);
}

function inPairs(pictures: readonly ProfilePicture[]): BookletData['profiles'] {
  return Array.from({ length: Math.ceil(pictures.length / 2) }, (_, row) => ({
    pair: [0, 1].map((at) => pictures[row * 2 + at] ?? { figure: null }),
  }));
}
