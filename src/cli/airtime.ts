/** `readback airtime`: how long a message takes over each packet route, and how many a window holds. */
import type { PacketTime, PacketTimes } from '../consequences/packet-times.ts';
import { span } from '../documents/figures.ts';
import { Refusal } from '../findings/refusal.ts';
import type { Plan } from '../plan/model.ts';
import type { ExitStatus } from './end-with.ts';
import { type LoadedSubject, loadSubject } from './load-subject.ts';
import { palette } from './palette.ts';
import { type Lines, lines } from './print-lines.ts';
import { columnsOf, displayWidth } from './terminal.ts';

export interface AirtimeOptions {
  readonly characters: string;
  readonly json?: true;
  readonly stdinFilename: string;
  readonly today?: string;
  readonly color?: boolean;
}

export async function airtime(path: string, options: AirtimeOptions): Promise<ExitStatus> {
  const characters = /^\d{1,6}$/.test(options.characters) ? Number(options.characters) : 0;
  if (characters < 1)
    throw new Refusal(
      `--characters ${options.characters} is no length of a message, 1 to 999999.`,
      'Write --characters 500.',
    );
  const whole = await loadSubject(path, options);
  const found = whole.consequences.packetTimes(characters);
  process.stdout.write(
    options.json
      ? `${JSON.stringify(airtimeJson(path, whole, found), null, 2)}\n`
      : await airtimeText(whole, found, options),
  );
  return 0;
}

async function airtimeText(
  { plan }: LoadedSubject,
  found: PacketTimes,
  options: AirtimeOptions,
): Promise<string> {
  const painted = palette(process.stdout, options);
  const stations = [...plan.mailboxes.values(), ...plan.digipeaters.values()];
  const print = lines(columnsOf(process.stdout), await displayWidth(stations.map(({ name }) => name)));
  if (found.routes.length === 0) return `${print.say(`${plan.title} has no packet routes.`)}\n`;
  const [first] = found.routes;
  const { modem } = found;
  const widths = [34, 9, 10, 10, 9];
  const blocks = [
    `${painted.strong(print.say(`${plan.title}, revision ${plan.revision}`))}\n${print.say(
      `A message of ${found.characters} characters: ${first?.time.frames} frame${first?.time.frames === 1 ? '' : 's'} of at most ${modem.informationOctets}.`,
    )}`,
    [
      painted.strong(print.row(['Route', 'On air', 'In all', 'A loss', 'T1'], widths)),
      ...found.routes.map((route) => routeText(plan, route, print, widths)),
    ].join('\n'),
    painted.faint(
      print.say(
        `On air is the time the channel is taken, every hop counted; in all adds the waits for a slot; a loss is what each lost frame adds; T1 is the least an acknowledgement timer may be set to (AX.25 2.2, 6.7.1.1). Assumed: ${modem.bitsPerS} bit/s, ${modem.txDelayS * 1000} ms of keying, persistence ${modem.persistence} in slots of ${modem.slotS * 1000} ms (the defaults of KISS), ${modem.framesPerTurn} frame before each answer, connect and disconnect included, text like random bits, one octet a character, nothing lost. Shared by stations that do not hear each other, a channel carries at most 18 % of its time (ALOHA).`,
      ),
    ),
  ];
  return `${blocks.join('\n\n')}\n`;
}

function routeText(plan: Plan, route: PacketTime, print: Lines, widths: readonly number[]): string {
  const { time, windows } = route;
  const through = route.through.map((id) => plan.digipeaters.get(id)?.name ?? id);
  const seconds = (s: number) => `${s.toFixed(1)} s`;
  const name = plan.mailboxes.get(route.mailbox)?.name ?? route.mailbox;
  const users = [
    ...route.fromPlaces.map((id) => `from ${plan.places.get(id)?.name ?? id}`),
    ...route.ladders.map((id) => `ladder ${plan.ladders.get(id)?.name ?? id}`),
  ];
  return [
    print.row(
      [
        name,
        seconds(time.channelS),
        seconds(time.totalS),
        `+${seconds(time.lostFrameS)}`,
        seconds(time.t1FloorS),
      ],
      widths,
    ),
    print.say(
      `${through.length === 0 ? 'direct' : `through ${through.join(', ')}`}, channel ${route.slot}; ${users.join(', ')}`,
      2,
      4,
    ),
    ...windows.map(({ checkIn, lengthMin, alone, shared }) =>
      print.say(
        `${checkIn === undefined ? 'An hour' : `${plan.checkIns.get(checkIn)?.name ?? checkIn}, ${span(lengthMin)},`} holds ${alone} one after another, ${shared} if shared`,
        2,
        4,
      ),
    ),
  ].join('\n');
}

function airtimeJson(
  path: string,
  { plan, check }: LoadedSubject,
  { characters, modem, routes }: PacketTimes,
): object {
  const round = (s: number) => Math.round(s * 1000) / 1000;
  return {
    plan: path,
    revision: plan.revision,
    check,
    characters,
    assumed: modem,
    routes: routes.map(({ mailbox, through, slot, fromPlaces, ladders, time, windows }) => ({
      mailbox,
      through,
      slot,
      fromPlaces,
      ladders,
      frames: time.frames,
      transmissions: time.transmissions,
      channelS: round(time.channelS),
      waitS: round(time.waitS),
      totalS: round(time.totalS),
      lostFrameS: round(time.lostFrameS),
      t1FloorS: round(time.t1FloorS),
      windows: windows.map((window) => ({ ...window, checkIn: window.checkIn ?? null })),
    })),
  };
}
